# UNTRIED: written by packaging/facts.py; no Windows was at hand.
# Installs the frozen folder beside this script for the present user: copies it, puts Evenwater into the Start menu and lets it open
# *.ewq files. `install.ps1 -Remove` takes all of it away again; your log, which lies elsewhere, stays.
param([switch]$Remove)
$ErrorActionPreference = "Stop"
$place = Join-Path $env:LOCALAPPDATA "Programs\Evenwater"
$program = Join-Path $place "evenwater-window.exe"
$link = Join-Path ([Environment]::GetFolderPath("Programs")) "Evenwater.lnk"
$classes = "HKCU:\Software\Classes"
$kind = "page.evenwater.Evenwater.question"

if ($Remove) {
    foreach ($gone in $place, $link, "$classes\.ewq", "$classes\$kind") {
        if (Test-Path $gone) { Remove-Item $gone -Recurse -Force }
    }
    exit
}

if (Test-Path $place) { Remove-Item $place -Recurse -Force }
Copy-Item (Join-Path $PSScriptRoot "evenwater") $place -Recurse
$shortcut = (New-Object -ComObject WScript.Shell).CreateShortcut($link)
$shortcut.TargetPath = $program
$shortcut.Description = "Plan slow, safe corrections for coral reef tanks"
$shortcut.Save()
New-Item "$classes\.ewq" -Force -Value $kind | Out-Null
New-ItemProperty "$classes\.ewq" -Name "Content Type" -Value "application/vnd.evenwater.question+toml" -Force | Out-Null
New-Item "$classes\$kind" -Force -Value "Evenwater question" | Out-Null
New-Item "$classes\$kind\DefaultIcon" -Force -Value "$program,0" | Out-Null
New-Item "$classes\$kind\shell\open\command" -Force -Value ('"{0}" "%1"' -f $program) | Out-Null
