"""The page's own style: black on white, text at least 4.5 to 1, frames at least 3 to 1, readable without colour."""

from __future__ import annotations

from typing import Final

STYLE: Final = """
:root{color-scheme:light;--ink:#16191c;--quiet:#565d63;--accent:#1d4f6b;--fault:#8a2a10;--rule:#868d93}
*{box-sizing:border-box}
body{margin:0 auto;padding:1rem;max-width:62rem;background:#fff;color:var(--ink);
font:1rem/1.5 "DejaVu Sans",Verdana,"Noto Sans",Arial,sans-serif;overflow-wrap:break-word}
header,footer{color:var(--quiet);font-size:.85rem}
header{border-bottom:1px solid var(--rule);display:flex;flex-wrap:wrap;gap:0 1rem;justify-content:space-between}
.notice{color:var(--accent);font-weight:bold}
footer{border-top:1px solid var(--rule);margin-top:2rem}
h1,h2{color:var(--accent);line-height:1.25}
h1{font-size:1.7rem}h2{font-size:1.35rem;margin:2rem 0 .5rem}h3{font-size:1.05rem;margin:1.4rem 0 .4rem}
a{color:var(--accent)}
p{margin:.4rem 0}
.lead{color:var(--quiet)}.note{color:var(--quiet);font-size:.85rem}
dl{margin:.5rem 0}dl>div{display:flex;flex-wrap:wrap;gap:0 1rem;padding:.1rem 0}
dt{flex:0 0 13rem;color:var(--quiet)}dd{flex:1 1 16rem;margin:0}
.wide{overflow-x:auto;margin:.5rem 0}
.wide:focus-visible,a:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
table{border-collapse:collapse;width:100%;font-size:.88rem}
th,td{text-align:start;vertical-align:top;padding:.3rem .6rem .3rem 0;border-bottom:1px solid var(--rule)}
thead th{vertical-align:bottom;border-bottom:2px solid var(--ink);color:var(--quiet);font-weight:bold}
tbody th{font-weight:normal}
.dense th,.dense td{padding:.1rem .5rem .1rem 0}
.end{text-align:end;white-space:nowrap}
tr.total th,tr.total td{border-top:2px solid var(--ink);font-weight:bold}
tr.fault th,tr.fault td{color:var(--fault)}
.pictures{display:flex;flex-wrap:wrap;gap:1rem;align-items:flex-end}.pictures img{max-height:10rem}
figure{margin:1rem 0}figcaption{color:var(--quiet);font-size:.85rem}
svg{display:block}img{max-width:100%;height:auto}
.scan svg{width:6rem;height:6rem}
.worked{margin-top:1rem}
.lines{list-style:none;margin:.2rem 0;padding:0;font-size:.88rem}
.lines li{border-bottom:1px solid var(--rule);padding:.15rem 0}
.lines li>*{margin-inline-end:1rem}
.inputs,.number,.mark{color:var(--quiet);font-size:.92em}
.caution{display:flex;gap:1rem;margin:1rem 0;padding-inline-start:.8rem;border-inline-start:4px solid var(--accent);
break-inside:avoid}
.caution.danger{border-color:#8a2a10;border-width:7px}.caution.warning{border-color:#b35c00;border-width:6px}
.caution.caution{border-color:#8a7400;border-width:5px}
.sign{flex:0 0 4rem;width:4rem;height:4rem}
.signal{display:inline-block;margin:0;padding:0 .6rem;border:1px solid #000;font-weight:bold;background:#0b4a8a;
color:#fff}
.danger .signal{background:#a3151b}.warning .signal{background:#ef7d00;color:#000}
.caution.caution .signal{background:#ffd400;color:#000}
.hazard{font-weight:bold}.source{color:var(--quiet);font-size:.8rem}
.letterhead{display:flex;flex-wrap:wrap;gap:1rem;justify-content:space-between;align-items:flex-start}
.letterhead img{max-height:5rem;width:auto}
address{font-style:normal;text-align:end;margin-inline-start:auto}
.sign-here{list-style:none;display:flex;flex-wrap:wrap;gap:1rem;padding:0;margin-top:3.5rem}
.sign-here li{flex:1 1 10rem;border-top:1px solid var(--ink);color:var(--quiet)}
.columns{display:flex;flex-wrap:wrap;gap:1rem}.columns>div{min-width:0}
input,select,textarea{font:inherit;width:100%;border:1px solid var(--quiet);background:#fff;color:var(--ink)}
@media print{body{max-width:none;padding:0;font-size:9pt}nav{display:none}.sheet{break-before:page}
.wide{overflow:visible}h2,h3{break-after:avoid}thead{display:table-header-group}tr,figure,.together{break-inside:avoid}}
@page{margin:18mm}
"""
