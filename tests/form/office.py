"""Type into a form with LibreOffice itself: a macro of its own runs without a window and enters text cell by cell."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Sequence
from pathlib import Path
from xml.sax.saxutils import escape

OFFICE = shutil.which("soffice")
LONGEST_S = 300.0

_MODULE = """<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">
{code}</script:module>
"""
_MACRO = """
Sub Main
  Dim nothing()
  document = StarDesktop.loadComponentFromURL("{form}", "_blank", 0, nothing())
{typing}
  Save(document, "{xlsx}", "Calc MS Excel 2007 XML")
  Save(document, "{ods}", "calc8")
  document.close(True)
  document = StarDesktop.loadComponentFromURL("{ods}", "_blank", 0, nothing())
  Save(document, "{through_ods}", "Calc MS Excel 2007 XML")
  document.close(True)
End Sub

Sub Type_(document, cell As String, typed As String)
  Dim at(0) As New com.sun.star.beans.PropertyValue
  Dim what(0) As New com.sun.star.beans.PropertyValue
  dispatcher = createUnoService("com.sun.star.frame.DispatchHelper")
  at(0).Name = "ToPoint"
  at(0).Value = cell
  dispatcher.executeDispatch(document.CurrentController.Frame, ".uno:GoToCell", "", 0, at())
  what(0).Name = "StringName"
  what(0).Value = typed
  dispatcher.executeDispatch(document.CurrentController.Frame, ".uno:EnterString", "", 0, what())
End Sub

Sub Save(document, url As String, filter As String)
  Dim how(0) As New com.sun.star.beans.PropertyValue
  how(0).Name = "FilterName"
  how(0).Value = filter
  document.storeToURL(url, how())
End Sub
"""
_LOCALE = (
    '<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse">'
    "<value>{locale}</value></prop></item></oor:items>"
)


def typed(form: Path, folder: Path, entries: Sequence[tuple[str, str, str]], locale: str) -> tuple[Path, Path, Path]:
    """Type texts into cells as at the keyboard, in the language of a country, and save.

    Parameters
    ----------
    form : pathlib.Path
        The workbook to fill in; it stays as it is.
    folder : pathlib.Path
        Where what is saved, and the program's own settings, are put.
    entries : sequence of (str, str, str)
        Sheet, cell such as 'B6', and what is typed.
    locale : str
        Such as 'de-DE', where decimals have a comma.

    Returns
    -------
    tuple of pathlib.Path
        Saved as XLSX, saved as ODS, and that ODS opened again and saved as XLSX.
    """
    saved = (folder / "saved.xlsx", folder / "saved.ods", folder / "through-ods.xlsx")
    profile = folder / "profile"
    _office(profile, "--terminate_after_init")
    typing = "\n".join(
        f"  Type_(document, {_basic(f'${sheet}.{cell}')}, {_basic(said)})" for sheet, cell, said in entries
    )
    xlsx, ods, through_ods = (path.as_uri() for path in saved)
    code = _MACRO.format(form=form.resolve().as_uri(), typing=typing, xlsx=xlsx, ods=ods, through_ods=through_ods)
    module = profile / "user" / "basic" / "Standard" / "Module1.xba"
    module.write_text(_MODULE.format(code=escape(code)), encoding="utf-8")
    settings = profile / "user" / "registrymodifications.xcu"
    changed = settings.read_text(encoding="utf-8").replace("</oor:items>", _LOCALE.format(locale=locale))
    settings.write_text(changed, encoding="utf-8")
    _office(profile, "macro:///Standard.Module1.Main")
    return saved


def _basic(text: str) -> str:
    return '"' + text.replace('"', '""') + '"'


def _office(profile: Path, *arguments: str) -> None:
    assert OFFICE is not None
    command = [OFFICE, "--headless", "--norestore", f"-env:UserInstallation={profile.resolve().as_uri()}", *arguments]
    subprocess.run(command, check=True, capture_output=True, timeout=LONGEST_S)
