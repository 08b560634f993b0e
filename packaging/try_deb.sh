#!/bin/sh
# Installs a package into a bare Debian root, runs the program there, and takes it off again. Needs root and debootstrap.
# Usage: packaging/try_deb.sh PACKAGE.deb ROOT_FOLDER [SUITE [MIRROR]]
# ROOT_FOLDER is made by debootstrap where it is not there yet; nothing outside it is changed.
set -eu
package=$(realpath "$1")
root=$2
suite=${3:-bookworm}
mirror=${4:-$(sed -n 's/^URIs: *\([^ ]*\).*/\1/p; s/^deb \(\[[^]]*\] \)\{0,1\}\(http[^ ]*\) .*/\2/p' \
    /etc/apt/sources.list /etc/apt/sources.list.d/* 2>/dev/null | grep -v security | head -n 1)}
[ -d "$root/usr" ] || debootstrap --variant=minbase "$suite" "$root" "$mirror"
cp "$package" "$root/tmp/spoutline.deb"
cp "$(dirname "$0")/try_bundle.sh" "$root/tmp/try_bundle.sh"
inside() { chroot "$root" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin DEBIAN_FRONTEND=noninteractive LANG=C.UTF-8 "$@"; }
cp /etc/resolv.conf "$root/etc/resolv.conf" 2>/dev/null || true
inside apt-get -qq update
inside apt-get -qq install -y --no-install-recommends /tmp/spoutline.deb shared-mime-info desktop-file-utils libglib2.0-bin >/dev/null
inside sh /tmp/try_bundle.sh spoutline
# the file type: a survey by its ending or its first lines, never every JSON file
inside spoutline demo small_town --out /tmp/a.spoutline.json
inside cp /tmp/a.spoutline.json /tmp/without_ending
inside sh -c 'echo "{}" >/tmp/other.json'
told() { inside gio info -a standard::content-type "$1" | sed -n 's/.*content-type: //p'; }
[ "$(told /tmp/a.spoutline.json)" = application/x-spoutline-survey+json ]
[ "$(told /tmp/without_ending)" = application/x-spoutline-survey+json ]
[ "$(told /tmp/other.json)" = application/json ]
inside gio mime application/x-spoutline-survey+json | grep -q spoutline.desktop
inside desktop-file-validate /usr/share/applications/spoutline.desktop
inside apt-get -qq purge -y spoutline >/dev/null
[ ! -e "$root/usr/lib/spoutline" ]
echo "installed, run, file type known, taken off: $suite"
