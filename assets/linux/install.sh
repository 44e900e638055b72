#!/bin/sh
# Menu entry, file types and icons for one user; `install.sh remove` takes them away again.
# The command `samepart` must be on the PATH of the desktop: link it there, for one
#   ln -s "$PWD/.venv/bin/samepart" ~/.local/bin/samepart
set -eu
here=$(cd "$(dirname "$0")" && pwd)
data=${XDG_DATA_HOME:-"$HOME/.local/share"}
icons=$data/icons/hicolor

if [ "${1:-}" = remove ]; then
    rm -f "$data/applications/samepart.desktop" "$data/mime/packages/samepart.xml" \
        "$icons"/*/apps/samepart.png "$icons/scalable/apps/samepart.svg"
else
    mkdir -p "$data/applications" "$data/mime/packages" "$icons/scalable/apps"
    cp "$here/samepart.desktop" "$data/applications/"
    cp "$here/samepart.xml" "$data/mime/packages/"
    cp "$here/../icons/samepart.svg" "$icons/scalable/apps/"
    for picture in "$here"/icons/*.png; do
        size=$(basename "$picture" .png)
        mkdir -p "$icons/${size}x$size/apps"
        cp "$picture" "$icons/${size}x$size/apps/samepart.png"
    done
fi
# what these are for, the desktop does by itself later
command -v update-mime-database >/dev/null && update-mime-database "$data/mime" || true
command -v update-desktop-database >/dev/null && update-desktop-database "$data/applications" || true
