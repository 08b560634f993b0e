"""The conversion of a site: what stays and goes, cost, sequence, emissions; and programmes over many sites."""
