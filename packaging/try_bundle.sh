#!/bin/sh
# Runs a frozen or installed program as its users do: plan, papers, window. Usage: packaging/try_bundle.sh PROGRAM
set -eu
program=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export HOME="$folder" XDG_DATA_HOME="$folder/data" XDG_CONFIG_HOME="$folder/config" \
    XDG_STATE_HOME="$folder/state" XDG_CACHE_HOME="$folder/cache" LANG=C.UTF-8
cd "$folder"
"$program" --version
"$program" demo small_town --out station.spoutline.json
"$program" plan station.spoutline.json >plan.txt
grep -q "Chosen set, dispenser first" plan.txt
for language in en es de fr; do
    "$program" bill station.spoutline.json --language $language --pdf bill_$language.pdf --csv bill_$language.csv
    "$program" pack station.spoutline.json --language $language --pdf pack_$language.pdf --form form_$language.pdf
done
"$program" bill station.spoutline.json --xlsx bill.xlsx --html bill.html
"$program" demo refit_48 --out refit.json
"$program" demo --terms --out terms.toml
"$program" quote refit.json --terms terms.toml --pdf quotation.pdf --xlsx quotation.xlsx --csv order.csv
"$program" demo conversion_assist --out assist.json
"$program" convert assist.json --pdf report.pdf --ics plan.ics --start 2027-03-01
mkdir stations
cp station.spoutline.json stations/a.json
cp assist.json stations/b.json
"$program" programme stations --processes 2 >programme.txt 2>programme_faults.txt
[ ! -s programme_faults.txt ] || { cat programme_faults.txt; exit 1; }
"$program" catalog list >catalogs.txt
"$program" book check >book.txt || "$program" book --help >book.txt
for paper in *.pdf; do [ "$(head -c 5 "$paper")" = "%PDF-" ]; done
# The window: it stays until it is told to go, and says nothing on standard error meanwhile.
QT_QPA_PLATFORM="${QT_QPA_PLATFORM:-offscreen}" timeout 12 "$program" station.spoutline.json 2>window.txt || code=$?
[ "${code:-0}" = 124 ] || { cat window.txt; echo "the window ended by itself: ${code:-0}"; exit 1; }
[ ! -s window.txt ] || grep -v propagateSizeHints window.txt || true
echo "planned, printed and shown: $(ls ./*.pdf | wc -l) papers, window open for 12 s"
