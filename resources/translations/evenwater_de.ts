<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>evenwater</name>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is not a date. Write it like 2026-12-20 or 2026-12-20 18:00.</source>
        <extracomment>read_return</extracomment>
        <translation>„{text}“ ist kein Datum. Schreiben Sie es wie 2026-12-20 oder 2026-12-20 18:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is more than a year away. Correct its year.</source>
        <extracomment>read_return</extracomment>
        <translation>„{text}“ liegt mehr als ein Jahr entfernt. Korrigieren Sie das Jahr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>until {back} {clock}, {timestamp} from now</source>
        <extracomment>view</extracomment>
        <translation>bis {back} {clock}, ab jetzt {timestamp}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: say what it holds, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}: Geben Sie an, was er fasst, dann kann mit ihm gerechnet werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: read its level, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}: Lesen Sie den Füllstand ab, dann kann mit ihm gerechnet werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Every jug lasts until you are back.</source>
        <extracomment>_headline</extracomment>
        <translation>Jeder Kanister reicht bis zu Ihrer Rückkehr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Nothing is known to be taken from any jug.</source>
        <extracomment>_headline</extracomment>
        <translation>Aus keinem Kanister ist eine Entnahme bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> {count} more run out too.</source>
        <extracomment>_headline</extracomment>
        <translation> Weitere, die leer werden: {count}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jugs} runs out first, on {out}.{more}</source>
        <extracomment>_headline</extracomment>
        <translation>{jugs} ist als Erstes leer, am {out}.{more}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{needed} are needed until you are back, {level} are in it.</source>
        <extracomment>_row</extracomment>
        <translation>{needed} werden bis zu Ihrer Rückkehr gebraucht, {level} sind darin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Left as it is, it runs out on {left_alone_until}.</source>
        <extracomment>_row</extracomment>
        <translation> Bleibt er, wie er ist, ist er am {left_alone_until} leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Read its level first: far less is logged than the daily rate takes.</source>
        <extracomment>_row</extracomment>
        <translation> Lesen Sie zuerst den Füllstand ab: Es ist viel weniger protokolliert, als die Tagesmenge entnimmt.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Even full it lasts only until {lasts_until}; after that {n} doses are left out. Ask somebody to refill it.</source>
        <extracomment>for 1:  Even full it lasts only until {lasts_until}; after that 1 dose is left out. Ask somebody to refill it.; _row</extracomment>
        <translation>
            <numerusform> Selbst voll reicht er nur bis {lasts_until}; danach fällt 1 Dosis aus. Bitten Sie jemanden, ihn nachzufüllen.</numerusform>
            <numerusform> Selbst voll reicht er nur bis {lasts_until}; danach fallen {n} Dosen aus. Bitten Sie jemanden, ihn nachzufüllen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Add {add}</source>
        <extracomment>_row</extracomment>
        <translation>{add} zugeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Lasts</source>
        <extracomment>_row</extracomment>
        <translation>Reicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Full, and too small</source>
        <extracomment>_row</extracomment>
        <translation>Voll und zu klein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>test {parameter}, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>{parameter} testen, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>card {plan_id} for {parameter} is valid no longer, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>Karte {plan_id} für {parameter} gilt nicht mehr, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>the batch in {jug} is to be used up</source>
        <extracomment>_dues</extracomment>
        <translation>der Ansatz in {jug} ist aufzubrauchen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} asks to test {parameter}, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>Plan {plan_id} verlangt: {parameter} testen, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} for {parameter} ends with its card, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>Plan {plan_id} für {parameter} endet mit seiner Karte, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>and {found} more</source>
        <extracomment>_listed</extracomment>
        <translation>und {found} weitere</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Daily rise</source>
        <translation>Anstieg am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>With what was given</source>
        <translation>Mit dem schon Gegebenen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Single dose</source>
        <translation>Einzeldosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Pump running</source>
        <translation>Pumpe läuft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Smallest dose</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Kleinste Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/card/label_parts.py"/>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Jug</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Dissolved</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Gelöst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Evaporation</source>
        <translation>Verdunstung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Rise of pH in an hour</source>
        <translation>pH-Anstieg in einer Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Highest pH</source>
        <translation>Höchster pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../glossary.toml"/>
        <source>Aragonite saturation</source>
        <extracomment>_way, aragonite saturation</extracomment>
        <translation>Aragonitsättigung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>It was {number}</source>
        <extracomment>_offers</extracomment>
        <translation>Es war {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>mL per hour</source>
        <extracomment>per_hour, _answered, working</extracomment>
        <translation>mL pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>L (litres) per hour</source>
        <extracomment>per_hour</extracomment>
        <translation>L (Liter) pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>{dose} {per_day} ({run_time}) · {in_24_hours} in 24 hours · {total} in all</source>
        <extracomment>_answered</extracomment>
        <translation>{dose} {per_day} ({run_time}) · {in_24_hours} in 24 Stunden · {total} insgesamt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>for {lasts_days}, until {ends}</source>
        <extracomment>_answered</extracomment>
        <translation>{lasts_days} lang, bis {ends}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>millilitres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>Milliliter pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>litres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>Liter pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Read the bottle's own safety sheet first; it wins over this page.</source>
        <translation>Lesen Sie zuerst das Sicherheitsdatenblatt der Flasche; es hat Vorrang vor dieser Seite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../chemicals.toml"/>
        <source>If it gets in the eyes, rinse for at least 15 minutes and get medical help.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Bei Augenkontakt mindestens 15 Minuten lang spülen und ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>More doses a day would make it faster.</source>
        <translation>Mehr Dosen am Tag würden es beschleunigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A faster pump or a stronger stock would make it faster.</source>
        <translation>Eine schnellere Pumpe oder eine stärkere Stammlösung würde es beschleunigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Sodium bicarbonate, which does not lift pH at once, would make it faster.</source>
        <translation>Natriumhydrogencarbonat, das den pH nicht sofort anhebt, würde es beschleunigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A stronger additive than limewater would make it faster.</source>
        <translation>Ein stärkerer Zusatz als Kalkwasser würde es beschleunigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>What it does to {set_by} sets the pace</source>
        <extracomment>_set_by</extracomment>
        <translation>Das Tempo bestimmt die Wirkung auf {set_by}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source> too</source>
        <extracomment>_bar, _checked</extracomment>
        <translation> auch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per L</source>
        <extracomment>_bar, _bars, a unit beside a figure</extracomment>
        <translation>g pro L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value}, at least {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value}, mindestens {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value} of {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value} von {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now</source>
        <translation>Das Protokoll, wie es jetzt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before the first edit of the day</source>
        <translation>Vor der ersten Änderung des Tages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before an update of the program</source>
        <translation>Vor einer Aktualisierung des Programms</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before a copy was restored</source>
        <translation>Vor dem Wiederherstellen einer Kopie</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;readings</source>
        <extracomment>for 1: {n}&#xa0;reading</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Messwert</numerusform>
            <numerusform>{n}&#xa0;Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;doses</source>
        <extracomment>for 1: {n}&#xa0;dose</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Dosis</numerusform>
            <numerusform>{n}&#xa0;Dosen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;water exchanges</source>
        <extracomment>for 1: {n}&#xa0;water exchange</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Wasserwechsel</numerusform>
            <numerusform>{n}&#xa0;Wasserwechsel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;notes</source>
        <extracomment>for 1: {n}&#xa0;note</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Notiz</numerusform>
            <numerusform>{n}&#xa0;Notizen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;calibrations</source>
        <extracomment>for 1: {n}&#xa0;calibration</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Kalibrierung</numerusform>
            <numerusform>{n}&#xa0;Kalibrierungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;batches</source>
        <extracomment>for 1: {n}&#xa0;batch</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Ansatz</numerusform>
            <numerusform>{n}&#xa0;Ansätze</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk is full</source>
        <translation>die Festplatte ist voll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder is read-only</source>
        <translation>der Ordner ist schreibgeschützt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder cannot be written to</source>
        <translation>in den Ordner kann nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk does not answer</source>
        <translation>die Festplatte antwortet nicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log is busy in another window or program</source>
        <translation>das Protokoll wird gerade von einem anderen Fenster oder Programm benutzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log does not pass its check. Restore an older copy</source>
        <translation>das Protokoll besteht seine Prüfung nicht. Stellen Sie eine ältere Kopie wieder her</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now is copied first. That copy can be restored in the same way.</source>
        <translation>Vorher wird das Protokoll, wie es jetzt ist, kopiert. Diese Kopie lässt sich auf dieselbe Weise wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restoring cannot be undone with Undo. Undo then takes back what was done before the copy was made.</source>
        <translation>Das Wiederherstellen lässt sich nicht mit Rückgängig aufheben. Rückgängig nimmt danach zurück, was vor dem Anlegen der Kopie getan wurde.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;systems</source>
        <extracomment>for 1: {n}&#xa0;system; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;System</numerusform>
            <numerusform>{n}&#xa0;Systeme</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;entries</source>
        <extracomment>for 1: {n}&#xa0;entry; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Eintrag</numerusform>
            <numerusform>{n}&#xa0;Einträge</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> up to {newest}</source>
        <extracomment>_holds</extracomment>
        <translation> bis {newest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;changes</source>
        <extracomment>for 1: {n}&#xa0;change; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Änderung</numerusform>
            <numerusform>{n}&#xa0;Änderungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> of systems, jugs, pumps or corrections</source>
        <extracomment>lost</extracomment>
        <translation> an Systemen, Kanistern, Pumpen oder Korrekturen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>From the log would go: {parts}.</source>
        <extracomment>lost</extracomment>
        <translation>Aus dem Protokoll würde verschwinden: {parts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Nothing that the log holds now would go.</source>
        <extracomment>lost</extracomment>
        <translation>Nichts, was jetzt im Protokoll steht, würde verschwinden.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> {cards} in use would be void: take them down.</source>
        <extracomment>for 1:  {cards} in use would be void: take it down.; lost</extracomment>
        <translation>
            <numerusform> {cards} im Gebrauch würde ungültig: Nehmen Sie sie ab.</numerusform>
            <numerusform> {cards} im Gebrauch würden ungültig: Nehmen Sie sie ab.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;cards</source>
        <extracomment>for 1: {n}&#xa0;card; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Karte</numerusform>
            <numerusform>{n}&#xa0;Karten</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restore the copy of {made}?</source>
        <extracomment>asked</extracomment>
        <translation>Die Kopie vom {made} wiederherstellen?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>&amp;Restore the copy of {made}</source>
        <extracomment>offered</extracomment>
        <translation>Kopie vom {made} &amp;wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} holds {newest}. What was noted after that is lost. The damaged file is kept beside the copies. Close every other window of this log first.</source>
        <extracomment>damaged</extracomment>
        <translation>Die Kopie vom {made} enthält {newest}. Was danach notiert wurde, ist verloren. Die beschädigte Datei bleibt neben den Kopien erhalten. Schließen Sie zuerst jedes andere Fenster dieses Protokolls.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} is restored. The log as it was is kept as {kept}.</source>
        <extracomment>restored</extracomment>
        <translation>Die Kopie vom {made} ist wiederhergestellt. Das Protokoll, wie es war, bleibt als {kept} erhalten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Saved as {place}.</source>
        <extracomment>carried</extracomment>
        <translation>Gespeichert als {place}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Copies lie in {folder}. One is made before the first edit of a day, and the last ten of these are kept; besides, one before each update and before each restoration, which stay. A disk can fail: save a copy elsewhere now and then.</source>
        <extracomment>where</extracomment>
        <translation>Die Kopien liegen in {folder}. Vor der ersten Änderung eines Tages wird eine angelegt, und die letzten zehn davon bleiben erhalten; außerdem je eine vor jeder Aktualisierung und vor jedem Wiederherstellen, die dauerhaft bleiben. Eine Festplatte kann ausfallen: Speichern Sie ab und zu eine Kopie an einem anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>it could not be written</source>
        <extracomment>no_copy</extracomment>
        <translation>sie konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>No copy of the log could be made today: {cause}.</source>
        <extracomment>no_copy</extracomment>
        <translation>Heute konnte keine Kopie des Protokolls angelegt werden: {cause}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source> by {who}</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation> von {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{words}, was given at {when}{by}. Is this another one?</source>
        <extracomment>_again</extracomment>
        <translation>{words}, wurde schon gegeben: {when}{by}. Ist dies eine weitere Dosis?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Yes, log it too</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation>Ja, auch protokollieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source> and </source>
        <extracomment>_flat, card, strength_words</extracomment>
        <translation> und </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{before}, was read on {when} as well. Was it tested again, with fresh reagent?</source>
        <extracomment>_flat</extracomment>
        <translation>{before}, so wurde auch gemessen: {when}. Wurde neu getestet, mit frischem Reagenz?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>Yes, it was tested again</source>
        <extracomment>_flat</extracomment>
        <translation>Ja, es wurde neu getestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>, the plan that is followed included</source>
        <extracomment>_too_much</extracomment>
        <translation>, den befolgten Plan eingeschlossen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>With this, {name} rises by {given} within 24 hours{with_plan}; the most is {hard}. If it was really given: log it, stop the pump, and test {name}.</source>
        <extracomment>_too_much</extracomment>
        <translation>{name} steigt damit innerhalb von 24 Stunden um {given}{with_plan}; höchstens erlaubt ist {hard}. Wenn es wirklich gegeben wurde: Protokollieren Sie es, stoppen Sie die Pumpe, und testen Sie {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>It was given, log it</source>
        <extracomment>_too_much</extracomment>
        <translation>Es wurde gegeben, protokollieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Good enough to dose by</source>
        <extracomment>_lines</extracomment>
        <translation>Gut genug zum Dosieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat the calibration</source>
        <extracomment>_lines</extracomment>
        <translation>Kalibrierung wiederholen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{verdict}: the pump gives {best}.</source>
        <extracomment>_lines</extracomment>
        <translation>{verdict}: Die Pumpe fördert {best}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Wiederholen: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Note: {reason}</source>
        <extracomment>_lines, _remarks</extracomment>
        <translation>Hinweis: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Against the {setting} it is set to: {bias_value} {more_or_less}.</source>
        <extracomment>_lines</extracomment>
        <translation>Gegenüber der Einstellung {setting}: {bias_value} {more_or_less}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Z factor: {z_ml_per_g}.</source>
        <extracomment>_lines</extracomment>
        <translation>Z-Faktor: {z_ml_per_g}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>mL per g</source>
        <extracomment>_lines</extracomment>
        <translation>mL pro g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>A dose of {dose} takes {dose_seconds} at this flow.</source>
        <extracomment>_lines</extracomment>
        <translation>Eine Dosis von {dose} dauert bei dieser Förderleistung {dose_seconds}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The line holds {dead_volume}: after a refill run {at_most_seconds}, and see the liquid at its end.</source>
        <extracomment>_lines</extracomment>
        <translation>Die Leitung fasst {dead_volume}: nach dem Nachfüllen {at_most_seconds} laufen lassen und die Flüssigkeit am Ende sehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Over {window} it gave at worst from {low} {more_or_less} to {high} {more_or_less_2} than set.</source>
        <extracomment>_lines</extracomment>
        <translation>Über {window} förderte sie schlimmstenfalls zwischen {low} {more_or_less} und {high} {more_or_less_2} als eingestellt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The head has {left} of its {life} left{at}.</source>
        <extracomment>_lines</extracomment>
        <translation>Der Pumpenkopf hat noch {left} von {life}{at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{mean} (from {mean_2} to {mean_3})</source>
        <extracomment>_interval</extracomment>
        <translation>{mean} (von {mean_2} bis {mean_3})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{n} runs</source>
        <extracomment>for 1: 1 run; _group, _runs</extracomment>
        <translation>
            <numerusform>1 Lauf</numerusform>
            <numerusform>{n} Läufe</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>, scattering by {cv}</source>
        <extracomment>_group</extracomment>
        <translation>, Streuung {cv}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{runs} of {seconds}: {timed}{scatter}.</source>
        <extracomment>_group</extracomment>
        <translation>{runs} zu {seconds}: {timed}{scatter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scale</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>cylinder</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>Messzylinder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>No run is long enough for this {with_what} to be off by {wanted} at most: the water's temperature is not known well enough.</source>
        <extracomment>_needed</extracomment>
        <translation>Kein Lauf ist lang genug, um mit diesem Messgerät ({with_what}) um höchstens {wanted} abzuweichen: Die Temperatur des Wassers ist nicht genau genug bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>For this {with_what} and watch to be off by {wanted} at most, a run takes {seconds} or longer and brings {volume}.</source>
        <extracomment>_needed</extracomment>
        <translation>Um mit diesem Messgerät ({with_what}) und dieser Uhr um höchstens {wanted} abzuweichen, dauert ein Lauf {seconds} oder länger und bringt {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>In {per_hours} the flow {rises} by {drift} (give or take {drift_half_width}). Expected now: {expected} (give or take {expected_half_width}).</source>
        <extracomment>_wear</extracomment>
        <translation>Je {per_hours} {rises} die Förderleistung um {drift} (± {drift_half_width}). Jetzt zu erwarten: {expected} (± {expected_half_width}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>rises</source>
        <extracomment>_wear, _pace</extracomment>
        <translation>steigt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>falls</source>
        <extracomment>_wear, _trend, _pace</extracomment>
        <translation>sinkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It is {limit} or more off already.</source>
        <extracomment>_leaves</extracomment>
        <translation>Sie weicht schon um {limit} oder mehr ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It will be {limit} off after {hours}{at}, at the earliest after {earliest_hours}{earliest_at}.</source>
        <extracomment>_leaves</extracomment>
        <translation>Abweichung von {limit}: nach {hours}{at}, frühestens nach {earliest_hours}{earliest_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mL per min</source>
        <extracomment>flow, of_wear, pump_setting</extracomment>
        <translation>mL pro min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>more</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>less</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Run {runs}</source>
        <extracomment>_numbers</extracomment>
        <translation>Lauf {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Runs {first} and {last}</source>
        <extracomment>_numbers</extracomment>
        <translation>Läufe {first} und {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> each</source>
        <extracomment>_each</extracomment>
        <translation> pro Lauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This scale</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Diese Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This cylinder</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Dieser Zylinder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{with_what} tells the flow of such a run to {share} only, and {most} is the least that is of use.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{with_what} zeigt die Förderleistung bei einem solchen Lauf nur auf {share} genau, und brauchbar ist höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Measure the temperature of the water, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Messen Sie die Temperatur des Wassers, oder nehmen Sie ein feineres Messgerät.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Let the pump run for {seconds} or longer, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Lassen Sie die Pumpe {seconds} oder länger laufen, oder nehmen Sie ein feineres Messgerät.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>There is no run yet. Let the pump run into a cylinder or onto a scale {fewest} times.</source>
        <translation>Es gibt noch keinen Lauf. Lassen Sie die Pumpe {fewest}-mal in einen Zylinder oder auf eine Waage laufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump ran and nothing came out. Look for air in the line, crust at its end, a split tube or an empty jug, prime the line and calibrate again.</source>
        <translation>Die Pumpe lief, und es kam nichts heraus. Suchen Sie nach Luft in der Leitung, Kruste an ihrem Ende, einem gerissenen Schlauch oder einem leeren Kanister, füllen Sie die Leitung vor, und kalibrieren Sie erneut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These figures are no flow of a pump. Write them again.</source>
        <translation>Diese Zahlen ergeben keine Förderleistung einer Pumpe. Schreiben Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} brought nothing. Look for air in the line, prime it and repeat.</source>
        <translation>{runs}: Es kam nichts. Suchen Sie nach Luft in der Leitung, füllen Sie sie vor, und wiederholen Sie.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{n} runs tell</source>
        <extracomment>for 1: A single run tells</extracomment>
        <translation>
            <numerusform>Ein einziger Lauf sagt</numerusform>
            <numerusform>{n} Läufe sagen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> too little. Repeat until there are {fewest} of {seconds} each.</source>
        <translation> zu wenig. Wiederholen Sie, bis es {fewest} von je {seconds} sind.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The runs scatter by {spread}, and {most} is the most. Look for air in the line and a worn tube, prime it and repeat.</source>
        <translation>Die Läufe streuen um {spread}, und {most} ist das Höchste. Suchen Sie nach Luft in der Leitung und einem verschlissenen Schlauch, füllen Sie die Leitung vor, und wiederholen Sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These runs tell the flow to within {share} only; within {good} would be good. Find out what scatters, or make more runs.</source>
        <translation>Diese Läufe zeigen die Förderleistung nur auf {share} genau; auf {good} genau wäre gut. Finden Sie heraus, was streut, oder machen Sie mehr Läufe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} lasted {seconds}{runs_2}, the others {others}: a short run gives another flow than a long one, so they do not count together. Make {fewest} of one length.</source>
        <translation>{runs}: {seconds}{runs_2}, die anderen: {others}; ein kurzer Lauf ergibt eine andere Förderleistung als ein langer, deshalb zählen sie nicht zusammen. Machen Sie {fewest} von gleicher Länge.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Enter {flow} as its flow, and look at the tube.</source>
        <translation>Die Pumpe fördert {bias} {more_or_less} als die eingestellten {setting}. Geben Sie {flow} als ihre Förderleistung ein, und sehen Sie den Schlauch an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Do not dose on with that figure: look for a worn tube, air and crust, then calibrate again. Now it gives {flow}.</source>
        <translation>Die Pumpe fördert {bias} {more_or_less} als die eingestellten {setting}. Dosieren Sie mit diesem Wert nicht weiter: Suchen Sie nach verschlissenem Schlauch, Luft und Kruste, dann kalibrieren Sie erneut. Jetzt fördert sie {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>A dose of {dose} takes {dose_seconds}, but these runs lasted {seconds}. </source>
        <translation>Eine Dosis von {dose} dauert {dose_seconds}, aber diese Läufe dauerten {seconds}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Short doses are less accurate: collect several doses of that size and calibrate with them.</source>
        <translation>Kurze Dosen sind weniger genau: Sammeln Sie mehrere Dosen dieser Größe, und kalibrieren Sie damit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Calibrate with runs as long as a dose.</source>
        <translation>Kalibrieren Sie mit Läufen, die so lang wie eine Dosis sind.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>In {seconds} the pump gives {difference} {more_or_less} per minute than in {than}. Dose by the runs that are nearest to the dose in use.</source>
        <translation>In {seconds} fördert die Pumpe pro Minute {difference} {more_or_less} als in {than}. Dosieren Sie nach den Läufen, die der benutzten Dosis am nächsten sind.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The cylinder's graduation is not said, so {graduation} is taken, the last digit that was read.</source>
        <translation>Die Teilung des Zylinders ist nicht angegeben, deshalb wird {graduation} angenommen, die letzte abgelesene Stelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The scale's last digit is not said, so {grams} is taken, the last digit that was written.</source>
        <translation>Die letzte Stelle der Waage ist nicht angegeben, deshalb wird {grams} angenommen, die letzte geschriebene Stelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The water's temperature is not said, so {degc} is taken, give or take {off}.</source>
        <translation>Die Temperatur des Wassers ist nicht angegeben, deshalb wird {degc} angenommen, ± {off}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibration of {at} is still to come. Correct the date, or leave it out.</source>
        <translation>Die Kalibrierung vom {at} liegt noch in der Zukunft. Korrigieren Sie das Datum, oder lassen Sie sie weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The running hours go back from {before} to {after}. After a new head or a new tube the hours begin again: leave out what was measured before.</source>
        <translation>Die Laufstunden gehen von {before} auf {after} zurück. Nach einem neuen Pumpenkopf oder Schlauch beginnen die Stunden neu: Lassen Sie weg, was vorher gemessen wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head ran from {before} to {after} while only {passed} went by. Correct the hours or the date.</source>
        <translation>Der Pumpenkopf lief von {before} bis {after}, während nur {passed} vergingen. Korrigieren Sie die Stunden oder das Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>How the flow changes cannot be told from a single calibration.</source>
        <translation>Wie sich die Förderleistung ändert, lässt sich aus einer einzigen Kalibrierung nicht erkennen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>All calibrations were made at {hours}, so nothing can be said of how the flow changes with running hours.</source>
        <translation>Alle Kalibrierungen wurden bei {hours} gemacht, deshalb lässt sich nicht sagen, wie sich die Förderleistung mit den Laufstunden ändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The line through the calibrations gives no flow at all. Look at the figures of the earlier ones again.</source>
        <translation>Die Linie durch die Kalibrierungen ergibt gar keine Förderleistung. Sehen Sie die Zahlen der früheren noch einmal an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>It is not clear yet that the flow changes: from {low} {more_or_less} to {high} {more_or_less_2} in {hours}, so no date is said. More calibrations will tell.</source>
        <translation>Es ist noch nicht klar, ob sich die Förderleistung ändert: von {low} {more_or_less} bis {high} {more_or_less_2} in {hours}, deshalb wird kein Datum genannt. Weitere Kalibrierungen werden es zeigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibrations lie {factor} times further off the line than they should. Was the tube or the head changed between them, or air in the line?</source>
        <translation>Die Kalibrierungen liegen {factor}-mal weiter neben der Linie, als sie sollten. Wurde dazwischen der Schlauch oder der Pumpenkopf gewechselt, oder war Luft in der Leitung?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head has run {hours} of the {life} that one lasts. Change the head or its tube, then calibrate again.</source>
        <translation>Der Pumpenkopf ist {hours} gelaufen, einer hält {life}. Wechseln Sie den Pumpenkopf oder seinen Schlauch, dann kalibrieren Sie erneut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Date and time</source>
        <translation>Datum und Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Days from now</source>
        <translation>Tage ab jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Running hours (h)</source>
        <translation>Laufstunden (h)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, low end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, unteres Ende</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, high end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, oberes Ende</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>dose</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>reading</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH before a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH vor einer Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH right after a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH direkt nach einer Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>aragonite saturation</source>
        <extracomment>of_ramp</extracomment>
        <translation>Aragonitsättigung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>new water</source>
        <extracomment>of_history, of_exchange</extracomment>
        <translation>frisches Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected by plan {number}</source>
        <extracomment>of_history</extracomment>
        <translation>nach Plan {number} erwartet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>all together</source>
        <extracomment>of_together</extracomment>
        <translation>alle zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>low end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>unteres Ende</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>high end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>oberes Ende</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>without exchange</source>
        <extracomment>of_together, _spans</extracomment>
        <translation>ohne Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>flow</source>
        <extracomment>of_wear</extracomment>
        <translation>Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>counts</source>
        <extracomment>of_wear</extracomment>
        <translation>zählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected today</source>
        <extracomment>of_wear</extracomment>
        <translation>heute erwartet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>value</source>
        <extracomment>of_exchange</extracomment>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Foods</source>
        <extracomment>of_foods</extracomment>
        <translation>Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Caution</source>
        <extracomment>_lines, _hazards, Given.hazards</extracomment>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Caution: {caution}</source>
        <extracomment>_lines, _hazards</extracomment>
        <translation>Vorsicht: {caution}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>Before: {before}</source>
        <extracomment>_lines</extracomment>
        <translation>Vorher: {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>At once: {at_once}</source>
        <extracomment>_lines</extracomment>
        <translation>Sofort: {at_once}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>After gas exchange: {after_gas_exchange}</source>
        <extracomment>_lines</extracomment>
        <translation>Nach dem Gasaustausch: {after_gas_exchange}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>pH {ph} ({scale} scale), aragonite saturation {saturation}, alkalinity {alkalinity}, dissolved inorganic carbon {dic}.</source>
        <extracomment>_moment</extracomment>
        <translation>pH {ph} (Skala {scale}), Aragonitsättigung {saturation}, Alkalinität {alkalinity}, gelöster anorganischer Kohlenstoff {dic}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L</source>
        <extracomment>_moment, _way, a unit beside a figure</extracomment>
        <translation>mmol pro L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go on</source>
        <extracomment>clock_words</extracomment>
        <translation>vorgestellt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>later</source>
        <extracomment>clock_words</extracomment>
        <translation>später</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go back</source>
        <extracomment>clock_words</extracomment>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>earlier</source>
        <extracomment>clock_words</extracomment>
        <translation>früher</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>On {at} the clocks on the wall {how} by {by}; those of the pumps do not. </source>
        <extracomment>clock_words</extracomment>
        <translation>Am {at} werden die Uhren an der Wand um {by} {how}; die der Pumpen nicht. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>No dose is left out and none comes twice, but each comes {by} {comes} by the wall, and so do the quiet hours. </source>
        <extracomment>clock_words</extracomment>
        <translation>Keine Dosis fällt aus, und keine kommt zweimal, aber jede kommt nach der Wanduhr {by} {comes}, ebenso die Ruhezeiten. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>Set the pumps' clocks by the wall the next day</source>
        <extracomment>clock_words</extracomment>
        <translation>Stellen Sie die Uhren der Pumpen am nächsten Tag nach der Wanduhr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>{begin}{then}{again}: stop the pumps for the {by} that they then show twice.</source>
        <extracomment>clock_words</extracomment>
        <translation>{begin}{then}{again}: Stoppen Sie die Pumpen für die {by}, die sie dann zweimal anzeigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{parameter} used now: {use}.</source>
        <extracomment>_lines</extracomment>
        <translation>{parameter}, Verbrauch jetzt: {use}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>It should now be at {value_value} ({low} to {high}).</source>
        <extracomment>_lines</extracomment>
        <translation>Jetzt sollte der Wert bei {value_value} liegen ({low} bis {high}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>just now</source>
        <extracomment>_lines, age_words</extracomment>
        <translation>gerade eben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{since_days} ago</source>
        <extracomment>_lines</extracomment>
        <translation>{since_days} her</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>From {readings} readings, the last one {age}.</source>
        <extracomment>_lines</extracomment>
        <translation>Aus {readings} Messwerten, der letzte: {age}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>Not believed: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Nicht glaubhaft: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{use_value} (from {low} to {high})</source>
        <extracomment>per_day</extracomment>
        <translation>{use_value} (von {low} bis {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In the last weeks use has been steady.</source>
        <extracomment>_trend</extracomment>
        <translation>In den letzten Wochen war der Verbrauch gleichmäßig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In a week use {grows} by {per_week} per day.</source>
        <extracomment>_trend</extracomment>
        <translation>In einer Woche {grows} der Verbrauch um {per_week} pro Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>grows</source>
        <extracomment>_trend</extracomment>
        <translation>wächst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{start} to {end}: {use}</source>
        <extracomment>_period</extracomment>
        <translation>{start} bis {end}: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>mg per meq</source>
        <extracomment>_per_meq, _ratio</extracomment>
        <translation>mg pro meq</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is no reading yet.</source>
        <translation>Es gibt noch keinen Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is only one reading.</source>
        <translation>Es gibt nur einen Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source> To know what is used takes two at least, and more are better. Test again tomorrow.</source>
        <translation> Um den Verbrauch zu kennen, braucht es mindestens zwei, mehr sind besser. Testen Sie morgen wieder.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>These are {count} readings; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Das sind {count} Messwerte; {most} lassen sich zusammen betrachten. Lassen Sie die ältesten weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>All readings lie within {hours}. What is used in a day cannot be told from that. Test again tomorrow.</source>
        <translation>Alle Messwerte liegen innerhalb von {hours}. Was an einem Tag verbraucht wird, lässt sich daraus nicht erkennen. Testen Sie morgen wieder.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>In {what} {number} a figure is no number or cannot be. Write it again.</source>
        <translation>{what} {number}: Ein Wert ist keine Zahl oder unmöglich. Schreiben Sie ihn neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last reading is {age_days} days old, and use may have changed in more than {stale_days} days. Test again.</source>
        <translation>Der letzte Messwert ist {age_days} Tage alt, und der Verbrauch kann sich in mehr als {stale_days} Tagen geändert haben. Testen Sie wieder.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The rise cannot be told from the scatter of the two tests, so it says nothing of the volume. Test more often, or after a larger correction.</source>
        <translation>Der Anstieg lässt sich nicht von der Streuung der beiden Tests unterscheiden, deshalb sagt er nichts über das Volumen. Testen Sie öfter oder nach einer größeren Korrektur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>For each meq of alkalinity {ratio} of calcium are used ({low} to {high}); skeletons take {expected}. Something is not as it seems.</source>
        <translation>Je meq Alkalinität werden {ratio} Calcium verbraucht ({low} bis {high}); Skelette nehmen {expected}. Etwas ist nicht so, wie es scheint.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>How much alkalinity is used is not known well enough to hold calcium against it.</source>
        <translation>Der Verbrauch an Alkalinität ist nicht genau genug bekannt, um Calcium damit zu vergleichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>One of the two tests may be wrong: check both with a standard, or with another kit.</source>
        <translation>Einer der beiden Tests kann falsch sein: Prüfen Sie beide mit einem Standard oder mit einem anderen Testset.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may fall out without calcium, as magnesium hydroxide where a strong dose enters: look for white crust there.</source>
        <translation>Alkalinität kann ohne Calcium ausfallen, als Magnesiumhydroxid, wo eine starke Dosis eintritt: Suchen Sie dort nach weißer Kruste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may go elsewhere: much food that turns into nitrate takes it, and skeletons that hold magnesium.</source>
        <translation>Alkalinität kann anderswohin gehen: Viel Futter, das zu Nitrat wird, nimmt sie, ebenso Skelette, die Magnesium enthalten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may come from elsewhere: where nitrate is used up, or from a dose or an exchange that is not in the log.</source>
        <translation>Alkalinität kann von anderswo kommen: wo Nitrat verbraucht wird, oder aus einer Dosis oder einem Wasserwechsel, die nicht im Protokoll stehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>A reading of {at} is more than {years} years old. Leave it out, or correct the year.</source>
        <translation>Ein Messwert vom {at} ist mehr als {years} Jahre alt. Lassen Sie ihn weg, oder korrigieren Sie das Jahr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The {what} of {at} is still to come. Correct the time, or leave it out until it is done.</source>
        <translation>{what}, {at}: Das liegt noch in der Zukunft. Korrigieren Sie die Zeit, oder lassen Sie es weg, bis es geschehen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{value} on {at} is {off} {above} what the others say, so it is not counted.</source>
        <translation>{value} am {at} liegt {off} {above} dem, was die anderen sagen, und zählt deshalb nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>above</source>
        <extracomment>_leaving</extracomment>
        <translation>über</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>below</source>
        <extracomment>_leaving</extracomment>
        <translation>unter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Before {at} the value {rose} at once by {by}, which nothing in the log explains. Was a dose or an exchange not written down?</source>
        <translation>Vor {at} {rose} der Wert plötzlich um {by}, was nichts im Protokoll erklärt. Wurde eine Dosis oder ein Wasserwechsel nicht aufgeschrieben?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>rose</source>
        <translation>stieg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>fell</source>
        <translation>fiel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Use changed about {at}, from {before} to {after}. What was planned on the old use needs planning again.</source>
        <translation>Der Verbrauch änderte sich etwa am {at}, von {before} auf {after}. Was mit dem alten Verbrauch geplant wurde, muss neu geplant werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last {count} readings all say {value}. Were they really tested, each with fresh reagent?</source>
        <translation>Die letzten {count} Messwerte lauten alle {value}. Wurden sie wirklich getestet, jeder mit frischem Reagenz?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>More {parameter} is made in the tank than is used up: {per_day}.</source>
        <translation>Im Becken entsteht mehr {parameter}, als verbraucht wird: {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{parameter} rises by {per_day} more than the log explains. A dose is missing from the log, or is stronger than written.</source>
        <translation>{parameter} steigt um {per_day} mehr, als das Protokoll erklärt. Eine Dosis fehlt im Protokoll oder ist stärker als aufgeschrieben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>It is not clear yet that anything is used: {low} to {high}. More readings will tell.</source>
        <translation>Es ist noch nicht klar, ob etwas verbraucht wird: {low} bis {high}. Weitere Messwerte werden es zeigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The test reads high</source>
        <translation>Messwert zu hoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Two days were missed</source>
        <translation>Zwei Tage ausgefallen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The pump failed</source>
        <translation>Pumpe ausgefallen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the tests read</source>
        <translation>Was die Tests ergaben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../glossary.toml"/>
        <source>Reading</source>
        <extracomment>_headings, card, reading</extracomment>
        <translation>Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Initials</source>
        <extracomment>card</extracomment>
        <translation>Kürzel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the test read and what was set</source>
        <translation>Was der Test ergab und was eingestellt wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reading or dose</source>
        <translation>Messwert oder Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>What was really given</source>
        <translation>Was wirklich gegeben wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Amount given</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Gegebene Menge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {stop}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Verwenden Sie diese Karte, wenn {name} über {stop} gemessen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {early} before {by}, or above {stop} at any time.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Verwenden Sie diese Karte, wenn {name} vor {by} über {early} gemessen wird oder zu irgendeiner Zeit über {stop}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>At once</source>
        <extracomment>_reads_high, _days_missed, _pump_failed</extracomment>
        <translation>Sofort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump.</source>
        <extracomment>_reads_high, _days_missed, _bottle</extracomment>
        <translation>Stoppen Sie die Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing else that raises {name}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Geben Sie nichts anderes, was {name} anhebt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test again with a fresh kit. Let a second person do it, if there is one.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Testen Sie noch einmal mit einem frischen Testset. Lassen Sie es eine zweite Person tun, wenn eine da ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test not high</source>
        <extracomment>_reads_high</extracomment>
        <translation>Zweiter Test nicht hoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Start the pump as it was set. The plan goes on. Make nothing up.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Starten Sie die Pumpe, wie sie eingestellt war. Der Plan läuft weiter. Holen Sie nichts nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test high too</source>
        <extracomment>_reads_high</extracomment>
        <translation>Zweiter Test auch hoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Lassen Sie die Pumpe aus. Rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads above {hard}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Messwert über {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Call the keeper at once. Exchange water only when the keeper says so.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Rufen Sie sofort den Halter an. Wechseln Sie Wasser nur, wenn der Halter es sagt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every day</source>
        <extracomment>_reads_high, _days_missed, _steps</extracomment>
        <translation>Jeden Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} at the same hour. Write it down.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Testen Sie {name} zur gleichen Stunde. Schreiben Sie es auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>It has fallen</source>
        <extracomment>_reads_high</extracomment>
        <translation>Es ist gesunken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>When it reads {target} or less, and less than the day before: </source>
        <extracomment>_reads_high</extracomment>
        <translation>Wenn {target} oder weniger gemessen wird, und weniger als am Vortag: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>set the pump to the upkeep below.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Stellen Sie die Pumpe auf die Versorgung unten ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>call the keeper. Leave the pump off.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Rufen Sie den Halter an. Lassen Sie die Pumpe aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No lower after a day</source>
        <extracomment>_reads_high</extracomment>
        <translation>Nach einem Tag nicht tiefer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off: the animals use nothing. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Lassen Sie die Pumpe aus: Die Tiere verbrauchen nichts. Rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Only when it has fallen: {per_day}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Nur wenn es gesunken ist: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing that lowers {name}: no acid, no second chemical against the first.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Geben Sie nichts, was {name} senkt: keine Säure, keine zweite Chemikalie gegen die erste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never make up missed doses.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Holen Sie ausgefallene Dosen nie nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>How long</source>
        <extracomment>_falls, _facts</extracomment>
        <translation>Wie lange</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>How fast it falls is not known: no use per day was entered. Test every day.</source>
        <extracomment>_falls</extracomment>
        <translation>Wie schnell es sinkt, ist nicht bekannt: Es wurde kein Tagesverbrauch eingegeben. Testen Sie jeden Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>From {value}</source>
        <extracomment>_falls</extracomment>
        <translation>Von {value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>about {hours} without a dose, down to {target}</source>
        <extracomment>_falls</extracomment>
        <translation>etwa {hours} ohne Dosis, dann bei {target}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reckoned with {use} used.</source>
        <extracomment>_falls</extracomment>
        <translation>Berechnet mit einem Verbrauch von {use}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Then</source>
        <extracomment>_days_missed, _pump_failed, _mixing</extracomment>
        <translation>Dann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below: the dose, and how many at most.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Suchen Sie diesen Messwert unten: die Dosis, und wie viele höchstens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Not found below</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>Unten nicht zu finden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper. Test again the next day.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Lassen Sie die Pumpe aus. Rufen Sie den Halter an. Testen Sie am nächsten Tag wieder.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Look at the jug, the line and the outlet.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Testen Sie {name}. Sehen Sie Kanister, Leitung und Auslass an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last dose</source>
        <extracomment>_days_missed</extracomment>
        <translation>Nach der letzten Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Set the pump to the upkeep.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Stellen Sie die Pumpe auf die Versorgung ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Switch the pump off.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Schalten Sie die Pumpe aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off and call the keeper: a new plan is needed.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Lassen Sie die Pumpe aus, und rufen Sie den Halter an: Ein neuer Plan ist nötig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Write it down.</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>Testen Sie {name}. Schreiben Sie es auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last of them: {per_day}</source>
        <extracomment>_days_missed</extracomment>
        <translation>Nach der letzten davon: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when nothing was dosed for about two days.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Verwenden Sie diese Karte, wenn etwa zwei Tage lang nichts dosiert wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Do not give the missed doses, neither now nor later.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Geben Sie die ausgefallenen Dosen nicht, weder jetzt noch später.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find out why: no current, an empty jug, air in the line.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Finden Sie die Ursache: kein Strom, leerer Kanister, Luft in der Leitung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} twice. Take the higher reading. Write it down.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Testen Sie {name} zweimal. Nehmen Sie den höheren Messwert. Schreiben Sie ihn auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{per_day}, no more than:</source>
        <extracomment>_band_rows</extracomment>
        <translation>{per_day}, nicht mehr als:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{n} doses</source>
        <extracomment>for 1: {n} dose; _band_rows</extracomment>
        <translation>
            <numerusform>{n} Dosis</numerusform>
            <numerusform>{n} Dosen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads {low} to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>Messwert {low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Above {low}, up to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>Über {low}, bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Dry your hands. Pull the pump's plug.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Trocknen Sie Ihre Hände. Ziehen Sie den Stecker der Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Take the line out of the jug: nothing may siphon.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Nehmen Sie die Leitung aus dem Kanister: Nichts darf durch Heberwirkung nachlaufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call the keeper.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Every morning</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Jeden Morgen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>This additive is for trained people only: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Dieser Zusatz ist nur für geschulte Personen: Geben Sie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No dose by hand is safe here: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Keine Dosis von Hand ist hier sicher: Geben Sie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Until the pump runs</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Bis die Pumpe läuft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{why} nothing.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{why} nichts.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The rest of this day</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Der Rest dieses Tages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing. Begin tomorrow, when the pump was off for {pump_off} or longer.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Geben Sie nichts. Beginnen Sie morgen, wenn die Pumpe {pump_off} oder länger aus war.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below. Its row is for this day only.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Suchen Sie diesen Messwert unten. Seine Zeile gilt nur für diesen Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing on this day.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Geben Sie an diesem Tag nichts.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At each hour</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Zu jeder genannten Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Draw clear stock, exactly to the mark that the row names.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Ziehen Sie klare Stammlösung auf, genau bis zu der Marke, die in der Zeile steht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Pour it slowly into strong flow, away from the animals.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Gießen Sie sie langsam in starke Strömung, weit weg von den Tieren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Write it down at once, before anything else is done.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Schreiben Sie es sofort auf, bevor Sie etwas anderes tun.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>An hour was missed</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Eine Zeit verpasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave that dose out.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Lassen Sie diese Dosis aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After each dose</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Nach jeder Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Rinse what it was measured with. Use it for nothing else.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Spülen Sie das Messgefäß. Verwenden Sie es für nichts anderes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{maximum}, the pump's with them.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{maximum}, die der Pumpe eingeschlossen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when the pump does not run, or runs and nothing comes.</source>
        <translation>Verwenden Sie diese Karte, wenn die Pumpe nicht läuft, oder wenn sie läuft und nichts kommt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At {first} and {last}</source>
        <extracomment>_hand_rows</extracomment>
        <translation>Um {first} und {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{holds} {tool}, to the mark of {dose}</source>
        <extracomment>_mark</extracomment>
        <translation>{tool} {holds}, bis zur Marke {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>A new batch goes into the jug</source>
        <translation>Ein neuer Ansatz kommt in den Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>this plan is void. Leave the pump off. Take this card and the dose card down. Call the keeper.</source>
        <translation>Dieser Plan ist ungültig. Lassen Sie die Pumpe aus. Nehmen Sie diese Karte und die Dosierkarte ab. Rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>three quarters</source>
        <translation>drei viertel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>half</source>
        <translation>halb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>What was mixed</source>
        <translation>Was angesetzt wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weighed</source>
        <translation>Eingewogen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Made up to</source>
        <extracomment>CorrectForm._additive, StockForm._contents, made up to</extracomment>
        <translation>Aufgefüllt auf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Bottles that were opened</source>
        <translation>Geöffnete Flaschen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Use by</source>
        <extracomment>_entries, StockForm._label</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Words compared</source>
        <translation>Wortlaut verglichen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Run the pump into a cup until liquid comes without air. Do not pour the cup into the tank.</source>
        <translation>Lassen Sie die Pumpe in einen Becher laufen, bis Flüssigkeit ohne Luft kommt. Gießen Sie den Becher nicht ins Becken.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>At the end</source>
        <translation>Zum Schluss</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Start the pump as it was set. The doses stay the same; those in between are not made up.</source>
        <translation>Starten Sie die Pumpe, wie sie eingestellt war. Die Dosen bleiben gleich; die dazwischen werden nicht nachgeholt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when the jug is filled again, to exactly this strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>Verwenden Sie diese Karte, wenn der Kanister neu gefüllt wird, in genau dieser Stärke.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another salt, another hydrate, another purity or other grams: {void}</source>
        <extracomment>new_batch</extracomment>
        <translation>Anderes Salz, anderes Hydrat, andere Reinheit oder andere Gramm: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Never add the rest of an old batch of another strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>Geben Sie nie den Rest eines alten Ansatzes anderer Stärke dazu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Strength</source>
        <extracomment>new_batch</extracomment>
        <translation>Stärke</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Before</source>
        <extracomment>_mixing, _limewater, _trained</extracomment>
        <translation>Vorher</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug. Rinse the jug with fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Stoppen Sie die Pumpe. Nehmen Sie die Leitung aus dem Kanister. Spülen Sie den Kanister mit Süßwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bags with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Vergleichen Sie die Wörter auf den Beuteln mit den Namen oben, auch das Wasser des Hydrats.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Vergleichen Sie die Wörter auf dem Beutel mit den Namen oben, auch das Wasser des Hydrats.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>First</source>
        <extracomment>_mixing, _limewater, _bottle</extracomment>
        <translation>Zuerst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug {batch} full with cool, purified fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Füllen Sie den Kanister {batch} voll mit kühlem, gereinigtem Süßwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the rows for {litres} say. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Wiegen Sie ab, was die Zeilen für {litres} angeben. Messen Sie nicht mit dem Löffel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the row for {litres} says. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Wiegen Sie ab, was die Zeile für {litres} angibt. Messen Sie nicht mit dem Löffel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salts into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Geben Sie die Salze langsam unter Rühren ins Wasser. Gießen Sie nie Wasser auf das Salz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salt into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Geben Sie das Salz langsam unter Rühren ins Wasser. Gießen Sie nie Wasser auf das Salz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it come to the warmth of the room.</source>
        <extracomment>_mixing</extracomment>
        <translation>Lassen Sie es Raumtemperatur annehmen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill up to {litres} with the same water. Stir.</source>
        <extracomment>_mixing</extracomment>
        <translation>Füllen Sie mit dem gleichen Wasser auf {litres} auf. Rühren Sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look</source>
        <extracomment>_mixing, _limewater</extracomment>
        <translation>Ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Nothing may lie on the ground, nothing may float, it must be clear. If not: stir longer, do not heat.</source>
        <extracomment>_mixing</extracomment>
        <translation>Nichts darf am Boden liegen, nichts darf schwimmen, es muss klar sein. Wenn nicht: Rühren Sie länger, erhitzen Sie nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Still not clear after an hour: do not use it. Call the keeper.</source>
        <extracomment>_mixing</extracomment>
        <translation>Nach einer Stunde immer noch nicht klar: Verwenden Sie es nicht. Rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Stoppen Sie die Pumpe. Nehmen Sie die Leitung aus dem Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the name above.</source>
        <extracomment>_limewater</extracomment>
        <translation>Vergleichen Sie die Wörter auf dem Beutel mit dem Namen oben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug with {litres} of purified fresh water.</source>
        <extracomment>_limewater</extracomment>
        <translation>Füllen Sie den Kanister mit {litres} gereinigtem Süßwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put in what the row says, without raising dust. Stir for a minute. Close the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Geben Sie hinein, was die Zeile angibt, ohne Staub aufzuwirbeln. Rühren Sie eine Minute lang. Schließen Sie den Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it settle over night. Some must lie on the ground: it is more than can dissolve.</source>
        <extracomment>_limewater</extracomment>
        <translation>Lassen Sie es über Nacht absetzen. Etwas muss am Boden liegen: Es ist mehr, als sich lösen kann.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>The water above must be clear. Put the line into the clear water, well above the ground.</source>
        <extracomment>_limewater</extracomment>
        <translation>Das Wasser darüber muss klar sein. Führen Sie die Leitung in das klare Wasser, weit über dem Boden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Go on only if you are trained for this chemical. If not: stop the pump, call the keeper.</source>
        <extracomment>_trained</extracomment>
        <translation>Machen Sie nur weiter, wenn Sie für diese Chemikalie geschult sind. Wenn nicht: Stoppen Sie die Pumpe, rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>a third</source>
        <extracomment>_share</extracomment>
        <translation>zu einem Drittel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>, the word {signal_word}</source>
        <extracomment>_finish</extracomment>
        <translation>, das Wort {signal_word}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Label</source>
        <extracomment>_finish, _bottle</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, strength, the date of today{word}.</source>
        <extracomment>_finish</extracomment>
        <translation>Schreiben Sie auf den Kanister: Name, Stärke, das Datum von heute{word}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when a new bottle is opened, with exactly these words on its label.</source>
        <extracomment>_bottle</extracomment>
        <translation>Verwenden Sie diese Karte, wenn eine neue Flasche geöffnet wird, mit genau diesen Worten auf dem Etikett.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the label, word for word and number for number. It must say: {said}.</source>
        <extracomment>_bottle</extracomment>
        <translation>Vergleichen Sie das Etikett, Wort für Wort und Zahl für Zahl. Es muss lauten: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look at the date on the bottle. Look that nothing lies on the ground of it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Sehen Sie auf das Datum der Flasche. Sehen Sie nach, dass nichts an ihrem Boden liegt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill it in as it is. Do not thin it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Füllen Sie sie ein, wie sie ist. Verdünnen Sie nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, the words above, the date of today.</source>
        <extracomment>_bottle</extracomment>
        <translation>Schreiben Sie auf den Kanister: Name, die Worte oben, das Datum von heute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another name, another number or another unit on the label: {void}</source>
        <extracomment>_bottle</extracomment>
        <translation>Anderer Name, andere Zahl oder andere Einheit auf dem Etikett: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>, {purity} pure</source>
        <extracomment>_row, strength_words, _portion_words</extracomment>
        <translation>, {purity} rein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>For {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Für {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>To make {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Zum Ansetzen von {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>More than dissolves, so that some stays on the ground</source>
        <extracomment>_row</extracomment>
        <translation>Mehr, als sich löst, damit etwas am Boden bleibt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Made up to {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Aufgefüllt auf {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>syringe</source>
        <translation>Spritze</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>measuring cylinder</source>
        <translation>Messzylinder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>by hand</source>
        <extracomment>_with</extracomment>
        <translation>von Hand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>The keeper's&#xa0;telephone:</source>
        <translation>Telefon&#xa0;des Halters:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>Goes with the dose card of this plan. After its last day: give nothing, test daily, call the keeper.</source>
        <extracomment>identity</extracomment>
        <translation>Gehört zur Dosierkarte dieses Plans. Nach deren letztem Tag: Geben Sie nichts, testen Sie täglich, rufen Sie den Halter an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Keep apart</source>
        <extracomment>apart</extracomment>
        <translation>Getrennt halten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{parameter} from {measured} to {target}, {number}</source>
        <extracomment>Plan.in_words</extracomment>
        <translation>{parameter} von {measured} auf {target}, {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{low} to {high}</source>
        <extracomment>hints, _band, _answer</extracomment>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>half of a 95 % range</source>
        <extracomment>hints</extracomment>
        <translation>die Hälfte eines 95-%-Bereichs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual kit within {kit_accuracy}</source>
        <extracomment>hints</extracomment>
        <translation>Testset auf {kit_accuracy} genau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usually kept: {kept}</source>
        <extracomment>hints</extracomment>
        <translation>üblich gehalten: {kept}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual {recommended}, most {hard}</source>
        <extracomment>hints</extracomment>
        <translation>üblich {recommended}, höchstens {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>what the animals take in a day</source>
        <extracomment>hints</extracomment>
        <translation>was die Tiere verbrauchen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>100 % when the bag does not say</source>
        <extracomment>hints</extracomment>
        <translation>100 %, wenn der Beutel nichts angibt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Net volume {volume}.</source>
        <extracomment>volume_sentence</extracomment>
        <translation>Nettovolumen {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>net volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>Nettovolumen noch nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>Volumen noch nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words} net{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words} netto{said}, auf {share} genau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words}{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words}{said}, auf {share} genau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Danger.</source>
        <extracomment>cautions</extracomment>
        <translation>Gefahr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>water only: no rock, no sand</source>
        <extracomment>_volume_hint</extracomment>
        <translation>nur Wasser: ohne Gestein, ohne Sand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>In {system} importieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import {number} into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>{number} in {system} importieren</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>{n} readings</source>
        <extracomment>for 1: {n} reading; button_words, _said, write</extracomment>
        <translation>
            <numerusform>{n} Messwert</numerusform>
            <numerusform>{n} Messwerte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Every reading is in the log already.</source>
        <extracomment>for 1: The reading is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>Der Messwert steht schon im Protokoll.</numerusform>
            <numerusform>Alle Messwerte stehen schon im Protokoll.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} are in the log already.</source>
        <extracomment>for 1: {n} is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>{n} steht schon im Protokoll.</numerusform>
            <numerusform>{n} stehen schon im Protokoll.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Nothing was imported. {of}</source>
        <extracomment>done_words</extracomment>
        <translation>Nichts wurde importiert. {of}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Undo takes them out again.</source>
        <extracomment>for 1: Undo takes it out again.; done_words</extracomment>
        <translation>
            <numerusform>Rückgängig nimmt ihn wieder heraus.</numerusform>
            <numerusform>Rückgängig nimmt sie wieder heraus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Imported {n} readings.</source>
        <extracomment>for 1: Imported {n} reading.; done_words</extracomment>
        <translation>
            <numerusform>{n} Messwert importiert.</numerusform>
            <numerusform>{n} Messwerte importiert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} were in the log already.</source>
        <extracomment>for 1: {n} was in the log already.; _were</extracomment>
        <translation>
            <numerusform>{n} stand schon im Protokoll.</numerusform>
            <numerusform>{n} standen schon im Protokoll.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>At {hour}</source>
        <translation>Um {hour}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Western European, code page 1252</source>
        <translation>Westeuropäisch, Codepage 1252</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Semicolon</source>
        <translation>Semikolon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Bar</source>
        <translation>Senkrechter Strich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Either, as typed by hand</source>
        <translation>Beides, wie von Hand getippt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>24 hours</source>
        <translation>24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>12 hours with am and pm</source>
        <translation>12 Stunden mit am und pm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave them out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The first</source>
        <translation>Die erste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The second</source>
        <translation>Die zweite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave out</source>
        <extracomment>_series_points</extracomment>
        <translation>Weglassen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Time of day</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Name of the parameter</source>
        <translation>Name des Parameters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Value</source>
        <extracomment>_long, LogForm._make_fields, RecoveryForm._too_high</extracomment>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Unit</source>
        <extracomment>_long</extracomment>
        <translation>Einheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Test kit</source>
        <translation>Testset</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Who tested</source>
        <translation>Wer getestet hat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note</source>
        <extracomment>row, LogForm._make_fields</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Encoding</source>
        <extracomment>sniff</extracomment>
        <translation>Zeichenkodierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Separator</source>
        <extracomment>sniff</extracomment>
        <translation>Trennzeichen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Decimal mark</source>
        <extracomment>sniff</extracomment>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some readings are from the hour that came twice when the clocks went back.</source>
        <extracomment>twice_point</extracomment>
        <translation>Einige Messwerte stammen aus der Stunde, die bei der Zeitumstellung zweimal kam.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Hour that came twice</source>
        <extracomment>twice_point</extracomment>
        <translation>Doppelte Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Order of the date</source>
        <translation>Reihenfolge des Datums</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Readings without a time of day</source>
        <translation>Messwerte ohne Uhrzeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The file is not in UTF-8. See whether names and signs look right.</source>
        <extracomment>_encoding</extracomment>
        <translation>Die Datei ist nicht in UTF-8. Sehen Sie nach, ob Namen und Zeichen richtig aussehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>See whether the columns look right.</source>
        <extracomment>_separator</extracomment>
        <translation>Sehen Sie nach, ob die Spalten richtig aussehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>None</source>
        <extracomment>_heading</extracomment>
        <translation>Keine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Row {row}</source>
        <extracomment>_heading</extracomment>
        <translation>Zeile {row}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No headings were found.</source>
        <extracomment>_heading</extracomment>
        <translation>Keine Überschriften gefunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>What stands above is left out.</source>
        <extracomment>_heading</extracomment>
        <translation>Was darüber steht, wird weggelassen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Headings</source>
        <extracomment>_heading</extracomment>
        <translation>Überschriften</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates have</source>
        <extracomment>_times</extracomment>
        <translation>Die Datumsangaben haben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates have</source>
        <extracomment>_times</extracomment>
        <translation>Einige Datumsangaben haben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{part} no time of day. Choose what they are taken as.</source>
        <extracomment>_times</extracomment>
        <translation>{part} keine Uhrzeit. Wählen Sie, welche für sie angenommen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No date was found. Choose the column and the order of its dates.</source>
        <extracomment>_order</extracomment>
        <translation>Kein Datum gefunden. Wählen Sie die Spalte und die Reihenfolge ihrer Datumsangaben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates fit only with the day first, and some only with the month first.</source>
        <extracomment>_order</extracomment>
        <translation>Einige Datumsangaben passen nur mit dem Tag zuerst und einige nur mit dem Monat zuerst.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Dates with points begin with the day.</source>
        <extracomment>_order</extracomment>
        <translation>Datumsangaben mit Punkten beginnen mit dem Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Not every date would be one in another order.</source>
        <extracomment>_order</extracomment>
        <translation>Nicht jede Angabe wäre in einer anderen Reihenfolge ein Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>“{unclear}”: which is the day and which the month?</source>
        <extracomment>_order</extracomment>
        <translation>„{unclear}“: Was ist der Tag und was der Monat?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates begin with the year.</source>
        <extracomment>_order</extracomment>
        <translation>Die Datumsangaben beginnen mit dem Jahr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some times say am or pm and some do not. Of those, are the hours counted to 24?</source>
        <extracomment>_clock</extracomment>
        <translation>Bei einigen Zeiten steht am oder pm, bei einigen nicht. Werden bei diesen die Stunden bis 24 gezählt?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the heading is not known.</source>
        <extracomment>_column_points</extracomment>
        <translation>Weggelassen: Die Überschrift ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out.</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>Weggelassen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{name}: unit</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>{name}: Einheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the name is not known.</source>
        <extracomment>_series_points</extracomment>
        <translation>Weggelassen: Der Name ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Column {number}</source>
        <extracomment>_name</extracomment>
        <translation>Spalte {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Line {line}: </source>
        <extracomment>preview, ImportPage._show</extracomment>
        <translation>Zeile {line}: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>unit not chosen</source>
        <extracomment>_headings</extracomment>
        <translation>Einheit nicht gewählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which column holds the date, and which hold readings.</source>
        <extracomment>_hinders</extracomment>
        <translation>Wählen Sie, welche Spalte das Datum enthält und welche Messwerte enthalten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose what is still asked. Nothing is imported before.</source>
        <extracomment>_hinders</extracomment>
        <translation>Wählen Sie, was noch gefragt wird. Vorher wird nichts importiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which is meant of the hour that came twice.</source>
        <extracomment>_hinders</extracomment>
        <translation>Wählen Sie, welche der doppelten Stunde gemeint ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Not one reading can be taken.</source>
        <extracomment>_hinders</extracomment>
        <translation>Kein einziger Messwert kann übernommen werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{readings} in {rows}.</source>
        <extracomment>_said</extracomment>
        <translation>{readings} in {rows}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} rows</source>
        <extracomment>for 1: {n} row; _said</extracomment>
        <translation>
            <numerusform>{n} Zeile</numerusform>
            <numerusform>{n} Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{refused} not taken.</source>
        <extracomment>_said</extracomment>
        <translation>{refused} nicht übernommen.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} cells are</source>
        <extracomment>for 1: {n} cell is; _said</extracomment>
        <translation>
            <numerusform>{n} Zelle wird</numerusform>
            <numerusform>{n} Zellen werden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings stand</source>
        <extracomment>for 1: {n} reading stands; _said</extracomment>
        <translation>
            <numerusform>{n} Messwert steht</numerusform>
            <numerusform>{n} Messwerte stehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{stand} in the file twice, and are taken once.</source>
        <extracomment>for 1: {stand} in the file twice, and is taken once.; _said</extracomment>
        <translation>
            <numerusform>{stand} zweimal in der Datei und wird einmal übernommen.</numerusform>
            <numerusform>{stand} zweimal in der Datei und werden einmal übernommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings are</source>
        <extracomment>for 1: {n} reading is; _said</extracomment>
        <translation>
            <numerusform>{n} Messwert ist</numerusform>
            <numerusform>{n} Messwerte sind</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{are} not likely, and taken as they stand.</source>
        <extracomment>for 1: {are} not likely, and taken as it stands.; _said</extracomment>
        <translation>
            <numerusform>{are} unwahrscheinlich und wird übernommen, wie er dasteht.</numerusform>
            <numerusform>{are} unwahrscheinlich und werden übernommen, wie sie dastehen.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Of {faulty} rows with a fault the first {faulty_rows} are shown.</source>
        <extracomment>_said</extracomment>
        <translation>Von {faulty} Zeilen mit einem Fehler werden die ersten {faulty_rows} gezeigt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The order of the date is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Die Reihenfolge des Datums ist noch zu wählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The clock is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Die Uhr ist noch zu wählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The decimal mark is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Das Dezimalzeichen ist noch zu wählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure is without a unit of its own.</source>
        <extracomment>unit_of</extracomment>
        <translation>Keine Zahl steht ohne eigene Einheit da.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}.</source>
        <extracomment>unit_of</extracomment>
        <translation>Die Datei nennt {unit}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}, but the figures are likely as {better}.</source>
        <extracomment>unit_of</extracomment>
        <translation>Die Datei nennt {unit}, aber die Zahlen sind als {better} wahrscheinlich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>“{heading_said}” does not name one unit.</source>
        <extracomment>unit_of</extracomment>
        <translation>„{heading_said}“ nennt keine eindeutige Einheit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No unit is said.</source>
        <extracomment>unit_of</extracomment>
        <translation>Keine Einheit ist angegeben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures are likely only as {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Die Zahlen sind nur als {likely} wahrscheinlich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures may be in {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Die Zahlen können in {likely} sein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} In none of the likely units are the figures likely.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} In keiner der wahrscheinlichen Einheiten sind die Zahlen wahrscheinlich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>This file was written by Evenwater, with a decimal point.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Diese Datei wurde von Evenwater geschrieben, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Some figures have a decimal point and some a decimal comma.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Einige Zahlen haben einen Dezimalpunkt und einige ein Dezimalkomma.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure has a decimal mark.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Keine Zahl hat ein Dezimalzeichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The figures have a decimal {name}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Dezimalzeichen der Zahlen: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Most figures have a decimal {name}, but {example} would be unlikely so.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Dezimalzeichen der meisten Zahlen: {name}, aber {example} wäre so unwahrscheinlich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} are likely only with a decimal {only}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Zahlen wie {example} sind nur mit diesem Dezimalzeichen wahrscheinlich: {only}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} can be read in two ways.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Zahlen wie {example} lassen sich auf zwei Arten lesen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>point</source>
        <extracomment>_name</extracomment>
        <translation>Punkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>comma</source>
        <extracomment>_name</extracomment>
        <translation>Komma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is larger than {megabytes}. Split it by years.</source>
        <translation>Die Datei ist größer als {megabytes}. Teilen Sie sie nach Jahren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>This is no text file. Save the sheet as CSV, in UTF-8.</source>
        <translation>Dies ist keine Textdatei. Speichern Sie die Tabelle als CSV, in UTF-8.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is not written in this encoding. Choose another one.</source>
        <translation>Die Datei ist nicht in dieser Zeichenkodierung geschrieben. Wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A quotation mark is opened here and never closed.</source>
        <translation>Ein Anführungszeichen wird hier geöffnet und nie geschlossen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Text stands behind a closing quotation mark. Put a separator between them, or double the mark.</source>
        <translation>Hinter einem schließenden Anführungszeichen steht Text. Setzen Sie ein Trennzeichen dazwischen, oder verdoppeln Sie das Anführungszeichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A cell is longer than any note. Look for a quotation mark that is not closed.</source>
        <translation>Eine Zelle ist länger als jede Notiz. Suchen Sie ein Anführungszeichen, das nicht geschlossen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The line is longer than any row of readings.</source>
        <translation>Die Zeile ist länger als jede Zeile mit Messwerten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file has more than {most} lines, more than a sheet has rows. Split it by years.</source>
        <translation>Die Datei hat mehr als {most} Zeilen, mehr als eine Tabelle Zeilen hat. Teilen Sie sie nach Jahren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A row has more than {most} cells. Delete what is no reading, and save the sheet again.</source>
        <translation>Eine Zeile hat mehr als {most} Zellen. Löschen Sie, was kein Messwert ist, und speichern Sie die Tabelle neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>No columns were found. Save the sheet as CSV with a semicolon, a comma, a tab or a bar between the cells.</source>
        <translation>Keine Spalten gefunden. Speichern Sie die Tabelle als CSV mit Semikolon, Komma, Tabulator oder senkrechtem Strich zwischen den Zellen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>There is nothing below the headings.</source>
        <translation>Unter den Überschriften steht nichts.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has {cells} cells, more than the {columns} of the headings. A comma inside a number needs quotation marks around it.</source>
        <translation>Die Zeile hat {cells} Zellen, mehr als die {columns} der Überschriften. Ein Komma in einer Zahl braucht Anführungszeichen um die Zahl.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has no date.</source>
        <translation>Die Zeile hat kein Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25 08:00.</source>
        <translation>„{text}“ ist kein Datum. Schreiben Sie es wie 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is no date in the order chosen for day, month and year.</source>
        <translation>„{text}“ ist in der gewählten Reihenfolge von Tag, Monat und Jahr kein Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not in the calendar.</source>
        <translation>„{text}“ gibt es im Kalender nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has no time of day.</source>
        <translation>„{text}“ hat keine Uhrzeit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a time of day. Write it like 18:30.</source>
        <translation>„{text}“ ist keine Uhrzeit. Schreiben Sie sie wie 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}”: morning or evening? Write am or pm after it.</source>
        <translation>„{text}“: morgens oder abends? Schreiben Sie am oder pm dahinter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has a time of day, and the row has another one.</source>
        <translation>„{text}“ hat eine Uhrzeit, und die Zeile hat eine andere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is too long ago. Correct the year.</source>
        <translation>{at} ist zu lange her. Korrigieren Sie das Jahr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is still to come. Correct the date.</source>
        <translation>{at} liegt noch in der Zukunft. Korrigieren Sie das Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} never was: the clocks went forward over it.</source>
        <translation>{at} gab es nie: Die Uhren wurden darüber hinweg vorgestellt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} came twice, when the clocks went back.</source>
        <translation>{at} kam zweimal, als die Uhren zurückgestellt wurden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is left out: no parameter is chosen for it.</source>
        <translation>„{text}“ wird weggelassen: Dafür ist kein Parameter gewählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The unit is still to be chosen.</source>
        <translation>Die Einheit ist noch zu wählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has another decimal mark than this file.</source>
        <translation>„{text}“ hat ein anderes Dezimalzeichen als diese Datei.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The same reading stands in line {line}.</source>
        <translation>Der gleiche Messwert steht in Zeile {line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Taken as it stands, but not a likely reading of {parameter}. Look at it again.</source>
        <translation>Übernommen, wie er dasteht, aber kein wahrscheinlicher Messwert für {parameter}. Sehen Sie ihn noch einmal an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Parameter</source>
        <extracomment>_long</extracomment>
        <translation>Parameter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>measured by filling</source>
        <translation>durch Füllen gemessen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>found by dose and test</source>
        <translation>durch Dosis und Test bestimmt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>reckoned from dimensions</source>
        <translation>aus Maßen berechnet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>not known, low end used</source>
        <translation>nicht bekannt, unteres Ende verwendet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, measured {measured_at}</source>
        <extracomment>card</extracomment>
        <translation>, gemessen {measured_at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Reason given for the limits set: {reason}</source>
        <extracomment>card</extracomment>
        <translation>Angegebener Grund für die gesetzten Grenzen: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Raise {name} from {measured} to {target}</source>
        <extracomment>card</extracomment>
        <translation>{name} von {measured} auf {target} anheben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/ui/pump_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed system</source>
        <extracomment>card, page, PumpRecords._corrected</extracomment>
        <translation>System ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Net volume {volume}{known}, within {percent}. Reading {measured}{reading}.</source>
        <extracomment>card</extracomment>
        <translation>Nettovolumen {volume}{known}, auf {percent} genau. Messwert {measured}{reading}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Issued {date_words} {clock}</source>
        <extracomment>card, page</extracomment>
        <translation>Ausgestellt {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Replace this card when the plan id changes.</source>
        <extracomment>card</extracomment>
        <translation>Ersetzen Sie diese Karte, wenn sich die Plan-ID ändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Valid until {valid_until}</source>
        <extracomment>card</extracomment>
        <translation>Gültig bis {valid_until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>Bottle, by its label</source>
        <extracomment>card, _rows, _contents</extracomment>
        <translation>Flasche, laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Never more than {never_more} in 24 hours, all doses together.</source>
        <extracomment>card</extracomment>
        <translation>Nie mehr als {never_more} in 24 Stunden, alle Dosen zusammen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Stop and test again if {name} reads above {stop_above}. Never make up missed doses.</source>
        <extracomment>card</extracomment>
        <translation>Stoppen Sie und testen Sie noch einmal, wenn {name} über {stop_above} gemessen wird. Holen Sie ausgefallene Dosen nie nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Test {name} on {answer} at the latest, then once more at the end.</source>
        <extracomment>card</extracomment>
        <translation>Testen Sie {name} spätestens am {answer}, dann noch einmal am Ende.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{in_24_hours} in 24 hours, {total} in all.</source>
        <extracomment>card</extracomment>
        <translation>{in_24_hours} in 24 Stunden, {total} insgesamt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>If the whole jug ran in, {name} would reach {whole_jug}: keep the outlet above the water.</source>
        <extracomment>card</extracomment>
        <translation>Wenn der ganze Kanister einliefe, würde {name} {whole_jug} erreichen: Halten Sie den Auslass über dem Wasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:</source>
        <extracomment>card</extracomment>
        <translation>In den Augen: mindestens 15 Minuten lang spülen und ärztliche Hilfe holen. Giftnotruf:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {first} {per_day}, {n} doses, last {last}</source>
        <extracomment>for 1: From {first} {per_day}, {n} dose, last {last}; _rows</extracomment>
        <translation>
            <numerusform>Ab {first} {per_day}, {n} Dosis, letzte {last}</numerusform>
            <numerusform>Ab {first} {per_day}, {n} Dosen, letzte {last}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {after} {per_day}, to keep it there</source>
        <extracomment>_rows</extracomment>
        <translation>Ab {after} {per_day}, um den Wert zu halten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Pump runs {run_time} at {flow_ml_per}</source>
        <extracomment>pump_setting</extracomment>
        <translation>Pumpe läuft {run_time} bei {flow_ml_per}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source> The jug's label says batch {batch_id}.</source>
        <extracomment>_strength</extracomment>
        <translation> Auf dem Etikett des Kanisters steht Ansatz {batch_id}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, mixed {mixed_on}</source>
        <extracomment>_strength</extracomment>
        <translation>, angesetzt {mixed_on}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, date mixed: see the jug</source>
        <extracomment>_strength</extracomment>
        <translation>, Datum des Ansetzens: siehe Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength: {additive}{mixed}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Stärke: {additive}{mixed}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength by its label: {label}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Stärke laut Etikett: {label}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{dose} raise {water} by {raises}</source>
        <extracomment>label_words</extracomment>
        <translation>{dose} heben {water} um {raises} an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>saturated, {most} per {litre} at {coolest}</source>
        <extracomment>strength_words</extracomment>
        <translation>gesättigt, {most} pro {litre} bei {coolest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>dissolved {parts} per {litre}{pure}</source>
        <extracomment>strength_words</extracomment>
        <translation>gelöst {parts} pro {litre}{pure}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Look at the jug every day.</source>
        <extracomment>_refill</extracomment>
        <translation>Sehen Sie jeden Tag nach dem Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>A full jug is empty on {runs_out_at}: refill before then.</source>
        <extracomment>_refill</extracomment>
        <translation>Ein voller Kanister ist am {runs_out_at} leer: Füllen Sie vorher nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>calcium or magnesium</source>
        <extracomment>_separation</extracomment>
        <translation>Calcium oder Magnesium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Keep 30 minutes and another outlet between this and any {opposite} dose. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Zu jeder Dosis {opposite}: 30 Minuten Abstand und ein anderer Auslass. Mischen Sie nie die Konzentrate.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The bag's own safety sheet and local rules come first.</source>
        <extracomment>_cautions</extracomment>
        <translation>Das Sicherheitsdatenblatt des Beutels und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Dry your hands before you touch a plug. Unplug before you reach into the water.</source>
        <translation>Trocknen Sie Ihre Hände, bevor Sie einen Stecker anfassen. Ziehen Sie den Stecker, bevor Sie ins Wasser greifen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Water on a plug or a power strip: touch nothing, switch the circuit off at the board first.</source>
        <translation>Wasser auf einem Stecker oder einer Steckdosenleiste: Fassen Sie nichts an, schalten Sie zuerst den Stromkreis am Sicherungskasten ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every circuit here needs residual-current protection that trips at 30&#xa0;mA or less.</source>
        <translation>Jeder Stromkreis hier braucht einen Fehlerstromschutz, der bei 30&#xa0;mA oder weniger auslöst.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Give nothing that lowers it: no acid, no second chemical against the first.</source>
        <translation>Geben Sie nichts, was den Wert senkt: keine Säure, keine zweite Chemikalie gegen die erste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Do not start the pump again before the keeper says so.</source>
        <translation>Starten Sie die Pumpe nicht wieder, bevor der Halter es sagt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>No way down was chosen. Hold all doses, test every day, and wait for the keeper.</source>
        <translation>Es wurde kein Weg zum Senken gewählt. Setzen Sie alle Dosen aus, testen Sie jeden Tag, und warten Sie auf den Halter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{banner}: {name} too high</source>
        <extracomment>card</extracomment>
        <translation>{banner}: {name} zu hoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Valid until {date_time}</source>
        <extracomment>card</extracomment>
        <translation>Gültig bis {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Replace this card after the next test.</source>
        <extracomment>card</extracomment>
        <translation>Ersetzen Sie diese Karte nach dem nächsten Test.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Readings</source>
        <extracomment>card</extracomment>
        <translation>Messwerte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Date, time</source>
        <extracomment>card</extracomment>
        <translation>Datum, Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>What was tested</source>
        <extracomment>card</extracomment>
        <translation>Was getestet wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>About {dose} ran in. </source>
        <extracomment>_happened</extracomment>
        <translation>Etwa {dose} sind eingelaufen. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{ran_in}{name} {now}, to come to {target}.</source>
        <extracomment>_happened</extracomment>
        <translation>{ran_in}{name} {now}, soll auf {target} kommen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>After a new test, on the first day</source>
        <extracomment>_rows</extracomment>
        <translation>Nach einem neuen Test, am ersten Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>On the first day</source>
        <extracomment>_rows</extracomment>
        <translation>Am ersten Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>new water in, as much old water out</source>
        <extracomment>_rows</extracomment>
        <translation>frisches Salzwasser hinein, ebenso viel altes hinaus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>That is {first} an hour, far from the animals.</source>
        <extracomment>_rows</extracomment>
        <translation>Das sind {first} pro Stunde, weit weg von den Tieren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name} and everything else. Write it down.</source>
        <extracomment>_steps</extracomment>
        <translation>Testen Sie {name} und alles andere. Schreiben Sie es auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Give nothing.</source>
        <extracomment>_steps</extracomment>
        <translation>Testen Sie {name}. Geben Sie nichts.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Cloudy or white film</source>
        <extracomment>_steps</extracomment>
        <translation>Trüb oder weißer Belag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Wait. Tell the keeper the new tests: this card may not hold any more.</source>
        <extracomment>_steps</extracomment>
        <translation>Warten Sie. Nennen Sie dem Halter die neuen Tests: Diese Karte gilt vielleicht nicht mehr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Still give nothing above {target}.</source>
        <extracomment>_steps</extracomment>
        <translation>Testen Sie {name}. Geben Sie über {target} weiterhin nichts.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>At {target} or below</source>
        <extracomment>_steps</extracomment>
        <translation>Bei {target} oder darunter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Tell the keeper. The doses begin again only as the keeper says.</source>
        <extracomment>_steps</extracomment>
        <translation>Sagen Sie es dem Halter. Die Dosen beginnen erst wieder, wie der Halter es sagt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test and ask the keeper for a new card.</source>
        <extracomment>_steps</extracomment>
        <translation>Testen Sie, und bitten Sie den Halter um eine neue Karte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>From {begins}</source>
        <extracomment>_steps</extracomment>
        <translation>Ab {begins}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test first. Then {much} of water in {days}: {stage} an hour. About {reached} after it.</source>
        <extracomment>_steps</extracomment>
        <translation>Testen Sie zuerst. Dann {much} Wasser, Dauer {days}: {stage} pro Stunde. Danach etwa {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Still above</source>
        <extracomment>_steps</extracomment>
        <translation>Noch darüber</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Go on with no more than {stages} an hour, test every day.</source>
        <extracomment>_steps</extracomment>
        <translation>Machen Sie mit nicht mehr als {stages} pro Stunde weiter, testen Sie jeden Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop. Tell the keeper.</source>
        <extracomment>_steps</extracomment>
        <translation>Stoppen Sie. Sagen Sie es dem Halter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never exchange more than {most} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Wechseln Sie nie mehr als {most} in 24 Stunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop and call if {name} falls by more than {said} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Stoppen Sie und rufen Sie an, wenn {name} in 24 Stunden um mehr als {said} sinkt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Held</source>
        <extracomment>_facts</extracomment>
        <translation>Ausgesetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>: no doses.</source>
        <extracomment>_facts</extracomment>
        <translation>: keine Dosen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{how_long} to {how_long_2}</source>
        <extracomment>_facts</extracomment>
        <translation>{how_long} bis {how_long_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{now} now, {end} at the end; moves {moves} in 24 hours, {most} at most.</source>
        <extracomment>_facts</extracomment>
        <translation>jetzt {now}, am Ende {end}; ändert sich um {moves} in 24 Stunden, höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>New water</source>
        <extracomment>_facts, _pair</extracomment>
        <translation>Frisches Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Bring it to the tank's temperature and salinity first.</source>
        <extracomment>_facts</extracomment>
        <translation>Bringen Sie es zuerst auf Temperatur und Salinität des Beckens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Typed as {was}, shown as {shown}.</source>
        <extracomment>conversion_words</extracomment>
        <translation>Eingegeben als {was}, angezeigt als {shown}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Relabel: {was} becomes {number}</source>
        <extracomment>relabels</extracomment>
        <translation>Einheit ändern: aus {was} wird {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>now</source>
        <extracomment>CourseChart.words_at, _instants, _tests</extracomment>
        <translation>jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>after {day}</source>
        <extracomment>CourseChart.words_at</extracomment>
        <translation>{day} später</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source> ({low} to {high})</source>
        <extracomment>CourseChart.words_at, TogetherChart.reading_words</extracomment>
        <translation> ({low} bis {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>new water{assumed} {new_water}</source>
        <extracomment>_chart</extracomment>
        <translation>frisches Salzwasser{assumed} {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <source>, assumed</source>
        <extracomment>_chart, _water</extracomment>
        <translation>, angenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source> It settles at {settles}.</source>
        <extracomment>_chart</extracomment>
        <translation> Der Wert pendelt sich bei {settles} ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} in {unit} against days</source>
        <extracomment>_chart</extracomment>
        <translation>{name} in {unit} über die Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} goes from {first} to {last} in {days}, {new}.{goes}</source>
        <extracomment>_chart</extracomment>
        <translation>{name} geht von {first} auf {last}, Zeitraum {days}, {new}.{goes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both pumps alike</source>
        <translation>Beide Pumpen gleich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>As a batch change</source>
        <translation>Als Einzelwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Each pump by itself</source>
        <translation>Jede Pumpe für sich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both outlets end above the water with an air gap: else a whole jug can siphon across.</source>
        <translation>Beide Auslässe enden über dem Wasser mit Luftabstand: Sonst kann durch Heberwirkung ein ganzer Kanister hinüberlaufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>A jug of 20&#xa0;L weighs 20&#xa0;kg: fill it where it stands, or lift it with two.</source>
        <translation>Ein Kanister von 20&#xa0;L wiegt 20&#xa0;kg: Füllen Sie ihn, wo er steht, oder heben Sie ihn zu zweit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>The bag's own sheet comes first.</source>
        <translation>Das Sicherheitsdatenblatt des Beutels geht vor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Salt into water, slowly, never water onto salt.</source>
        <translation>Salz ins Wasser, langsam, nie Wasser auf Salz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Stir and aerate until all of it is clear; a day is best, and only then test.</source>
        <translation>Rühren und belüften, bis alles klar ist; am besten einen Tag lang, und erst dann testen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Bring it to the tank's temperature before it goes in.</source>
        <translation>Bringen Sie es auf die Temperatur des Beckens, bevor es hineinkommt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Nothing for drinks or food is used for mixing.</source>
        <translation>Nichts, was für Getränke oder Lebensmittel dient, wird zum Mischen benutzt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water exchanged in a day</source>
        <translation>das am Tag gewechselte Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how the exchange is said</source>
        <translation>wie der Wasserwechsel angegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the batch change that the exchange equals</source>
        <translation>der Einzelwechsel, dem der Wasserwechsel entspricht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the days between two batch changes</source>
        <translation>die Tage zwischen zwei Einzelwechseln</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water taken out in a day</source>
        <translation>das am Tag entnommene Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in a day</source>
        <translation>das frische Salzwasser am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how many days to look ahead</source>
        <translation>wie viele Tage vorausgeschaut wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of old water holds</source>
        <translation>was der Kanister für altes Wasser fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of new water holds</source>
        <translation>was der Kanister für frisches Salzwasser fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in the bucket</source>
        <translation>das frische Salzwasser im Eimer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salt mix on the bag's label</source>
        <translation>die Salzmischung laut Etikett des Beutels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water on the bag's label</source>
        <translation>das Wasser laut Etikett des Beutels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity on the bag's label</source>
        <translation>die Salinität laut Etikett des Beutels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity found in the bucket</source>
        <translation>die im Eimer gemessene Salinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of nitrate lost in a day</source>
        <translation>der am Tag verlorene Anteil des Nitrats</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of phosphate lost in a day</source>
        <translation>der am Tag verlorene Anteil des Phosphats</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the {name} of the new water</source>
        <translation>frisches Salzwasser: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Danger: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Gefahr: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Caution: {line}</source>
        <extracomment>_lines</extracomment>
        <translation>Vorsicht: {line}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{out} a day go out, {in_} a day come in.</source>
        <extracomment>_lines</extracomment>
        <translation>{out} am Tag gehen hinaus, {in_} am Tag kommen hinein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}, {left} of the old water are left ({low} to {high} by how well the volume is known). A batch change of {batch_whole} leaves as much.</source>
        <extracomment>_lines</extracomment>
        <translation>{days} später sind {left} des alten Wassers übrig ({low} bis {high}, je nachdem, wie genau das Volumen bekannt ist). Ein Einzelwechsel von {batch_whole} lässt ebenso viel übrig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The exchange of a week equals a batch change of {batch_weekly}.</source>
        <extracomment>_lines</extracomment>
        <translation>Der Wasserwechsel einer Woche entspricht einem Einzelwechsel von {batch_weekly}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{name}: {points} at the start, new water {new_water}</source>
        <extracomment>_course</extracomment>
        <translation>{name}: {points} am Anfang, frisches Salzwasser {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}: {end} ({low} to {high})</source>
        <extracomment>_course</extracomment>
        <translation>{days} später: {end} ({low} bis {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>Settles at {settles}; half of the way takes {half_way}</source>
        <extracomment>_course</extracomment>
        <translation>Pendelt sich bei {settles} ein; der halbe Weg dauert {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>In is {ratio} of out; {low} hold salinity within 0.5. With the level held by top-off it settles at {settles}.</source>
        <extracomment>_pair</extracomment>
        <translation>Hinein sind {ratio} von hinaus; {low} halten die Salinität auf 0,5 genau. Wird der Wasserstand durch Nachfüllwasser gehalten, pendelt sie sich bei {settles} ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of old water.</source>
        <extracomment>_pair</extracomment>
        <translation>Eine Woche bewegt {weekly} altes Wasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug is full after {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> Zeit, bis der Kanister voll ist: {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of new water.</source>
        <extracomment>_pair</extracomment>
        <translation>Eine Woche bewegt {weekly} frisches Salzwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug lasts {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> Der Kanister reicht {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{more} a day {less}</source>
        <extracomment>_dosing</extracomment>
        <translation>{more} am Tag {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>To keep {name} where it is takes {with_exchange} of its stock a day with the exchange, {without} without: {how}.</source>
        <extracomment>_dosing</extracomment>
        <translation>Um {name} zu halten, braucht es mit dem Wasserwechsel {with_exchange} der zugehörigen Stammlösung am Tag, ohne ihn {without}: {how}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{volume} of new water take {mix_g} of salt mix.</source>
        <extracomment>_bucket</extracomment>
        <translation>{volume} frisches Salzwasser brauchen {mix_g} Salzmischung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket lacks {salt_g} of sodium chloride.</source>
        <extracomment>_bucket</extracomment>
        <translation>Dem Eimer fehlen {salt_g} Natriumchlorid.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket takes {water} of fresh water.</source>
        <extracomment>_bucket</extracomment>
        <translation>In den Eimer kommen {water} Süßwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>from the system's own fields</source>
        <translation>aus den eigenen Feldern des Systems</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>not said when</source>
        <translation>nicht angegeben, wann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{age}: old</source>
        <extracomment>_value</extracomment>
        <translation>{age}: alt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{new}
assumed</source>
        <extracomment>_value</extracomment>
        <translation>{new}
angenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>used {use} a day{from_}</source>
        <extracomment>_moved_by</extracomment>
        <translation>Verbrauch {use} am Tag{from_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>, from the log</source>
        <extracomment>_moved_by</extracomment>
        <translation>, aus dem Protokoll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>added {added} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>Zugabe {added} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>taken {loss} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>Entzug {loss} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>nothing left</source>
        <extracomment>_ends</extracomment>
        <translation>nichts mehr übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{end}
{low} to {high}</source>
        <extracomment>_ends</extracomment>
        <translation>{end}
{low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never: nothing left after {runs_out}</source>
        <extracomment>_settles</extracomment>
        <translation>nie: noch {runs_out}, dann nichts mehr übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>stays</source>
        <extracomment>_settles</extracomment>
        <translation>bleibt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never</source>
        <extracomment>_settles</extracomment>
        <translation>nie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
where it is</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
wo es ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
half way after {half_way}</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
halber Weg: {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} by {change}</source>
        <extracomment>_pace</extracomment>
        <translation>{way} um {change}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>no change</source>
        <extracomment>_pace, _change</extracomment>
        <translation>keine Änderung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Rise</source>
        <extracomment>_bars</extracomment>
        <translation>Anstieg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fall</source>
        <extracomment>_bars</extracomment>
        <translation>Rückgang</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{change} of {hard}</source>
        <extracomment>_bars</extracomment>
        <translation>{change} von {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} of {name} in a day</source>
        <extracomment>_bars</extracomment>
        <translation>{way} am Tag: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water apart in {name}</source>
        <extracomment>_apart</extracomment>
        <translation>Frisches Salzwasser weicht ab: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{said} of {said_most}</source>
        <extracomment>_apart</extracomment>
        <translation>{said} von {said_most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{low} hold salinity within 0.5</source>
        <extracomment>_pair</extracomment>
        <translation>{low} halten die Salinität auf 0,5 genau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water to old water</source>
        <extracomment>_pair</extracomment>
        <translation>Frisches Salzwasser zu altem Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>with the level held by top-off: {new_salinity} times {ratio}</source>
        <extracomment>_pair</extracomment>
        <translation>Wasserstand durch Nachfüllwasser gehalten: {new_salinity} mal {ratio}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salinity settles, by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>Salinität pendelt sich ein, nur durch das Pumpenpaar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more in than out</source>
        <extracomment>_pair</extracomment>
        <translation>mehr hinein als hinaus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more out than in</source>
        <extracomment>_pair</extracomment>
        <translation>mehr hinaus als hinein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Level by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>Wasserstand, nur durch das Pumpenpaar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day evaporate</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} am Tag verdunsten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Top-off that holds the level</source>
        <extracomment>_pair</extracomment>
        <translation>Nachfüllwasser, das den Wasserstand hält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Old water</source>
        <extracomment>_pair</extracomment>
        <translation>Altes Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>is full after</source>
        <extracomment>_pair</extracomment>
        <translation>hat Platz für</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>lasts</source>
        <extracomment>_pair</extracomment>
        <translation>reicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>a jug of {kilo} {does} {lasts}</source>
        <extracomment>_pair</extracomment>
        <translation>ein Kanister von {kilo} {does} {lasts}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{what}, jug for a week</source>
        <extracomment>_pair</extracomment>
        <translation>{what}, Kanister für eine Woche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} less</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} more</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>by the label: {label_g} in {kilo} give {label_salinity}. {label_only}</source>
        <extracomment>_bucket</extracomment>
        <translation>laut Etikett: {label_g} in {kilo} ergeben {label_salinity}. {label_only}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix for {kilo} at {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>Salzmischung für {kilo} mit {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Temperature</source>
        <extracomment>_bucket, CorrectForm._water, ExchangeForm._new_water</extracomment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>found {measured}, wanted {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>gemessen {measured}, gewünscht {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Noch zuzugebende Salzmischung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Or sodium chloride</source>
        <extracomment>_bucket</extracomment>
        <translation>Oder Natriumchlorid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>within 1 of what is wanted, since it shifts the balance</source>
        <extracomment>_bucket</extracomment>
        <translation>höchstens 1 unter dem Gewünschten, da es das Gleichgewicht verschiebt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fresh water still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Noch zuzugebendes Süßwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Salinity</source>
        <extracomment>_bucket, CorrectForm._water, salinity</extracomment>
        <translation>Salinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as wanted</source>
        <extracomment>_bucket</extracomment>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; bring the bucket to it</source>
        <extracomment>_warm</extracomment>
        <translation>wie im Becken; bringen Sie den Eimer darauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; the new water has {new_temperature}</source>
        <extracomment>_warm</extracomment>
        <translation>wie im Becken; das frische Salzwasser hat {new_temperature}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{name} ({read_at}, {stale_days} at most)</source>
        <extracomment>old_readings</extracomment>
        <translation>{name} ({read_at}, höchstens {stale_days})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Readings too old to go by: {old}. Test again.</source>
        <extracomment>old_readings</extracomment>
        <translation>Messwerte, die zu alt sind, um danach zu gehen: {old}. Testen Sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Nobody said when this was measured: {undated}. Test again, or say when.</source>
        <extracomment>old_readings</extracomment>
        <translation>Niemand hat angegeben, wann dies gemessen wurde: {undated}. Testen Sie neu, oder geben Sie an, wann.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Stands on the Correct sheet.</source>
        <translation>Steht auf dem Blatt Korrektur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>of the old water are left after {days}</source>
        <extracomment>view</extracomment>
        <translation>des alten Wassers sind {days} später übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>{out} a day go out, {in_} come in: as much as a batch change of {batch_weekly} every week, or of {batch_whole} once in {days}. By how well the volume is known, {low} to {high} are left.</source>
        <extracomment>view</extracomment>
        <translation>{out} am Tag gehen hinaus, {in_} kommen hinein: so viel wie ein Einzelwechsel von {batch_weekly} jede Woche oder von {batch_whole} einmal, Zeitraum {days}. Je nachdem, wie genau das Volumen bekannt ist, sind {low} bis {high} übrig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Nobody said how much {assumed} the new water has: natural seawater is assumed. Test it, or read the bag.</source>
        <extracomment>_remarks</extracomment>
        <translation>Für das frische Salzwasser hat niemand angegeben: {assumed}; natürliches Meerwasser wird angenommen. Testen Sie es, oder lesen Sie den Beutel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Should the jug of new water siphon across, {jug} run in: the system must hold that.</source>
        <extracomment>_remarks</extracomment>
        <translation>Sollte der Kanister mit frischem Salzwasser durch Heberwirkung hinüberlaufen, laufen {jug} ein: Das System muss das fassen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>under {with_unit}</source>
        <extracomment>percent</extracomment>
        <translation>unter {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{inside} to {inside_2}</source>
        <extracomment>between</extracomment>
        <translation>{inside} bis {inside_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Two ways to reckon this exchange differ for {what}, so nothing is said. Please report this question.</source>
        <translation>Zwei Rechenwege für diesen Wasserwechsel weichen voneinander ab ({what}), deshalb wird nichts angegeben. Bitte melden Sie diese Frage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>What is fed ({names}) counts as if all of it became nitrate and phosphate: the most it can bring. Growth and skimmer make it less.</source>
        <translation>Was gefüttert wird ({names}), zählt so, als würde alles zu Nitrat und Phosphat: das Höchste, was es bringen kann. Wachstum und Abschäumer machen es weniger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} stands here twice. Leave one of them out.</source>
        <translation>{parameter} steht hier zweimal. Lassen Sie eines davon weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} is not among the values looked at. Add it to them, or leave out the dose.</source>
        <translation>{parameter} ist nicht unter den betrachteten Werten. Fügen Sie es hinzu, oder lassen Sie die Dosis weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>This dose comes after the {days} days looked at. Look further, or leave it out.</source>
        <translation>Diese Dosis kommt nach den {days} betrachteten Tagen. Schauen Sie weiter voraus, oder lassen Sie sie weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>More comes in than goes out and evaporates: {per_day} a day, until the tank runs over. Set the pump for new water lower.</source>
        <translation>Es kommt mehr hinein, als hinausgeht und verdunstet: {per_day} am Tag, bis das Becken überläuft. Stellen Sie die Pumpe für frisches Salzwasser niedriger ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Fresh water needs no salt mix. Write the salinity that the new water should have.</source>
        <translation>Süßwasser braucht keine Salzmischung. Schreiben Sie die Salinität, die das frische Salzwasser haben soll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>No old water is taken out, so nothing that gathers leaves the tank.</source>
        <translation>Es wird kein altes Wasser entnommen, deshalb verlässt nichts, was sich ansammelt, das Becken.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The pumps are not matched: with the level held by top-off, salinity settles at {settles}, new water having {new}. To hold it within 0.5, the new water must be {low} of the old; it is {ratio}. Calibrate both pumps.</source>
        <translation>Die Pumpen sind nicht abgestimmt: Wird der Wasserstand durch Nachfüllwasser gehalten, pendelt sich die Salinität bei {settles} ein, das frische Salzwasser hat {new}. Um sie auf 0,5 genau zu halten, muss das frische Salzwasser {low} des alten sein; es sind {ratio}. Kalibrieren Sie beide Pumpen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more come in than go out. Unless as much evaporates, the tank runs over. Measure the evaporation.</source>
        <translation>{per_day} am Tag kommen mehr hinein, als hinausgehen. Wenn nicht ebenso viel verdunstet, läuft das Becken über. Messen Sie die Verdunstung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more go out than come in. Top-off makes that good with fresh water; without it the level falls.</source>
        <translation>{per_day} am Tag gehen mehr hinaus, als hineinkommen. Nachfüllwasser gleicht das mit Süßwasser aus; ohne dieses sinkt der Wasserstand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has a salinity of {new}, the tank {tank}. Common practice: bring it within {most} of the tank before the exchange is started.</source>
        <translation>Das frische Salzwasser hat eine Salinität von {new}, das Becken {tank}. Übliche Praxis: Bringen Sie es auf höchstens {most} Abstand zum Becken, bevor der Wasserwechsel beginnt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has {new}, the tank {tank}. Common practice: bring it within {most}, or make sure that the heater keeps up.</source>
        <translation>Das frische Salzwasser hat {new}, das Becken {tank}. Übliche Praxis: Bringen Sie es auf höchstens {most} Abstand, oder stellen Sie sicher, dass der Heizer nachkommt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours, more than the {most} that no plan may pass. Exchange less, or bring the new water nearer.</source>
        <translation>{parameter} würde in 24 Stunden um {rise} steigen, mehr als die {most}, die kein Plan überschreiten darf. Wechseln Sie weniger, oder bringen Sie das frische Salzwasser näher heran.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} würde in 24 Stunden um {rise} steigen; empfohlen sind höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours, more than the {most} that no plan may pass. Exchange less, bring the new water nearer, or dose what is used.</source>
        <translation>{parameter} würde in 24 Stunden um {fall} sinken, mehr als die {most}, die kein Plan überschreiten darf. Wechseln Sie weniger, bringen Sie das frische Salzwasser näher heran, oder dosieren Sie, was verbraucht wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} würde in 24 Stunden um {fall} sinken; empfohlen sind höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has an alkalinity of {new}, the tank {tank}. Common practice: bring it within {most}, or keep the exchange slow and test often.</source>
        <translation>Das frische Salzwasser hat eine Alkalinität von {new}, das Becken {tank}. Übliche Praxis: Bringen Sie es auf höchstens {most} Abstand, oder halten Sie den Wasserwechsel langsam und testen Sie oft.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>With this use nothing of {parameter} would be left after {days}. Dose it, or look whether the use is right.</source>
        <translation>Bei diesem Verbrauch wäre {days} später nichts mehr übrig: {parameter}. Dosieren Sie es, oder prüfen Sie, ob der Verbrauch stimmt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} never settles: nothing that gathers leaves the tank.</source>
        <translation>{parameter} pendelt sich nie ein: Nichts, was sich ansammelt, verlässt das Becken.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} settles at {settles}, outside the {low} to {high} usually kept.</source>
        <translation>{parameter} pendelt sich bei {settles} ein, außerhalb der üblich gehaltenen {low} bis {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Nobody said how much {parameter} the new water has: natural seawater is assumed, {value}. Test it.</source>
        <translation>Für das frische Salzwasser hat niemand {parameter} angegeben: Natürliches Meerwasser wird angenommen, {value}. Testen Sie es.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water brings more {parameter} than is used, so that the value rises without any dose.</source>
        <translation>Das frische Salzwasser bringt mehr {parameter}, als verbraucht wird, sodass der Wert ohne jede Dosis steigt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Test the bucket's salinity when all is dissolved and at the tank's temperature, before it is used.</source>
        <translation>Testen Sie die Salinität des Eimers, wenn alles gelöst ist und die Temperatur des Beckens hat, bevor er benutzt wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The bucket is {short} short. Common practice: sodium chloride makes good {most} at most, since it shifts the balance of the salts. Add salt mix instead.</source>
        <translation>Dem Eimer fehlen {short}. Übliche Praxis: Natriumchlorid gleicht höchstens {most} aus, da es das Gleichgewicht der Salze verschiebt. Geben Sie stattdessen Salzmischung zu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Salt mix is reckoned from the bag's own label only. Weigh it, and let all of it dissolve before testing.</source>
        <translation>Die Salzmischung wird nur nach dem Etikett ihres Beutels berechnet. Wiegen Sie sie ab, und lassen Sie alles sich lösen, bevor Sie testen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what to raise</source>
        <translation>was angehoben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the reading</source>
        <extracomment>_largest_source</extracomment>
        <translation>der Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>when it was measured</source>
        <translation>wann gemessen wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the net volume</source>
        <translation>das Nettovolumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how the volume is known</source>
        <translation>woher das Volumen bekannt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the volume is known</source>
        <translation>wie genau das Volumen bekannt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity</source>
        <translation>die Salinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature</source>
        <translation>die Temperatur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pH</source>
        <translation>der pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the alkalinity</source>
        <translation>die Alkalinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the partial pressure of carbon dioxide</source>
        <translation>der Partialdruck von Kohlendioxid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale of the pH</source>
        <translation>die pH-Skala</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the calcium</source>
        <translation>das Calcium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the evaporation</source>
        <translation>die Verdunstung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical</source>
        <translation>die Chemikalie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the amount</source>
        <translation>die Menge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the system's name</source>
        <translation>der Name des Systems</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the target</source>
        <translation>der Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the fastest rise</source>
        <translation>der schnellste Anstieg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the use per day</source>
        <extracomment>_largest_source</extracomment>
        <translation>der Verbrauch pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the reason</source>
        <translation>der Grund</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved</source>
        <translation>wie viel gelöst wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume</source>
        <translation>das aufgefüllte Volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity</source>
        <translation>die Reinheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the second chemical</source>
        <translation>die zweite Chemikalie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how much of the second chemical was dissolved</source>
        <translation>wie viel von der zweiten Chemikalie gelöst wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the purity of the second chemical</source>
        <translation>die Reinheit der zweiten Chemikalie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the coolest the jug gets</source>
        <translation>die kühlste Temperatur des Kanisters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>whether the jug is saturated</source>
        <translation>ob der Kanister gesättigt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what the bottle raises</source>
        <translation>was die Flasche anhebt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the dose on the label</source>
        <translation>die Dosis laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water on the label</source>
        <translation>das Wasser laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise on the label</source>
        <translation>der Anstieg laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the stock</source>
        <translation>die Temperatur der Stammlösung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the stock is to raise</source>
        <translation>was die Stammlösung anheben soll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the wanted strength</source>
        <translation>die gewünschte Stärke</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the wanted dose</source>
        <translation>die gewünschte Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water that the dose goes into</source>
        <translation>das Wasser, in das die Dosis kommt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise that the dose makes</source>
        <translation>der Anstieg, den die Dosis bewirkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical of the other stock</source>
        <translation>die Chemikalie der anderen Stammlösung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved in the other stock</source>
        <translation>wie viel in der anderen Stammlösung gelöst wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume of the other stock</source>
        <translation>das aufgefüllte Volumen der anderen Stammlösung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity of the other chemical</source>
        <translation>die Reinheit der anderen Chemikalie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's flow</source>
        <translation>die Förderleistung der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's smallest dose</source>
        <translation>die kleinste Dosis der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's step</source>
        <translation>der Schritt der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's largest share of the time</source>
        <translation>der größte Zeitanteil der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the doses per day</source>
        <translation>die Dosen pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the flow that the pump is set to</source>
        <translation>die eingestellte Förderleistung der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the dose in use</source>
        <translation>die benutzte Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours of the pump head</source>
        <translation>die Laufstunden des Pumpenkopfs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours in a day</source>
        <translation>die Laufstunden an einem Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the hours that a pump head lasts</source>
        <translation>die Stunden, die ein Pumpenkopf hält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the cylinder's graduation</source>
        <translation>die Teilung des Zylinders</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the cylinder's tolerance</source>
        <translation>die Toleranz des Zylinders</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the cylinder is made of</source>
        <translation>woraus der Zylinder besteht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the scale's last digit</source>
        <translation>die letzte Stelle der Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale's tolerance</source>
        <translation>die Toleranz der Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the temperature of the water</source>
        <translation>die Temperatur des Wassers</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity of the water</source>
        <translation>die Salinität des Wassers</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the air</source>
        <translation>die Temperatur der Luft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the air pressure</source>
        <translation>der Luftdruck</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the humidity</source>
        <translation>die Luftfeuchte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the density of the scale's weights</source>
        <translation>die Dichte der Gewichte der Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how far the time may be off</source>
        <translation>wie weit die Zeit abweichen kann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the inside diameter of the line</source>
        <translation>der Innendurchmesser der Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the length of the line</source>
        <translation>die Länge der Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>how much ran in</source>
        <translation>wie viel eingelaufen ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what the jug holds</source>
        <translation>was der Kanister fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much a centimetre of the jug holds</source>
        <translation>wie viel ein Zentimeter des Kanisters fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was expected</source>
        <translation>der erwartete Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was measured</source>
        <translation>der gemessene Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the time between two amounts</source>
        <translation>die Zeit zwischen zwei Mengen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the flow is to be known</source>
        <translation>wie genau die Förderleistung bekannt sein soll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Action</source>
        <translation>Aktion</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>System</source>
        <translation>System</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Word of the trade</source>
        <translation>Fachwort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>due today, tests, chores, reminders, calendar, round sheet</source>
        <translation>heute fällig, Tests, Aufgaben, Erinnerungen, Kalender, Rundgangsblatt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise, ramp, plan, dose, dose card, contingency cards, alk, KH</source>
        <translation>anheben, Rampe, Plan, Dosis, Dosierkarte, Störungskarten, Alk, KH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>daily dose, maintenance, consumption, use per day, two-part, balance</source>
        <translation>Tagesdosis, Erhaltung, Verbrauch, Verbrauch pro Tag, zwei Lösungen, Ausgleich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>water change, new water, old water, salt mix, continuous exchange, bucket</source>
        <translation>Teilwasserwechsel, frisches Salzwasser, altes Wasser, Salzmischung, laufender Wasserwechsel, Eimer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>feeding, nutrients, amino acids, protein, phosphorus, nitrogen</source>
        <translation>Fütterung, Nährstoffe, Aminosäuren, Protein, Phosphor, Stickstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>schedule, quiet hours, clock, times of day, minutes, day</source>
        <translation>Dosierplan, Ruhezeiten, Uhr, Uhrzeiten, Minuten, Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>calibration, doser, dosing head, tubing, flow, wear, peristaltic</source>
        <translation>Kalibrierung, Dosierer, Pumpenkopf, Schlauch, Förderleistung, Verschleiß, Schlauchpumpe, Peristaltik</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>level, refill, container, reservoir, siphon, absence, holiday, days left</source>
        <translation>Füllstand, nachfüllen, Behälter, Vorrat, Heber, Abwesenheit, Urlaub, Tage übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>batch, recipe, solution, concentrate, mixing, limewater, kalk, kalkwasser, label, hydroxide</source>
        <translation>Ansatz, Rezept, Lösung, Konzentrat, mischen, Kalkwasser, Kalk, Etikett, Hydroxid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>reading, test, note, history, import, spreadsheet, CSV, entries, chart</source>
        <translation>Messwert, Test, Notiz, Verlauf, Import, Tabelle, CSV, Einträge, Diagramm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high, emergency, accident, ran in, cloudy</source>
        <translation>Überdosierung, zu hoch, Notfall, Unfall, eingelaufen, trüb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>kalk, kalkwasser, calcium hydroxide</source>
        <translation>Kalk, Löschkalk, Calciumhydroxid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>alk, KH, carbonate hardness</source>
        <translation>Alk, KH, Karbonathärte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>doser, dosing pump, peristaltic</source>
        <translation>Dosierer, Dosierpumpe, Schlauchpumpe, Peristaltik</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>SG, hydrometer</source>
        <translation>SG, Aräometer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>salt, ppt, refractometer</source>
        <translation>Salz, ppt, Refraktometer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high</source>
        <translation>Überdosierung, zu hoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise slowly, course</source>
        <translation>langsam anheben, Verlauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print round sheet</source>
        <translation>Rundgangsblatt drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save round sheet as PDF</source>
        <translation>Rundgangsblatt als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at round sheet</source>
        <translation>Rundgangsblatt ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save reminders</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Erinnerungen speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Start this correction</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Diese Korrektur starten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save card as PDF</source>
        <extracomment>CardActions.__init__, Dialogs.save_pdf</extracomment>
        <translation>Karte als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print card</source>
        <translation>Karte drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at card</source>
        <translation>Karte ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards</source>
        <extracomment>ContingencyActions._look</extracomment>
        <translation>Störungskarten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New jug</source>
        <translation>Neuer Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New pump</source>
        <translation>Neue Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Add a food</source>
        <translation>Futter hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print timetable</source>
        <translation>Zeitplan drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save timetable as PDF</source>
        <translation>Zeitplan als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at timetable</source>
        <translation>Zeitplan ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New calibration</source>
        <translation>Neue Kalibrierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add pump</source>
        <translation>Pumpe hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Note this level</source>
        <translation>Diesen Füllstand notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Jug refilled</source>
        <translation>Kanister nachgefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Plan an absence</source>
        <translation>Abwesenheit planen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New batch</source>
        <translation>Neuer Ansatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print label</source>
        <translation>Etikett drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Save label as PDF</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>Etikett als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at label</source>
        <translation>Etikett ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add jug</source>
        <translation>Kanister hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Log it</source>
        <translation>Protokollieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import from a spreadsheet</source>
        <extracomment>ImportPage.__init__</extracomment>
        <translation>Aus einer Tabelle importieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save as spreadsheet</source>
        <extracomment>Dialogs.save_csv</extracomment>
        <translation>Als Tabelle speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Print emergency card</source>
        <translation>Notfallkarte drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>The whole jug ran in</source>
        <translation>Ganzer Kanister eingelaufen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>inside the band</source>
        <translation>im Band</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>above the band</source>
        <translation>über dem Band</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>below the band</source>
        <translation>unter dem Band</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Plan {plan_id} is followed since {since}. {said}</source>
        <extracomment>view</extracomment>
        <translation>Plan {plan_id} wird seit {since} befolgt. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Its card was valid until {valid_until}. Test {name}, then end it or plan again.</source>
        <extracomment>verdict</extracomment>
        <translation>Seine Karte galt bis {valid_until}. Testen Sie {name}, dann beenden Sie ihn, oder planen Sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The test of {name} is due now.</source>
        <extracomment>verdict</extracomment>
        <translation>Der Test ist jetzt fällig: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>No reading since then. Test {name} by {due}.</source>
        <extracomment>verdict</extracomment>
        <translation>Seitdem kein Messwert. Testen Sie {name} bis {due}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is {place_words} of {last}</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} liegt {place_words} von {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is above {stop_above}, where the card says stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} liegt über {stop_above}, wo die Karte Stopp sagt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{in_a_row} readings in a row lie above the band, the last {last_value} above {last}.</source>
        <extracomment>verdict</extracomment>
        <translation>{in_a_row} Messwerte hintereinander liegen über dem Band, der letzte, {last_value}, über {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Stop dosing {name} now. {why} The animals may use less than before.</source>
        <extracomment>verdict</extracomment>
        <translation>Dosieren Sie {name} ab jetzt nicht mehr. {why} Die Tiere verbrauchen vielleicht weniger als zuvor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. Test again with a fresh kit before the next doses; a second reading above it means stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. Testen Sie vor den nächsten Dosen noch einmal mit einem frischen Testset; ein zweiter Messwert darüber bedeutet Stopp.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug</source>
        <extracomment>verdict</extracomment>
        <translation>Sehen Sie Leitung, Pumpe und Kanister an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug now</source>
        <extracomment>verdict</extracomment>
        <translation>Sehen Sie jetzt Leitung, Pumpe und Kanister an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. {more}; the animals may use more than before. Never make up what is missing.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. {more}; die Tiere verbrauchen vielleicht mehr als zuvor. Holen Sie nie nach, was fehlt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source> Test {name} now.</source>
        <extracomment>verdict</extracomment>
        <translation> Testen Sie jetzt {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Two</source>
        <extracomment>_times</extracomment>
        <translation>Zwei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Three</source>
        <extracomment>_times</extracomment>
        <translation>Drei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/progress.py"/>
        <source>Stop</source>
        <extracomment>_answer, ProgressRow.__init__</extracomment>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>dosing now</source>
        <extracomment>_answer</extracomment>
        <translation>jetzt nicht dosieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The ramp is over, and nothing is dosed to keep the value.</source>
        <extracomment>_answer</extracomment>
        <translation>Die Rampe ist zu Ende, und nichts wird dosiert, um den Wert zu halten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>until </source>
        <extracomment>_answer</extracomment>
        <translation>bis </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>to keep it there</source>
        <extracomment>_answer</extracomment>
        <translation>um den Wert zu halten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>By now {found}, {given}. The water should hold {expected} ({expected_2}).</source>
        <extracomment>_answer</extracomment>
        <translation>Bis jetzt: {found}, {given}. Das Wasser sollte {expected} haben ({expected_2}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{doses_given} of {count} doses are due</source>
        <extracomment>_doses</extracomment>
        <translation>{doses_given} von {count} Dosen sind fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>all {count} doses and {doses_given} of the upkeep are due</source>
        <extracomment>_doses</extracomment>
        <translation>alle {count} Dosen und {doses_given} der Versorgung sind fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{retest_value}, expected {retest}</source>
        <extracomment>_line</extracomment>
        <translation>{retest_value}, erwartet {retest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if all doses arrived and the use is right; {used} was reckoned with</source>
        <extracomment>_volume</extracomment>
        <translation>wenn alle Dosen ankamen und der Verbrauch stimmt; gerechnet wurde mit {used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Net volume by this rise</source>
        <extracomment>_volume</extracomment>
        <translation>Nettovolumen nach diesem Anstieg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{said} ({low} to {high})</source>
        <extracomment>_volume</extracomment>
        <translation>{said} ({low} bis {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>plan</source>
        <extracomment>chart</extracomment>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>if uptake stops now</source>
        <extracomment>chart</extracomment>
        <translation>wenn der Verbrauch jetzt aufhört</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if dosing stops now</source>
        <extracomment>chart</extracomment>
        <translation>wenn das Dosieren jetzt aufhört</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>target</source>
        <extracomment>chart</extracomment>
        <translation>Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown. It is counted: the ramp starts at {start}. A new test would make it surer.</source>
        <translation>Seit dem Messwert wurden {untested} dosiert, die kein Test gezeigt hat. Das wird mitgezählt: Die Rampe beginnt bei {start}. Ein neuer Test würde es sicherer machen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown, which may reach {target} already. Test {parameter} again before more is planned.</source>
        <translation>Seit dem Messwert wurden {untested} dosiert, die kein Test gezeigt hat, damit können {target} schon erreicht sein. Testen Sie {parameter} noch einmal, bevor mehr geplant wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>The net volume is not known, so nobody can say what was raised since the reading. Test {parameter} again before more is planned.</source>
        <translation>Das Nettovolumen ist nicht bekannt, deshalb kann niemand sagen, was seit dem Messwert angehoben wurde. Testen Sie {parameter} noch einmal, bevor mehr geplant wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>{given} was given already that counts in the same 24 hours, of {hard} at the most. Wait a day, then test again.</source>
        <translation>{given} wurden schon gegeben, die in denselben 24 Stunden zählen, von höchstens {hard}. Warten Sie einen Tag, dann testen Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>with food</source>
        <translation>mit Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>without</source>
        <translation>ohne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>usual, at most</source>
        <translation>üblich, höchstens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>{name} goes from {points} to {end} with these foods, to {end_2} without.</source>
        <extracomment>_panel</extracomment>
        <translation>{name} geht von {points} auf {end} mit diesem Futter, auf {end_2} ohne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>Unnamed food</source>
        <translation>Futter ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>nitrification of {each}</source>
        <extracomment>_additions</extracomment>
        <translation>Nitrifikation von {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25.</source>
        <extracomment>messages, date_messages</extracomment>
        <translation>„{text}“ ist kein Datum. Schreiben Sie es wie 2026-11-25.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>That day is still to come.</source>
        <extracomment>messages</extracomment>
        <translation>Dieser Tag liegt noch in der Zukunft.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it stood warm</source>
        <extracomment>stop</extracomment>
        <translation>es stand warm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it keeps no longer</source>
        <extracomment>stop</extracomment>
        <translation>es ist nicht länger haltbar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The last day of {found} was {last_day}: {why}. Stop its pump, throw it away, rinse jug and line, and open a new one.</source>
        <extracomment>stop</extracomment>
        <translation>Der letzte Tag für {found} war {last_day}: {why}. Stoppen Sie die zugehörige Pumpe, werfen Sie es weg, spülen Sie Kanister und Leitung, und öffnen Sie ein neues.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>A feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Eine Fütterung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{times} in a day</source>
        <extracomment>_lines</extracomment>
        <translation>{times} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened {opened}, keeps {keeps_days}{in_}</source>
        <extracomment>_lines</extracomment>
        <translation>geöffnet {opened}, hält {keeps_days}{in_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> in the warm</source>
        <extracomment>_lines</extracomment>
        <translation> im Warmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> (today)</source>
        <extracomment>_lines</extracomment>
        <translation> (heute)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> ({left} left)</source>
        <extracomment>_lines</extracomment>
        <translation> (noch {left})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Last day to use it</source>
        <extracomment>_lines</extracomment>
        <translation>Letzter Tag der Verwendung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts</source>
        <extracomment>_lines</extracomment>
        <translation>Der Kanister reicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{jug} at {per_day} a day</source>
        <extracomment>_lines</extracomment>
        <translation>{jug} bei {per_day} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Empty on</source>
        <extracomment>_lines</extracomment>
        <translation>Leer am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened full, as much given every day</source>
        <extracomment>_lines</extracomment>
        <translation>voll geöffnet, jeden Tag gleich viel gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The line holds</source>
        <extracomment>_lines, _line</extracomment>
        <translation>Die Leitung fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>π ÷ 4 × inside diameter × inside diameter × length</source>
        <extracomment>_lines</extracomment>
        <translation>π ÷ 4 × Innendurchmesser × Innendurchmesser × Länge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Food stands in it</source>
        <extracomment>_lines</extracomment>
        <translation>Futter steht darin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>what it holds ÷ what is given in a day</source>
        <extracomment>_lines</extracomment>
        <translation>was sie fasst ÷ was am Tag gegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{rinses} × what it holds, fresh or salt water</source>
        <extracomment>_lines</extracomment>
        <translation>{rinses} × was sie fasst, Süß- oder Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush after a feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Spülen nach einer Fütterung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush in a day</source>
        <extracomment>_lines</extracomment>
        <translation>Spülen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>of fresh water it is a part of the top-off</source>
        <extracomment>_lines</extracomment>
        <translation>mit Süßwasser ist es ein Teil des Nachfüllwassers</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>It is not kept cold: raw food in the warm keeps a day at most (common practice, no source).</source>
        <extracomment>_remarks</extracomment>
        <translation>Es wird nicht kalt gehalten: Rohes Futter hält im Warmen höchstens einen Tag (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts {lasts} and keeps {keeps_days}: {thrown} would be thrown away. Open {largest} at a time, or less.</source>
        <extracomment>_remarks</extracomment>
        <translation>Der Kanister reicht {lasts} und hält {keeps_days}: {thrown} würden weggeworfen. Öffnen Sie jeweils {largest} oder weniger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Without flushing, food stands in the line for {stands_days}. In a warm line it spoils within hours (common practice, no source): flush {flush} after each feeding, or bring the jug nearer.</source>
        <extracomment>_remarks</extracomment>
        <translation>Ohne Spülen steht Futter {stands_days} in der Leitung. In einer warmen Leitung verdirbt es innerhalb von Stunden (übliche Praxis, keine Quelle): Spülen Sie nach jeder Fütterung mit {flush}, oder stellen Sie den Kanister näher heran.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>day</source>
        <extracomment>_days</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>days</source>
        <extracomment>_days, ExchangeChart._paint_axes</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a week</source>
        <extracomment>_spoken</extracomment>
        <translation>in einer Woche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 4 weeks</source>
        <translation>in 4 Wochen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 8 weeks</source>
        <translation>in 8 Wochen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>settles at</source>
        <translation>pendelt sich ein bei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>In a day</source>
        <extracomment>table_heads</extracomment>
        <translation>Am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>given</source>
        <extracomment>table_heads</extracomment>
        <translation>gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>paused</source>
        <extracomment>row</extracomment>
        <translation>pausiert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no amount yet</source>
        <extracomment>row</extracomment>
        <translation>noch keine Menge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{per_day} a day</source>
        <extracomment>row</extracomment>
        <translation>{per_day} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>STOP: its last day is over</source>
        <extracomment>row</extracomment>
        <translation>STOPP: letzter Tag ist vorbei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>use until {last_day}</source>
        <extracomment>row</extracomment>
        <translation>verwendbar bis {last_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{each} cannot be read yet, so nothing of it is counted.</source>
        <extracomment>view</extracomment>
        <translation>{each} kann noch nicht gelesen werden, deshalb wird nichts davon gezählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mL per day</source>
        <extracomment>_answer, a unit beside a figure</extracomment>
        <translation>mL pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Paused: nothing of it is counted.</source>
        <extracomment>_answer</extracomment>
        <translation>Pausiert: Nichts davon wird gezählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>feeding now</source>
        <extracomment>_answer</extracomment>
        <translation>jetzt nicht füttern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>At most {dose} a day of it beside the other foods, by the rise of {parameter}.</source>
        <extracomment>_answer</extracomment>
        <translation>Davon höchstens {dose} am Tag neben dem anderen Futter, nach dem Anstieg: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in {food_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Bitte ausfüllen: {food_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Exchange</source>
        <extracomment>_elsewhere, UpkeepSheet._placed</extracomment>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Correct</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Korrektur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in the net volume.</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Geben Sie das Nettovolumen ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>On the {where} sheet: {said}</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Auf dem Blatt {where}: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{unit} per day</source>
        <extracomment>_figure</extracomment>
        <translation>{unit} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>A day of it brings at most {said}.</source>
        <extracomment>_brings</extracomment>
        <translation>Ein Tag davon bringt höchstens {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Nothing of it is counted.</source>
        <extracomment>_brings</extracomment>
        <translation>Nichts davon wird gezählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{near_value} of {bound}</source>
        <extracomment>_bars</extracomment>
        <translation>{near_value} von {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{name} in a day</source>
        <extracomment>_bars, _working</extracomment>
        <translation>{name} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{dose} × {carried} in a mL × {per} ÷ {litres}</source>
        <extracomment>_working</extracomment>
        <translation>{dose} × {carried} in einem mL × {per} ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>All together</source>
        <extracomment>_rows</extracomment>
        <translation>Alle zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>none</source>
        <extracomment>_rise, _salt, TimetableForm.__init__</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>takes {said}</source>
        <extracomment>_rise</extracomment>
        <translation>nimmt {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>with these foods</source>
        <extracomment>_course</extracomment>
        <translation>mit diesem Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>without food</source>
        <extracomment>_course</extracomment>
        <translation>ohne Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>climbs on</source>
        <extracomment>_points</extracomment>
        <translation>steigt weiter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no reading</source>
        <extracomment>_points</extracomment>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source> Turning their nitrogen into nitrate alone takes {oxygen} in a day.</source>
        <extracomment>_notes</extracomment>
        <translation> Allein um ihren Stickstoff in Nitrat umzuwandeln, braucht es am Tag {oxygen}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L</source>
        <extracomment>_notes, _pair, _figure</extracomment>
        <translation>mg pro L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A liquid food</source>
        <translation>Ein flüssiges Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Amino acids</source>
        <translation>Aminosäuren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A trace mix</source>
        <translation>Eine Spurenmischung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What a mL carries</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Was ein mL enthält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Percent by mass</source>
        <translation>Massenprozent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>So many mL raise so much water</source>
        <translation>So viele mL für so viel Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Yes, kept cold</source>
        <translation>Ja, kalt gehalten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>No, it stands in the room</source>
        <translation>Nein, es steht im Raum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Given</source>
        <translation>Gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Paused</source>
        <translation>Pausiert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the name of the food</source>
        <translation>der Name des Futters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the food is</source>
        <translation>was das Futter ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how much is given in a day</source>
        <translation>wie viel am Tag gegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the feedings in a day</source>
        <translation>die Fütterungen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether the food is given</source>
        <translation>ob das Futter gegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how the label says what it carries</source>
        <translation>wie das Etikett angibt, was es enthält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen in a mL</source>
        <translation>der Stickstoff in einem mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus in a mL</source>
        <translation>der Phosphor in einem mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the protein</source>
        <translation>das Protein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen</source>
        <translation>der Stickstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus</source>
        <translation>der Phosphor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the density</source>
        <translation>die Dichte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the label says it raises</source>
        <translation>was es laut Etikett anhebt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the date it was opened</source>
        <translation>das Datum des Öffnens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how long it keeps</source>
        <translation>wie lange es hält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether it is kept cold</source>
        <translation>ob es kalt gehalten wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump</source>
        <extracomment>_primed, _flow, field_words</extracomment>
        <translation>die Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Raw food: wash your hands before and after, and clean what it touched.</source>
        <translation>Rohes Futter: Waschen Sie vorher und nachher die Hände, und reinigen Sie, was es berührt hat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>In the fridge keep it closed and apart from people's food, labelled with its name and the date it was opened.</source>
        <translation>Halten Sie es im Kühlschrank geschlossen und getrennt von Lebensmitteln, beschriftet mit seinem Namen und dem Datum des Öffnens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>What smells off or was warm for a day is thrown away.</source>
        <translation>Was schlecht riecht oder einen Tag lang warm war, wird weggeworfen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Read the bottle's own label first; it wins over this page.</source>
        <translation>Lesen Sie zuerst das Etikett der Flasche; es hat Vorrang vor dieser Seite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Write the date it was opened on it. Nothing in drink bottles; keep it away from children.</source>
        <translation>Schreiben Sie das Datum des Öffnens darauf. Nichts in Getränkeflaschen; halten Sie es von Kindern fern.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>As if all of it became nitrate and phosphate: the most it can bring. Skimmer and growth make it less; a test tells.</source>
        <translation>So, als würde alles davon zu Nitrat und Phosphat: das Höchste, was es bringen kann. Abschäumer und Wachstum machen es weniger; ein Test zeigt es.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Food, exchange and export alone are reckoned above: what is dosed besides, and what the animals use, is left out. All plans together follow below.</source>
        <translation>Oben sind nur Futter, Wasserwechsel und Austrag berechnet: Was sonst dosiert wird und was die Tiere verbrauchen, ist weggelassen. Alle Pläne zusammen folgen unten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Decay takes oxygen, most at night. Feed less when the water is warm or the surface still, and not while the flow is off.</source>
        <translation>Zersetzung verbraucht Sauerstoff, am meisten nachts. Füttern Sie weniger, wenn das Wasser warm oder die Oberfläche unbewegt ist, und nicht, während die Strömung aus ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Nitrogen and phosphorus together are more than the whole food. Look at the label again.</source>
        <translation>Stickstoff und Phosphor sind zusammen mehr als das ganze Futter. Sehen Sie noch einmal auf das Etikett.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day, more than the {most} that no plan may pass, reckoned for the low end of the net volume. Give at most {share} of it.</source>
        <translation>Alles Futter zusammen kann am Tag {rise} {parameter} bringen, mehr als die {most}, die kein Plan überschreiten darf, berechnet für das untere Ende des Nettovolumens. Geben Sie höchstens {share} davon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day; {most} is recommended at most.</source>
        <translation>Alles Futter zusammen kann am Tag {rise} {parameter} bringen; empfohlen sind höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>With these foods {parameter} may settle at {settles}, above the {high} usually kept. Feed less, or take out more.</source>
        <translation>Mit diesem Futter kann sich {parameter} bei {settles} einpendeln, über den üblich gehaltenen {high}. Füttern Sie weniger, oder entnehmen Sie mehr.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>{parameter} never settles: nothing is said to leave the tank, and up to {rise} come in a week. Say on the Exchange sheet what is exchanged, and what skimmer, algae and media take.</source>
        <translation>{parameter} pendelt sich nie ein: Nichts verlässt den Angaben nach das Becken, und bis zu {rise} kommen in einer Woche hinzu. Geben Sie auf dem Blatt Wasserwechsel an, was gewechselt wird und was Abschäumer, Algen und Filtermedien entziehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>The label of {name} says nothing of phosphorus, so none is counted. Nearly every food brings some: test phosphate.</source>
        <translation>Auf dem Etikett von {name} steht nichts über Phosphor, deshalb wird keiner gezählt. Fast jedes Futter bringt etwas davon: Testen Sie Phosphat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>a food</source>
        <translation>einem Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Common practice, no source.</source>
        <translation>Übliche Praxis, keine Quelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Source: {source}.</source>
        <translation>Quelle: {source}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>No system takes from this jug yet, so there is no water it could run into.</source>
        <translation>Aus diesem Kanister entnimmt noch kein System etwas, deshalb gibt es kein Wasser, in das er laufen könnte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>What is in the jug is not complete, so nobody can say what it would do. Fill in its batch on the Stocks sheet.</source>
        <translation>Der Inhalt des Kanisters ist nicht vollständig angegeben, deshalb kann niemand sagen, was er bewirken würde. Füllen Sie seinen Ansatz auf dem Blatt Stammlösungen aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>taken for it, not tested</source>
        <extracomment>_row</extracomment>
        <translation>dafür angenommen, nicht getestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>as tested</source>
        <extracomment>_row, run_in, _lines</extracomment>
        <translation>wie getestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>{name}: from {before} ({said}) to {after}</source>
        <extracomment>_row</extracomment>
        <translation>{name}: von {before} ({said}) auf {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, above the {most} that no plan may aim for</source>
        <extracomment>_row</extracomment>
        <translation>, über den {most}, die ein Plan höchstens anstreben darf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>too high already: none of it is safe</source>
        <extracomment>_row</extracomment>
        <translation>schon zu hoch: Nichts davon ist sicher</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>largest safe jug {safe}, advised {safe_2} or less</source>
        <extracomment>_row</extracomment>
        <translation>größter sicherer Kanister {safe}, empfohlen {safe_2} oder weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, about {held} of running</source>
        <extracomment>_primed</extracomment>
        <translation>, etwa {held} Laufzeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>The line of {name} holds {held}{run}.</source>
        <extracomment>_primed</extracomment>
        <translation>Die Leitung von {name} fasst {held}{run}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source> Not primed, the first {n} doses do not arrive whole.</source>
        <extracomment>for 1:  Not primed, the first dose does not arrive whole.; _primed</extracomment>
        <translation>
            <numerusform> Nicht vorgefüllt, kommt die erste Dosis nicht vollständig an.</numerusform>
            <numerusform> Nicht vorgefüllt, kommen die ersten {n} Dosen nicht vollständig an.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Reckoning what is taken from the jugs.</source>
        <translation>Es wird berechnet, was aus den Kanistern entnommen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Nothing is known to be taken from this jug, so its levels say nothing of a pump.</source>
        <translation>Aus diesem Kanister ist keine Entnahme bekannt, deshalb sagen seine Füllstände nichts über eine Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Say what the jug holds when it is full; then its levels can be compared.</source>
        <translation>Geben Sie an, was der Kanister voll fasst; dann lassen sich seine Füllstände vergleichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>One level is noted. Read it again in a few days: two levels tell how the pump delivers.</source>
        <translation>Ein Füllstand ist notiert. Lesen Sie in einigen Tagen noch einmal ab: Zwei Füllstände zeigen, wie die Pumpe fördert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>No level is noted yet. Read one now, and one more in a few days: two levels tell how the pump delivers.</source>
        <translation>Noch kein Füllstand ist notiert. Lesen Sie jetzt einen ab und in einigen Tagen noch einen: Zwei Füllstände zeigen, wie die Pumpe fördert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>All is well: the pump delivers what it should.</source>
        <translation>Alles in Ordnung: Die Pumpe fördert, was sie soll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Far less is in the log than the daily rate takes. What was dosed by hand and not noted looks like a fault of the pump.</source>
        <translation>Im Protokoll steht viel weniger, als die Tagesmenge entnimmt. Was von Hand dosiert und nicht notiert wurde, sieht wie ein Fehler der Pumpe aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>The level fell all the same. If no pump draws from this jug, it runs in by itself: lift the outlet out of the water at once and set the jug below it.</source>
        <extracomment>_fell</extracomment>
        <translation>Der Füllstand sank trotzdem. Wenn keine Pumpe aus diesem Kanister zieht, läuft er von selbst ein: Heben Sie den Auslass sofort aus dem Wasser, und stellen Sie den Kanister tiefer als den Auslass.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>it may run in by itself</source>
        <extracomment>summary</extracomment>
        <translation>er läuft vielleicht von selbst ein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} {way} (give or take {half})</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} {way} (± {half})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{real} left the jug from {since} to {until} (give or take {half}); {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>{real} verließen den Kanister von {since} bis {until} (± {half}); {expected} wurden erwartet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>That is {off}: {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>Das ist {off}: {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>To tell {percent}, read levels between which {clear_from} or more are dosed.</source>
        <extracomment>_checked</extracomment>
        <translation>Um {percent} zu erkennen, lesen Sie Füllstände ab, zwischen denen {clear_from} oder mehr dosiert werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Likely: {causes}.</source>
        <extracomment>_checked</extracomment>
        <translation>Wahrscheinlich: {causes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Possible{too}: {others}.</source>
        <extracomment>_checked</extracomment>
        <translation>Möglich{too}: {others}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} too {much} delivered</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} zu {much} gefördert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>much</source>
        <extracomment>_checked</extracomment>
        <translation>viel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>little</source>
        <extracomment>_checked</extracomment>
        <translation>wenig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{name} is set by a flow of {entered_number}. By these levels it gives {new} ({low} to {high}). Calibrate it first; use this only if the calibration says the same.</source>
        <extracomment>_flow</extracomment>
        <translation>{name} ist auf eine Förderleistung von {entered_number} eingestellt. Nach diesen Füllständen fördert sie {new} ({low} bis {high}). Kalibrieren Sie zuerst; verwenden Sie dies nur, wenn die Kalibrierung das Gleiche sagt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what lies below the intake</source>
        <translation>was unter der Ansaugung liegt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how well a level is read</source>
        <translation>wie genau ein Füllstand abgelesen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how the jug stands</source>
        <translation>wie der Kanister steht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>whether the line is primed</source>
        <translation>ob die Leitung vorgefüllt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>the date of return</source>
        <translation>das Datum der Rückkehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison&#xa0;centre:</source>
        <translation>In den Augen: mindestens 15 Minuten lang spülen und ärztliche Hilfe holen. Giftnotruf:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Keep away from children. Not for drinking.</source>
        <translation>Von Kindern fernhalten. Nicht zum Trinken.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>carbonate</source>
        <translation>Carbonat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>bicarbonate</source>
        <translation>Hydrogencarbonat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>other alkalinity</source>
        <translation>sonstige Alkalinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dissolved inorganic carbon</source>
        <translation>gelöster anorganischer Kohlenstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dry salt</source>
        <translation>trockenes Salz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Never mix with any {named} concentrate.</source>
        <extracomment>label</extracomment>
        <translation>Nie mit einem Konzentrat davon mischen: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>and </source>
        <extracomment>_contents</extracomment>
        <translation>und </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength by its label: {dose} raise {water} by {rise}.</source>
        <extracomment>_strength</extracomment>
        <translation>Stärke laut Etikett: {dose} heben {water} um {rise} an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Saturated limewater, dose the clear water only. Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Gesättigtes Kalkwasser, nur das klare Wasser dosieren. Stärke: {batch}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Stärke: {batch}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{amount} of {item}{counted_as}</source>
        <extracomment>_does</extracomment>
        <translation>{amount} {item}{counted_as}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{dose} carries {carried}.</source>
        <extracomment>_does</extracomment>
        <translation>In {dose}: {carried}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{parameter} by {amount}</source>
        <extracomment>_does</extracomment>
        <translation>{parameter} um {amount}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{dose} in {water} raises {rises}.</source>
        <extracomment>_does</extracomment>
        <translation>{dose} in {water} heben an: {rises}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{first} or {last}</source>
        <extracomment>_any_of, listed</extracomment>
        <translation>{first} oder {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Filled</source>
        <extracomment>_entries</extracomment>
        <translation>Abgefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Mixed</source>
        <extracomment>_entries</extracomment>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} on</source>
        <extracomment>_entries</extracomment>
        <translation>{done} am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} by</source>
        <extracomment>_entries</extracomment>
        <translation>{done} von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Not colder than</source>
        <extracomment>_entries</extracomment>
        <translation>Nicht kälter als</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/card/label_parts.py"/>
        <location filename="../glossary.toml"/>
        <source>Batch</source>
        <extracomment>_entries, batch</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>Read the level first, at eye height.</source>
        <extracomment>take</extracomment>
        <translation>Lesen Sie zuerst den Füllstand ab, auf Augenhöhe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>A refill leaves more in the jug than before.</source>
        <extracomment>take</extracomment>
        <translation>Nach dem Nachfüllen ist mehr im Kanister als vorher.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Largest jug that leaves every value in its hard range: {safe}. Advised: {advised} or less.</source>
        <extracomment>_lines</extracomment>
        <translation>Größter Kanister, bei dem jeder Wert in seinem festen Bereich bleibt: {safe}. Empfohlen: {advised} oder weniger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>In the jug now: about {level}. The pumps take {per_day} a day.</source>
        <extracomment>_lasts</extracomment>
        <translation>Jetzt im Kanister: etwa {level}. Die Pumpen entnehmen {per_day} am Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>At that it lasts more than ten years.</source>
        <extracomment>_lasts</extracomment>
        <translation>Damit reicht er mehr als zehn Jahre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>It lasts {days_left}, until {last_full}. Refill it before {refill_before}.</source>
        <extracomment>_lasts</extracomment>
        <translation>Er reicht {days_left}, bis {last_full}. Füllen Sie ihn vor {refill_before} nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>By {earliest} if the level was read high and the pumps deliver as much more as their calibration leaves open.</source>
        <extracomment>_lasts</extracomment>
        <translation>Bis {earliest}, wenn der Füllstand zu hoch abgelesen wurde und die Pumpen so viel mehr fördern, wie ihre Kalibrierung offenlässt.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>the first {n} doses do</source>
        <extracomment>for 1: the first dose does; _lasts</extracomment>
        <translation>
            <numerusform>kommt die erste Dosis</numerusform>
            <numerusform>kommen die ersten {n} Dosen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The line holds {volume}: prime it after a refill, or {which} not arrive whole.</source>
        <extracomment>_lasts</extracomment>
        <translation>Die Leitung fasst {volume}: Füllen Sie sie nach dem Nachfüllen vor, sonst {which} nicht vollständig an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>assumed, not tested</source>
        <extracomment>run_in</extracomment>
        <translation>angenommen, nicht getestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If the whole jug ran in, {name} would go from {before} ({said}) to {after}.</source>
        <extracomment>run_in</extracomment>
        <translation>Wenn der ganze Kanister einliefe, würde {name} von {before} ({said}) auf {after} gehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Jug check from {since} to {until}: {real} left the jug (give or take {real_half}), {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>Kanisterprüfung von {since} bis {until}: {real} verließen den Kanister (± {real_half}), {expected} wurden erwartet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>That is {bias} {way} (give or take {half}): {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>Das ist {bias} {way} (± {half}): {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source> Possible: {possible}.</source>
        <extracomment>_checked</extracomment>
        <translation> Möglich: {possible}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If a calibration says the same, multiply the pump's flow by {f_value} ({low} to {high}). Nothing is changed by itself.</source>
        <extracomment>_checked</extracomment>
        <translation>Wenn eine Kalibrierung das Gleiche sagt, multiplizieren Sie die Förderleistung der Pumpe mit {f_value} ({low} bis {high}). Nichts ändert sich von selbst.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The flow would then be {flow}.</source>
        <extracomment>_checked</extracomment>
        <translation>Die Förderleistung wäre dann {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Away until {until}:</source>
        <extracomment>_away</extracomment>
        <translation>Abwesend bis {until}:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Left as it is, the jug misses doses from {left_alone_until} on.</source>
        <extracomment>_away</extracomment>
        <translation>Bleibt der Kanister, wie er ist, fallen ab {left_alone_until} Dosen aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then. Add {add} before you leave.</source>
        <extracomment>_away</extracomment>
        <translation>{needed} werden bis dahin gebraucht. Geben Sie {add} zu, bevor Sie gehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then, and there is enough.</source>
        <extracomment>_away</extracomment>
        <translation>{needed} werden bis dahin gebraucht, und es ist genug da.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Even full it lasts only until {lasts_until}: ask somebody to refill it.</source>
        <extracomment>_away</extracomment>
        <translation>Selbst voll reicht er nur bis {lasts_until}: Bitten Sie jemanden, ihn nachzufüllen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {after}, more than the {most} no plan may aim for.</source>
        <extracomment>_would_harm</extracomment>
        <translation>Wenn der ganze Kanister einliefe, würde {parameter} {after} erreichen, mehr als die {most}, die ein Plan höchstens anstreben darf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} It is too high already: dose none of it.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} Der Wert ist schon zu hoch: Dosieren Sie nichts davon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} A jug of {safe} or less would not.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} Ein Kanister mit {safe} oder weniger würde das nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level of the jug once at least. Two levels some days apart tell how its pump delivers.</source>
        <translation>Lesen Sie den Füllstand des Kanisters mindestens einmal ab. Zwei Füllstände im Abstand einiger Tage zeigen, wie seine Pumpe fördert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug holds {holds}, and all of that is said to lie below the intake. Correct one of the two.</source>
        <translation>Der Kanister fasst {holds}, und das alles soll unter der Ansaugung liegen. Korrigieren Sie eines von beiden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A level of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Ein Füllstand von {given} ist mehr, als der Kanister fasst, {holds}. Korrigieren Sie eines von beiden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A refill of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Eine Nachfüllmenge von {given} ist mehr, als der Kanister fasst, {holds}. Korrigieren Sie eines von beiden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this level is still to come. Correct it.</source>
        <translation>Die Zeit dieses Füllstands liegt noch in der Zukunft. Korrigieren Sie sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this refill is still to come. Correct it, or leave it out until it is done.</source>
        <translation>Die Zeit dieses Nachfüllens liegt noch in der Zukunft. Korrigieren Sie sie, oder lassen Sie es weg, bis es geschehen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The return lies before now. Correct its date.</source>
        <translation>Die Rückkehr liegt in der Vergangenheit. Korrigieren Sie ihr Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>One level says nothing of the pump. Read it again in a few days.</source>
        <translation>Ein Füllstand sagt nichts über die Pumpe. Lesen Sie in einigen Tagen noch einmal ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>These are {count} levels; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Das sind {count} Füllstände; {most} lassen sich zusammen betrachten. Lassen Sie die ältesten weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Two levels have the same time, so nothing is said of the pump. Correct one of them.</source>
        <translation>Zwei Füllstände haben dieselbe Zeit, deshalb wird nichts über die Pumpe gesagt. Korrigieren Sie einen davon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No dose falls between these levels, so they say nothing of the pump.</source>
        <translation>Zwischen diese Füllstände fällt keine Dosis, deshalb sagen sie nichts über die Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level fell without any dose. Lift the outlet out of the water at once: the jug may run in by itself.</source>
        <translation>Der Füllstand sank ohne jede Dosis. Heben Sie den Auslass sofort aus dem Wasser: Der Kanister läuft vielleicht von selbst ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>More left the jug than the pump should have taken, so it may run in by itself. Stop at once: lift the outlet out of the water and the jug below it, then test the water before anything is dosed.</source>
        <translation>Es verließ mehr den Kanister, als die Pumpe hätte entnehmen sollen, er läuft also vielleicht von selbst ein. Stoppen Sie sofort: Heben Sie den Auslass aus dem Wasser, stellen Sie den Kanister tiefer als den Auslass, und testen Sie dann das Wasser, bevor etwas dosiert wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No single cause explains these levels. Read them again, and note every refill.</source>
        <translation>Keine einzelne Ursache erklärt diese Füllstände. Lesen Sie sie noch einmal ab, und notieren Sie jedes Nachfüllen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{count} pumps draw from this jug. The levels cannot tell which of them is off: look at each.</source>
        <translation>{count} Pumpen ziehen aus diesem Kanister. Die Füllstände können nicht zeigen, welche davon abweicht: Sehen Sie jede an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug was found dry, so only what was in it is expected to have been delivered.</source>
        <translation>Der Kanister wurde trocken vorgefunden, deshalb wird nur erwartet, dass gefördert wurde, was darin war.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level rose without a refill noted. Note the refill, or read the level again.</source>
        <translation>Der Füllstand stieg, ohne dass ein Nachfüllen notiert ist. Notieren Sie das Nachfüllen, oder lesen Sie den Füllstand noch einmal ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands above its outlet, so it can run in by itself when the pump head fails. Set it below the outlet.</source>
        <translation>Der Kanister steht höher als sein Auslass, deshalb kann er von selbst einlaufen, wenn der Pumpenkopf versagt. Stellen Sie ihn tiefer als den Auslass.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends under water, so the tank can run back into the jug, or the jug into the tank. Hang it above the highest water line with an air gap.</source>
        <translation>Der Auslass endet unter Wasser, deshalb kann das Becken in den Kanister zurücklaufen oder der Kanister ins Becken. Hängen Sie ihn mit Luftabstand über die höchste Wasserlinie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look whether the outlet ends above the highest water line and the jug stands below the outlet.</source>
        <translation>Sehen Sie nach, ob der Auslass über der höchsten Wasserlinie endet und der Kanister tiefer als der Auslass steht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is empty, or too empty for a whole dose. Refill it and prime the line. Go on with the next dose; never make up what was missed.</source>
        <translation>Der Kanister ist leer oder zu leer für eine ganze Dosis. Füllen Sie ihn nach, und füllen Sie die Leitung vor. Machen Sie mit der nächsten Dosis weiter; holen Sie nie nach, was ausgefallen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is low: it lasts {days}. Mix the next batch.</source>
        <translation>Der Kanister ist fast leer: Er reicht {days}. Setzen Sie den nächsten Ansatz an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The pumps take {per_day} a day, so a full jug lasts less than two days. Make a stronger stock, as far as it dissolves.</source>
        <translation>Die Pumpen entnehmen {per_day} am Tag, deshalb reicht ein voller Kanister weniger als zwei Tage. Setzen Sie eine stärkere Stammlösung an, soweit sie sich löst.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends above the highest water line, with an air gap.</source>
        <translation>Der Auslass endet über der höchsten Wasserlinie, mit Luftabstand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands below the outlet.</source>
        <translation>Der Kanister steht tiefer als der Auslass.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, no value would leave its hard range.</source>
        <translation>Wenn der ganze Kanister einliefe, würde kein Wert seinen festen Bereich verlassen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>With the tube lifted out of the pump, nothing runs on.</source>
        <translation>Mit aus der Pumpe gehobenem Schlauch läuft nichts nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Alkalinity and calcium have outlets of their own, apart and in strong flow.</source>
        <translation>Alkalinität und Calcium haben eigene Auslässe, getrennt und in starker Strömung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The line is primed: liquid stands at the outlet.</source>
        <translation>Die Leitung ist vorgefüllt: Flüssigkeit steht am Auslass.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>all is well</source>
        <translation>alles in Ordnung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a worn pump head</source>
        <translation>ein verschlissener Pumpenkopf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>air in the line, or a blocked line</source>
        <translation>Luft in der Leitung oder eine verstopfte Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>crust, or a line that is partly blocked</source>
        <translation>Kruste oder eine teilweise verstopfte Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>the jug runs in by itself (siphon)</source>
        <translation>der Kanister läuft von selbst ein (Heber)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a pump that is not calibrated</source>
        <translation>eine nicht kalibrierte Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a batch of another strength than noted, or another net volume</source>
        <translation>ein Ansatz von anderer Stärke als notiert oder ein anderes Nettovolumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a level misread, or a refill that was not noted</source>
        <translation>ein falsch abgelesener Füllstand oder ein nicht notiertes Nachfüllen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The levels cannot tell the cause.</source>
        <translation>Die Füllstände können die Ursache nicht zeigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Lift the outlet out of the water and set the jug below it. Nothing may run on.</source>
        <translation>Heben Sie den Auslass aus dem Wasser, und stellen Sie den Kanister tiefer als den Auslass. Nichts darf nachlaufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level again, at eye height, on level ground.</source>
        <translation>Lesen Sie den Füllstand noch einmal ab, auf Augenhöhe, auf ebenem Boden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Ask whether somebody refilled the jug, or took something out.</source>
        <translation>Fragen Sie, ob jemand den Kanister nachgefüllt oder etwas herausgenommen hat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Watch one dose at the outlet: it comes at once, and stops at once.</source>
        <translation>Beobachten Sie eine Dosis am Auslass: Sie kommt sofort und hört sofort auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look along the line for air and kinks, then prime it.</source>
        <translation>Suchen Sie entlang der Leitung nach Luft und Knicken, dann füllen Sie sie vor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look at the outlet for crust, and clean or cut it. Wear goggles.</source>
        <translation>Sehen Sie am Auslass nach Kruste, und reinigen oder kürzen Sie ihn. Tragen Sie eine Schutzbrille.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Compare the jug's label with what is noted: chemical, mass, volume, date.</source>
        <translation>Vergleichen Sie das Etikett des Kanisters mit dem Notierten: Chemikalie, Masse, Volumen, Datum.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Test the water again with fresh reagent, and check the net volume.</source>
        <translation>Testen Sie das Wasser noch einmal mit frischem Reagenz, und prüfen Sie das Nettovolumen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Calibrate the pump: run it a known time into a cylinder, three times.</source>
        <translation>Kalibrieren Sie die Pumpe: Lassen Sie sie eine bekannte Zeit in einen Zylinder laufen, dreimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If it still delivers too little, change the head's tubing and calibrate again.</source>
        <translation>Wenn sie immer noch zu wenig fördert, wechseln Sie den Schlauch des Pumpenkopfs, und kalibrieren Sie erneut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>within 5&#xa0;% of what was expected</source>
        <translation>innerhalb von 5&#xa0;% des Erwarteten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 5&#xa0;% off</source>
        <translation>mehr als 5&#xa0;% daneben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 10&#xa0;% off</source>
        <translation>mehr als 10&#xa0;% daneben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>not certain: the levels are too coarse to tell 5&#xa0;%</source>
        <translation>nicht sicher: Die Füllstände sind zu grob, um 5&#xa0;% zu erkennen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Common practice: no jug holds more than twice what may be dosed in a day.</source>
        <translation>Übliche Praxis: Kein Kanister fasst mehr als das Doppelte dessen, was am Tag dosiert werden darf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Missed doses are never made up: go on with the next one, as large as ever.</source>
        <translation>Ausgefallene Dosen werden nie nachgeholt: Machen Sie mit der nächsten weiter, so groß wie immer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>likely</source>
        <extracomment>likely</extracomment>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>possible</source>
        <extracomment>likely</extracomment>
        <translation>möglich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>unlikely</source>
        <extracomment>likely</extracomment>
        <translation>unwahrscheinlich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is in it yet</source>
        <translation>noch nichts darin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>level not known</source>
        <translation>Füllstand nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{named}, batch {batch_id}</source>
        <extracomment>contents_words</extracomment>
        <translation>{named}, Ansatz {batch_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose} of {holds}</source>
        <extracomment>row</extracomment>
        <translation>{dose} von {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refill before {out}</source>
        <extracomment>row</extracomment>
        <translation>nachfüllen vor {out}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read it once</source>
        <extracomment>level_now</extracomment>
        <translation>einmal ablesen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>as {read} {at}</source>
        <extracomment>level_now</extracomment>
        <translation>wie {read} {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read</source>
        <extracomment>level_now</extracomment>
        <translation>abgelesen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>filled</source>
        <extracomment>level_now</extracomment>
        <translation>gefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>abgelesen {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since it was read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>berechnet seit Ablesung {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since its batch of {since}</source>
        <extracomment>level_now</extracomment>
        <translation>berechnet seit dem Ansatz vom {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>; far less is logged, so read it</source>
        <extracomment>level_now</extracomment>
        <translation>; viel weniger ist protokolliert, also ablesen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoning</source>
        <extracomment>_lasts</extracomment>
        <translation>wird berechnet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is taken</source>
        <extracomment>_lasts</extracomment>
        <translation>nichts entnommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>more than ten years</source>
        <extracomment>_lasts, _long_time</extracomment>
        <translation>mehr als zehn Jahre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>empty</source>
        <extracomment>_lasts</extracomment>
        <translation>leer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>may be empty</source>
        <extracomment>_lasts</extracomment>
        <translation>vielleicht leer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>1&#xa0;day</source>
        <extracomment>_whole</extracomment>
        <translation>1&#xa0;Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{days}&#xa0;days</source>
        <extracomment>_whole</extracomment>
        <translation>{days}&#xa0;Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Empty</source>
        <extracomment>_figure, PreviewModel.data</extracomment>
        <translation>Leer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Empty?</source>
        <extracomment>_figure</extracomment>
        <translation>Leer?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>hours left</source>
        <extracomment>_figure</extracomment>
        <translation>Stunden übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>day left</source>
        <extracomment>_figure</extracomment>
        <translation>Tag übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>days left</source>
        <extracomment>_figure</extracomment>
        <translation>Tage übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nobody knows what is in this jug. Read its level.</source>
        <extracomment>_second</extracomment>
        <translation>Niemand weiß, was in diesem Kanister ist. Lesen Sie den Füllstand ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose}{holds} in the jug.</source>
        <extracomment>_second</extracomment>
        <translation>{dose}{holds} im Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> of {holds}</source>
        <extracomment>_second</extracomment>
        <translation> von {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> Refill it before {out}.</source>
        <extracomment>_second</extracomment>
        <translation> Füllen Sie ihn vor {out} nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{each} {per_day} a day</source>
        <extracomment>_third</extracomment>
        <translation>{each} {per_day} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Taken by {takers}.</source>
        <extracomment>_third</extracomment>
        <translation>Entnahme: {takers}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nothing is known to be taken from it.</source>
        <extracomment>_third</extracomment>
        <translation>Keine Entnahme daraus ist bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>By what was dosed the jug is empty by now. Read its level. If it is, refill it and prime the line; go on with the next dose and never make up what was missed.</source>
        <extracomment>_notes</extracomment>
        <translation>Nach dem, was dosiert wurde, ist der Kanister inzwischen leer. Lesen Sie den Füllstand ab. Wenn er leer ist, füllen Sie ihn nach und die Leitung vor; machen Sie mit der nächsten Dosis weiter, und holen Sie nie nach, was ausgefallen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>The line was not primed after the refill of {at}. Run the pump until liquid stands at the outlet, then say so here. What did not arrive is not made up.</source>
        <extracomment>_notes</extracomment>
        <translation>Die Leitung wurde nach dem Nachfüllen vom {at} nicht vorgefüllt. Lassen Sie die Pumpe laufen, bis Flüssigkeit am Auslass steht, dann geben Sie es hier an. Was nicht ankam, wird nicht nachgeholt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is past the date it was to be used by. Mix a new one.</source>
        <extracomment>_notes, StocksSheet.recompute</extracomment>
        <translation>Dieser Ansatz ist über sein Verwendungsdatum hinaus. Setzen Sie einen neuen an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> from {before}</source>
        <extracomment>_level_row</extracomment>
        <translation> von {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refilled{before} to {said}, line {primed}</source>
        <extracomment>_level_row</extracomment>
        <translation>nachgefüllt{before} auf {said}, Leitung {primed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>primed</source>
        <extracomment>_level_row</extracomment>
        <translation>vorgefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>not primed</source>
        <extracomment>_level_row</extracomment>
        <translation>nicht vorgefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>today {clock}</source>
        <extracomment>_moment, weekday_time</extracomment>
        <translation>heute {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>Fill in the net volume: without it doses cannot be counted.</source>
        <extracomment>learn</extracomment>
        <translation>Geben Sie das Nettovolumen ein: Ohne es lassen sich Dosen nicht mitzählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>New water is taken to be like natural seawater.</source>
        <extracomment>learn</extracomment>
        <translation>Frisches Salzwasser wird wie natürliches Meerwasser angenommen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>From the log: {use_value} ({ends}), last reading {since_days} ago.</source>
        <extracomment>_offer</extracomment>
        <translation>Aus dem Protokoll: {use_value} ({ends}), letzter Messwert {since_days} her.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source> to </source>
        <extracomment>_offer</extracomment>
        <translation> bis </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A reading</source>
        <translation>Ein Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A dose given</source>
        <translation>Eine gegebene Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A water exchange</source>
        <translation>Ein Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose the jug. It must hold a batch that can be reckoned.</source>
        <extracomment>take</extracomment>
        <translation>Wählen Sie den Kanister. Er muss einen Ansatz enthalten, der sich berechnen lässt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose what was measured.</source>
        <extracomment>_reading</extracomment>
        <translation>Wählen Sie, was gemessen wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>{value} is not a likely reading of {parameter}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_reading</extracomment>
        <translation>{value} ist kein wahrscheinlicher Messwert für {parameter}. Wahrscheinlich sind {low} bis {high}. Testen Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Write the note.</source>
        <extracomment>_note</extracomment>
        <translation>Schreiben Sie die Notiz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note has {longest_note} characters at most.</source>
        <extracomment>_note</extracomment>
        <translation>Eine Notiz hat höchstens {longest_note} Zeichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill this in.</source>
        <extracomment>_number</extracomment>
        <translation>Füllen Sie dies aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Dose: {subject}</source>
        <extracomment>row</extracomment>
        <translation>Dosis: {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>a jug that is gone</source>
        <extracomment>row</extracomment>
        <translation>ein Kanister, den es nicht mehr gibt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../glossary.toml"/>
        <source>Water exchange</source>
        <extracomment>row, water exchange</extracomment>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_id.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {parameter}</source>
        <extracomment>_own_name, names_of, _upkeep</extracomment>
        <translation>Pumpe für {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose more doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Wählen Sie mehr Dosen am Tag. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose 24 doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Wählen Sie 24 Dosen am Tag. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{days} days</source>
        <extracomment>_long_time, _age</extracomment>
        <translation>{days} Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{typed} is not a likely reading of {parameter}</source>
        <extracomment>_implausible</extracomment>
        <translation>{typed} ist kein wahrscheinlicher Messwert für {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}: did you mean {meant} = {value}?</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}: Meinten Sie {meant} = {value}?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}. Wahrscheinlich sind {low} bis {high}. Testen Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The reading is dated {measured_at}, which is still to come. Correct the time.</source>
        <translation>Der Messwert trägt die Zeit {measured_at}, die noch in der Zukunft liegt. Korrigieren Sie die Zeit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Reading is {age_days} days old; after {stale_days} days it is too old to correct from. Test again before raising {parameter}.</source>
        <translation>Der Messwert ist {age_days} Tage alt; nach {stale_days} Tagen ist er zu alt, um danach zu korrigieren. Testen Sie neu, bevor Sie {parameter} anheben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No plan may aim for {target}. Choose a target from {low} to {high}.</source>
        <translation>Kein Plan darf {target} anstreben. Wählen Sie einen Zielwert von {low} bis {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already above {target}. Nothing that is dosed lowers it: stop dosing and wait while the animals use it, or exchange water.</source>
        <translation>{parameter} liegt schon über {target}. Nichts, was dosiert wird, senkt den Wert: Hören Sie auf zu dosieren, und warten Sie, während die Tiere verbrauchen, oder wechseln Sie Wasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already at {target}. Nothing to raise; dose only what is used.</source>
        <translation>{parameter} liegt schon bei {target}. Nichts anzuheben; dosieren Sie nur, was verbraucht wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The fastest rise must be more than zero.</source>
        <translation>Der schnellste Anstieg muss größer als null sein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is faster than animals stand. The most that can be planned is {hard}; recommended is {recommended}.</source>
        <translation>{fastest} ist schneller, als Tiere vertragen. Höchstens planbar ist {hard}; empfohlen ist {recommended}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is above the recommended {recommended}. Write the reason, or slow it down.</source>
        <translation>{fastest} liegt über den empfohlenen {recommended}. Schreiben Sie den Grund, oder machen Sie es langsamer.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>With {n} doses a day, each</source>
        <extracomment>for 1: With one dose a day, it</extracomment>
        <translation>
            <numerusform>Bei einer Dosis am Tag müsste diese</numerusform>
            <numerusform>Bei {n} Dosen am Tag müsste jede</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source> would have to raise by more than {jump} only to keep up. Choose more doses a day.</source>
        <translation> den Wert um mehr als {jump} anheben, nur um Schritt zu halten. Wählen Sie mehr Dosen am Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The pump can give {most} in 24 hours; the tank alone uses up {needs}. Use a stronger stock or a faster pump.</source>
        <translation>Die Pumpe kann in 24 Stunden {most} geben; allein das Becken verbraucht {needs}. Verwenden Sie eine stärkere Stammlösung oder eine schnellere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>This additive would raise {other} as well, far beyond its limit. Choose another additive.</source>
        <translation>Dieser Zusatz würde auch {other} anheben, weit über die Grenze hinaus. Wählen Sie einen anderen Zusatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>To make good the daily use alone, single doses would lift pH by more than {most} in an hour. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Allein um den Tagesverbrauch auszugleichen, würden einzelne Dosen den pH in einer Stunde um mehr als {most} anheben. {per_day}Natriumhydrogencarbonat hebt ihn nicht sofort an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>pH is {now} now and would come to {ph} at the target; this additive must not take it above {most}. </source>
        <translation>Der pH ist jetzt {now} und käme am Zielwert auf {ph}; dieser Zusatz darf ihn nicht über {most} bringen. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{per_day}Use sodium bicarbonate.</source>
        <translation>{per_day}Verwenden Sie Natriumhydrogencarbonat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Use sodium bicarbonate, choose a nearer target, or dose at night and test pH then.</source>
        <translation>Verwenden Sie Natriumhydrogencarbonat, wählen Sie einen näheren Zielwert, oder dosieren Sie nachts, und testen Sie dann den pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} at the target. Above {most} calcium carbonate falls out. </source>
        <translation>Die Aragonitsättigung ist jetzt {now} und käme am Zielwert auf {saturation}. Über {most} fällt Calciumcarbonat aus. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Choose a nearer target.</source>
        <translation>Wählen Sie einen näheren Zielwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The tank uses up {needs} of this in 24 hours, but only {most} evaporate. Limewater alone cannot keep up: use a stronger additive besides.</source>
        <translation>Das Becken verbraucht davon {needs} in 24 Stunden, aber nur {most} verdunsten. Kalkwasser allein kommt nicht nach: Verwenden Sie zusätzlich einen stärkeren Zusatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not known how much evaporates. Top-off must leave room for {in_day} in 24 hours, or the tank overflows and its salinity falls.</source>
        <translation>Es ist nicht bekannt, wie viel verdunstet. Das Nachfüllwasser muss Platz für {in_day} in 24 Stunden lassen, sonst läuft das Becken über, und seine Salinität sinkt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>At this pace the correction takes {days}. Plans end after {most} days: choose a faster rise, a stronger stock or a nearer target.</source>
        <translation>Bei diesem Tempo dauert die Korrektur {days}. Pläne enden nach {most} Tagen: Wählen Sie einen schnelleren Anstieg, eine stärkere Stammlösung oder einen näheren Zielwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>A dose of {single} rounded down to steps of {step} does not raise the value. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Eine Dosis von {single}, abgerundet auf Schritte von {step}, hebt den Wert nicht an. Wählen Sie weniger Dosen am Tag, einen feineren Schritt oder eine schwächere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The second reckoning does not agree with the plan, so no plan is given. Please keep this question and report it.</source>
        <translation>Die zweite Rechnung stimmt nicht mit dem Plan überein, deshalb wird kein Plan gegeben. Bitte bewahren Sie diese Frage auf, und melden Sie sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Faster than the recommended {recommended}. Reason given: {reason}.</source>
        <translation>Schneller als die empfohlenen {recommended}. Angegebener Grund: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not said when this was measured. Test again if it is older than {stale_days} days.</source>
        <translation>Es ist nicht angegeben, wann dies gemessen wurde. Testen Sie neu, wenn es älter als {stale_days} Tage ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The volume is not known, so its low end is used: {volume}.</source>
        <translation>Das Volumen ist nicht bekannt, deshalb wird sein unteres Ende verwendet: {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>For mg per kg a salinity of {salinity} and {degc} are assumed where not given.</source>
        <translation>Für mg pro kg werden eine Salinität von {salinity} und {degc} angenommen, wo sie nicht angegeben sind.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The target is above the range usually kept, which ends at {top}.</source>
        <translation>Der Zielwert liegt über dem üblich gehaltenen Bereich, der bei {top} endet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>One jug of {jug} is not enough: the correction takes {total}. Mix the next batch at the same strength.</source>
        <translation>Ein Kanister mit {jug} ist nicht genug: Die Korrektur braucht {total}. Setzen Sie den nächsten Ansatz in gleicher Stärke an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Also raises {other} by {per_day}.</source>
        <translation>Hebt auch {other} um {per_day} an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Rounding the dose down to steps of {step} makes the correction {slower} times as long. Use fewer doses a day or a finer step.</source>
        <translation>Das Abrunden der Dosis auf Schritte von {step} macht die Korrektur {slower}-mal so lang. Verwenden Sie weniger Dosen am Tag oder einen feineren Schritt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No pump gives {dose} at a time. Make a weaker stock, or choose fewer doses a day.</source>
        <translation>Keine Pumpe gibt {dose} auf einmal. Setzen Sie eine schwächere Stammlösung an, oder wählen Sie weniger Dosen am Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The upkeep of {per_day} in 24 hours is too small for this pump in so many doses, so none is given. </source>
        <translation>Die Versorgung von {per_day} in 24 Stunden ist für diese Pumpe in so vielen Dosen zu klein, deshalb wird keine gegeben. </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Give it afterwards in {n} doses a day or fewer.</source>
        <extracomment>for 1: Make a weaker stock for it.</extracomment>
        <translation>
            <numerusform>Setzen Sie dafür eine schwächere Stammlösung an.</numerusform>
            <numerusform>Geben Sie sie danach in {n} Dosen am Tag oder weniger.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No use per day is entered, so after the correction nothing is dosed. {parameter} falls by whatever the animals use.</source>
        <translation>Es ist kein Verbrauch pro Tag eingegeben, deshalb wird nach der Korrektur nichts dosiert. {parameter} sinkt um das, was die Tiere verbrauchen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {value}, more than the {most} no plan may aim for. Use a smaller jug, or fill it less.</source>
        <translation>Wenn der ganze Kanister einliefe, würde {parameter} {value} erreichen, mehr als die {most}, die ein Plan höchstens anstreben darf. Verwenden Sie einen kleineren Kanister, oder füllen Sie ihn weniger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Each dose would be {single}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Jede Dosis wäre {single}, unter der kleinsten genauen Dosis der Pumpe von {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose {most_doses} doses a day or fewer, or a weaker stock.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>{head} Wählen Sie {most_doses} Dosen am Tag oder weniger oder eine schwächere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Use a weaker stock or a finer pump.</source>
        <extracomment>_below_smallest, _smallest</extracomment>
        <translation>{head} Verwenden Sie eine schwächere Stammlösung oder eine feinere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_cards.py"/>
        <source>It was made for {before}.</source>
        <extracomment>other_flow</extracomment>
        <translation>Sie wurde für {before} gemacht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {hours} {flow}</source>
        <extracomment>_spoken</extracomment>
        <translation>bei {hours} {flow}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>{n} calibrations</source>
        <extracomment>for 1: 1 calibration; _spoken</extracomment>
        <translation>
            <numerusform>1 Kalibrierung</numerusform>
            <numerusform>{n} Kalibrierungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Expected today</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Heute erwartet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{limit} off</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Abweichung {limit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>, does not count</source>
        <extracomment>point_words</extracomment>
        <translation>, zählt nicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {at}: {flow}, from {low} to {high}{does_not}</source>
        <extracomment>point_words</extracomment>
        <translation>bei {at}: {flow}, von {low} bis {high}{does_not}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>already</source>
        <extracomment>until</extracomment>
        <translation>schon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>in {hours}</source>
        <extracomment>until</extracomment>
        <translation>in {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>about {hours}, at {per_day} a day</source>
        <extracomment>hours_hint</extracomment>
        <translation>etwa {hours}, bei {per_day} am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it gives about {expected}, {off} {more_or_less} than it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>Nach ihren Stunden fördert sie etwa {expected}, {off} {more_or_less} als eingestellt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Do not dose on with the flow it is set to: calibrate it</source>
        <extracomment>_expected</extracomment>
        <translation>Mit der eingestellten Förderleistung nicht weiter dosieren: kalibrieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Calibrate it</source>
        <extracomment>_expected, _old</extracomment>
        <translation>Kalibrieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours it is no longer near the flow it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>Nach ihren Laufstunden ist sie nicht mehr nahe an der eingestellten Förderleistung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it will be {limit} off on {at}.</source>
        <extracomment>_expected</extracomment>
        <translation>Nach ihren Stunden weicht sie am {at} um {limit} ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours its flow will be off.</source>
        <extracomment>_expected</extracomment>
        <translation>Nach ihren Laufstunden wird ihre Förderleistung abweichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its calibration of {on} is {span} old.</source>
        <extracomment>_old</extracomment>
        <translation>Ihre Kalibrierung vom {on} ist {span} alt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its last calibration was on {on}.</source>
        <extracomment>_old</extracomment>
        <translation>Ihre letzte Kalibrierung war am {on}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>about </source>
        <extracomment>_worn, _drift, _head</extracomment>
        <translation>etwa </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>It has run {amount}{hours} of the {life} that one lasts.</source>
        <extracomment>_worn</extracomment>
        <translation>Er ist {amount}{hours} gelaufen, einer hält {life}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>The head is near the end of its running hours.</source>
        <extracomment>_worn</extracomment>
        <translation>Der Pumpenkopf ist nahe am Ende seiner Laufstunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Change the head, then calibrate it</source>
        <extracomment>_worn</extracomment>
        <translation>Pumpenkopf wechseln, dann kalibrieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Have a new head ready</source>
        <extracomment>_worn</extracomment>
        <translation>Neuen Pumpenkopf bereithalten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source> in {place}</source>
        <extracomment>sharing</extracomment>
        <translation> in {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source>{pump} is chosen for {where}. One head draws from one jug into one water: choose another pump, or another head, for one of them.</source>
        <extracomment>sharing</extracomment>
        <translation>{pump} ist gewählt für {where}. Ein Pumpenkopf zieht aus einem Kanister in ein Wasser: Wählen Sie für eines davon eine andere Pumpe oder einen anderen Pumpenkopf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>Fill in {pump_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Bitte ausfüllen: {pump_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>at {hours}</source>
        <extracomment>row</extracomment>
        <translation>bei {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>no time yet</source>
        <extracomment>row</extracomment>
        <translation>noch keine Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>not complete</source>
        <extracomment>row, batch_row</extracomment>
        <translation>nicht vollständig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>good</source>
        <extracomment>row</extracomment>
        <translation>gut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>repeat</source>
        <extracomment>row</extracomment>
        <translation>wiederholen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>flow used</source>
        <extracomment>row</extracomment>
        <translation>benutzte Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scatter of the runs</source>
        <translation>Streuung der Läufe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>tolerance of the instrument</source>
        <translation>Toleranz des Messgeräts</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>timing</source>
        <translation>Zeitmessung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>temperature and air</source>
        <translation>Temperatur und Luft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>good enough to dose by</source>
        <extracomment>answer</extracomment>
        <translation>gut genug zum Dosieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>repeat the calibration</source>
        <extracomment>answer</extracomment>
        <translation>Kalibrierung wiederholen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Within {half}: from {mean} to {mean_2}. {result}.</source>
        <extracomment>answer</extracomment>
        <translation>Auf {half} genau: von {mean} bis {mean_2}. {result}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{doses} doses of {seconds}</source>
        <extracomment>_runs</extracomment>
        <translation>{doses} Dosen zu {seconds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} of {of}</source>
        <extracomment>_runs</extracomment>
        <translation>{count} zu {of}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Scatter of the runs</source>
        <extracomment>_bars</extracomment>
        <translation>Streuung der Läufe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Off the flow in use</source>
        <extracomment>_bars</extracomment>
        <translation>Abweichung der Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{hours} of {life}</source>
        <extracomment>_bars</extracomment>
        <translation>{hours} von {life}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Head</source>
        <extracomment>_bars</extracomment>
        <translation>Pumpenkopf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{value} of {most}</source>
        <extracomment>_bar</extracomment>
        <translation>{value} von {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>, not counted</source>
        <extracomment>_working</extracomment>
        <translation>, nicht gezählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Run {number}</source>
        <extracomment>_working</extracomment>
        <translation>Lauf {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{read}{by} in {total_seconds}{counted}</source>
        <extracomment>_working</extracomment>
        <translation>{read}{by} in {total_seconds}{counted}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>How well it is known</source>
        <extracomment>_working</extracomment>
        <translation>Wie genau es bekannt ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>share of {sources}</source>
        <extracomment>_working</extracomment>
        <translation>Anteil: {sources}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>To know it to {wanted}</source>
        <extracomment>_run</extracomment>
        <translation>Um es auf {wanted} genau zu kennen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>each run, with this {found}, three times</source>
        <extracomment>_run</extracomment>
        <translation>jeder Lauf mit diesem Messgerät ({found}), dreimal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>with this {found}</source>
        <extracomment>_run</extracomment>
        <translation>mit diesem Messgerät ({found})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>take a finer one</source>
        <extracomment>_run</extracomment>
        <translation>ein feineres nehmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source> in {dose}</source>
        <extracomment>_doses</extracomment>
        <translation> in {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>A dose in use</source>
        <extracomment>_doses</extracomment>
        <translation>Eine benutzte Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>At the smallest dose</source>
        <extracomment>_doses</extracomment>
        <translation>Bei der kleinsten Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>let the pump give so many into one reading</source>
        <extracomment>_doses</extracomment>
        <translation>lassen Sie die Pumpe so viele in eine Messung geben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} doses</source>
        <extracomment>_doses</extracomment>
        <translation>{count} Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>after a refill run it so long, and see the liquid at its end</source>
        <extracomment>_line</extracomment>
        <translation>nach dem Nachfüllen so lange laufen lassen und die Flüssigkeit am Ende sehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift</source>
        <extracomment>_drift</extracomment>
        <translation>Drift</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at {amount}{hours}</source>
        <extracomment>_drift</extracomment>
        <translation>bei {amount}{hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift in {per_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>Drift in {per_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>give or take {drift_half_width}</source>
        <extracomment>_drift</extracomment>
        <translation>± {drift_half_width}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at the earliest {earliest_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>frühestens {earliest_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{amount}{hours} of {life} run</source>
        <extracomment>_head</extracomment>
        <translation>{amount}{hours} von {life} gelaufen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>used up</source>
        <extracomment>_head, _change, _settles</extracomment>
        <translation>verbraucht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{left} left</source>
        <extracomment>_head</extracomment>
        <translation>noch {left}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The head</source>
        <extracomment>_head</extracomment>
        <translation>Der Pumpenkopf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The outlet ends {height} above the highest water line.</source>
        <extracomment>installation</extracomment>
        <translation>Der Auslass endet {height} über der höchsten Wasserlinie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>A brushed motor slows with age as well: calibrate more often.</source>
        <extracomment>motor</extracomment>
        <translation>Ein Bürstenmotor wird auch mit dem Alter langsamer: Kalibrieren Sie öfter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into a jar on the scale</source>
        <extracomment>guide</extracomment>
        <translation>in ein Gefäß auf der Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into the cylinder</source>
        <extracomment>guide</extracomment>
        <translation>in den Zylinder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Weigh each</source>
        <extracomment>guide</extracomment>
        <translation>Wiegen Sie jedes Mal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Read each at eye height</source>
        <extracomment>guide</extracomment>
        <translation>Lesen Sie jedes Mal auf Augenhöhe ab</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run {lasts}</source>
        <extracomment>guide</extracomment>
        <translation>Fördern Sie {lasts} lang</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run the same time</source>
        <extracomment>guide</extracomment>
        <translation>Fördern Sie gleich lang</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Prime the line. {run} {into}, three times. {read}.</source>
        <extracomment>guide</extracomment>
        <translation>Füllen Sie die Leitung vor. {run} {into}, dreimal. {read}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>In {lasts} about {dose} come out, enough to know the flow to {wanted}.</source>
        <extracomment>proposal</extracomment>
        <translation>In {lasts} kommen etwa {dose} heraus, genug, um die Förderleistung auf {wanted} genau zu kennen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Residual-current protection (RCD of 30&#xa0;mA, or GFCI) on every circuit near the tank.</source>
        <translation>Fehlerstromschutz (RCD mit 30&#xa0;mA oder GFCI) an jedem Stromkreis in Beckennähe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A drip loop in every cable, nothing electrical where it can be splashed.</source>
        <translation>Eine Tropfschlaufe in jedem Kabel, nichts Elektrisches im Spritzbereich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Unplug before reaching in.</source>
        <translation>Stecker ziehen, bevor Sie hineingreifen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Stepper motor</source>
        <translation>Schrittmotor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Brushed motor</source>
        <translation>Bürstenmotor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A cylinder</source>
        <translation>Ein Zylinder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A scale</source>
        <translation>Eine Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A stop watch, by hand</source>
        <translation>Eine Stoppuhr, von Hand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>The pump's own clock</source>
        <translation>Die Uhr der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the motor</source>
        <translation>der Motor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the date the head was fitted</source>
        <translation>das Einbaudatum des Pumpenkopfs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours of the head</source>
        <translation>die Laufstunden des Pumpenkopfs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the hours that a head lasts</source>
        <translation>die Stunden, die ein Pumpenkopf hält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how high the outlet ends</source>
        <translation>wie hoch der Auslass endet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the tubing is</source>
        <translation>was für ein Schlauch es ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>when the pump was calibrated</source>
        <translation>wann die Pumpe kalibriert wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours</source>
        <translation>die Laufstunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were measured with</source>
        <translation>womit die Läufe gemessen wurden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the doses in a run</source>
        <translation>die Dosen in einem Lauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were timed with</source>
        <translation>womit die Zeit der Läufe gemessen wurde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>who calibrated the pump</source>
        <translation>wer die Pumpe kalibriert hat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the flow that is used</source>
        <translation>die benutzte Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how long run {run} lasted</source>
        <translation>wie lange Lauf {run} dauerte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what run {run} gave</source>
        <translation>was Lauf {run} ergab</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>if nothing is dosed</source>
        <extracomment>chart</extracomment>
        <translation>wenn nichts dosiert wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>fastest allowed</source>
        <extracomment>chart</extracomment>
        <translation>höchstens erlaubt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <source>pH {ph}{assumed}</source>
        <extracomment>_water</extracomment>
        <translation>pH {ph}{assumed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>aragonite {saturation}</source>
        <extracomment>_water, _water_at</extracomment>
        <translation>Aragonit {saturation}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Put {grams} of {tall_man} into {litres} of water, stir, and let it settle until it is clear.</source>
        <extracomment>_recipe</extracomment>
        <translation>Geben Sie {grams} {tall_man} in {litres} Wasser, rühren Sie, und lassen Sie es absetzen, bis es klar ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve them in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Wiegen Sie {weighed} ab. Lösen Sie alles in einem Teil des Wassers, dann füllen Sie auf {litres} auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve it in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Wiegen Sie {weighed} ab. Lösen Sie es in einem Teil des Wassers, dann füllen Sie auf {litres} auf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>At {at} a litre of solution holds {most} at most.</source>
        <extracomment>_recipe</extracomment>
        <translation>Bei {at} enthält ein Liter Lösung höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source> of {purity}</source>
        <extracomment>_portion</extracomment>
        <translation> ({purity} rein)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>{grams} of {tall_man}{purity}</source>
        <extracomment>_portion</extracomment>
        <translation>{grams} {tall_man}{purity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Carries {per_litre}: {item}.</source>
        <extracomment>_strength</extracomment>
        <translation>Enthält {per_litre}: {item}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>{dose} raises {water} by {amount}: {parameter}.</source>
        <extracomment>_strength</extracomment>
        <translation>{dose} hebt {water} um {amount} an: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>First, in this order:</source>
        <extracomment>_lines</extracomment>
        <translation>Zuerst, in dieser Reihenfolge:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>reckoned from what ran in</source>
        <extracomment>_lines, _view</extracomment>
        <translation>berechnet aus dem, was einlief</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{name}: {now} ({how}), to come to {target}.</source>
        <extracomment>_lines</extracomment>
        <translation>{name}: {now} ({how}), soll auf {target} kommen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Held: {held}.</source>
        <extracomment>_lines</extracomment>
        <translation>Ausgesetzt: {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a new test</source>
        <extracomment>_choice</extracomment>
        <translation>nach einem neuen Test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {course}.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Es dauert {course}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {litres} in {course}. {exchanged}</source>
        <extracomment>choice_lines</extracomment>
        <translation>Es braucht {litres}, Dauer {course}. {exchanged}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Still above the target then: go on with no more than {slow} an hour, and test every day.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Dann noch über dem Zielwert: Machen Sie mit nicht mehr als {slow} pro Stunde weiter, und testen Sie jeden Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a day, then every {stale_days}</source>
        <extracomment>tests_line</extracomment>
        <translation>nach einem Tag, dann alle {stale_days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>every day before more water is exchanged</source>
        <extracomment>tests_line</extracomment>
        <translation>jeden Tag, bevor mehr Wasser gewechselt wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Test now, {often}, and after {days}. Stop as soon as a test shows the target.</source>
        <extracomment>tests_line</extracomment>
        <translation>Testen Sie jetzt, {often} und am Ende (Dauer {days}). Stoppen Sie, sobald ein Test den Zielwert zeigt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{middle}, perhaps {low} to {high}</source>
        <extracomment>now_words</extracomment>
        <translation>{middle}, vielleicht {low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{days}, perhaps {low} to {high}</source>
        <extracomment>takes</extracomment>
        <translation>{days}, vielleicht {low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>No more than {most_l_per_day} is exchanged in a day.</source>
        <extracomment>_pace</extracomment>
        <translation>Nicht mehr als {most_l_per_day} werden am Tag gewechselt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>The pace at first is set by {name}, which may change by {hard} at most.</source>
        <extracomment>_pace</extracomment>
        <translation>Das Tempo zu Beginn bestimmt {name}, höchste erlaubte Änderung {hard}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Day {number}: {stage}, to {reached}.</source>
        <extracomment>_stages</extracomment>
        <translation>Tag {number}: {stage}, auf {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>After day {days_shown} test and ask again. At this pace the last day is day {stages}.</source>
        <extracomment>_stages</extracomment>
        <translation>Nach Tag {days_shown} testen Sie, und fragen Sie neu. Bei diesem Tempo ist der letzte Tag Tag {stages}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source> for {days}</source>
        <extracomment>_stage</extracomment>
        <translation> über {days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{l_per_day} of water{how_long}, that is {per_hour} an hour</source>
        <extracomment>_stage</extracomment>
        <translation>{l_per_day} Wasser{how_long}, das sind {per_hour} pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or one change of {sizes} at once.</source>
        <extracomment>_changes</extracomment>
        <translation>Oder ein Wechsel von {sizes} auf einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or {count} single changes, 12&#xa0;h apart, {litres} in all: {sizes}.</source>
        <extracomment>_changes</extracomment>
        <translation>Oder {count} einzelne Wechsel, 12&#xa0;h auseinander, insgesamt {litres}: {sizes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{head} Then test and ask again.</source>
        <extracomment>_changes</extracomment>
        <translation>{head} Dann testen Sie, und fragen Sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Meanwhile {other} goes from {first} to {last}.</source>
        <extracomment>_along</extracomment>
        <translation>Dabei geht {other} von {first} auf {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>The last test of {odd} is not likely for a tank, so it is not followed. Test it again.</source>
        <extracomment>_view</extracomment>
        <translation>Der letzte Test ist für ein Becken unwahrscheinlich und wird deshalb nicht verfolgt: {odd}. Testen Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{name} {now} ({how}), to come to {target}.</source>
        <extracomment>_view</extracomment>
        <translation>{name} {now} ({how}), soll auf {target} kommen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{held} Held: {held_2}.</source>
        <extracomment>_view</extracomment>
        <translation>{held} Ausgesetzt: {held_2}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{canonical} per day</source>
        <extracomment>per_day</extracomment>
        <translation>{canonical} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Still to be filled in: {path}.</source>
        <extracomment>missing</extracomment>
        <translation>Noch auszufüllen: {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Alkalinity is so high that calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>Die Alkalinität ist so hoch, dass Calciumcarbonat wahrscheinlich ausfällt und Calcium mitnimmt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Saturation with aragonite is about {saturation}; above {most} calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>Die Aragonitsättigung ist etwa {saturation}; über {most} ist zu erwarten, dass Calciumcarbonat ausfällt und Calcium mitnimmt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <extracomment>_likely</extracomment>
        <translation>Keine Zahl hier gilt mehr: Testen Sie Alkalinität, Calcium und pH vor allem anderen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A target of {value} lies outside what a plan may aim for: {low} to {high}.</source>
        <translation>Ein Zielwert von {value} liegt außerhalb dessen, was ein Plan anstreben darf: {low} bis {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} at {value} is not above its target of {target}. There is nothing to bring down.</source>
        <translation>{parameter} mit {value} liegt nicht über dem Zielwert von {target}. Es gibt nichts zu senken.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A value of {value} is not likely for the {parameter} of {new}. Likely are {low} to {high}. Look at the unit, or test again.</source>
        <translation>Ein Wert von {value} ist unwahrscheinlich für {parameter} ({new}). Wahrscheinlich sind {low} bis {high}. Sehen Sie auf die Einheit, oder testen Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a tank before anything ran in</source>
        <translation>ein Becken, bevor etwas einlief</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {value} of {parameter}, outside the hard limits of {low} to {high}. Use other new water, or put it right first.</source>
        <translation>Das frische Salzwasser hat {value} {parameter}, außerhalb der festen Grenzen von {low} bis {high}. Verwenden Sie anderes frisches Salzwasser, oder bringen Sie es zuerst in Ordnung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The net volume may be anything from {low} to {high}. Every limit here holds at both ends.</source>
        <translation>Das Nettovolumen kann alles von {low} bis {high} sein. Jede Grenze hier gilt an beiden Enden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The pH is not followed along an exchange. Test it with every other test, and slow down if it moves by more than 0.2 in an hour.</source>
        <translation>Der pH wird über einen Wasserwechsel nicht verfolgt. Testen Sie ihn bei jedem anderen Test mit, und machen Sie langsamer, wenn er sich in einer Stunde um mehr als 0,2 ändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>This stock raises nothing that is reckoned here. Stop the pump, test the water, and ask somebody who knows the chemical.</source>
        <translation>Diese Stammlösung hebt nichts an, was hier berechnet wird. Stoppen Sie die Pumpe, testen Sie das Wasser, und fragen Sie jemanden, der die Chemikalie kennt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The second reckoning differs ({what}), so nothing is proposed. Please report this question.</source>
        <translation>Die zweite Rechnung weicht ab ({what}), deshalb wird nichts vorgeschlagen. Bitte melden Sie diese Frage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>How much {parameter} the animals use in a day is not known, so nobody can say how long it takes them to draw it down.</source>
        <translation>Wie viel {parameter} die Tiere am Tag verbrauchen, ist nicht bekannt, deshalb kann niemand sagen, wie lange sie zum Senken brauchen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>With its doses held, {parameter} would fall by {use}, more than the {most} it may change.</source>
        <translation>Mit ausgesetzten Dosen würde {parameter} um {use} sinken, mehr als die erlaubte Änderung von {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the {parameter} of the new water first.</source>
        <translation>Testen Sie zuerst das frische Salzwasser auf {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, which is not below the target of {target}. Exchanging cannot bring it there.</source>
        <translation>Das frische Salzwasser hat {new}, das liegt nicht unter dem Zielwert von {target}. Ein Wasserwechsel kann den Wert nicht dorthin bringen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would fall to {value}, below its hard limit of {bound}.</source>
        <translation>{parameter} würde auf {value} sinken, unter die feste Grenze von {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would rise to {value}, above its hard limit of {bound}.</source>
        <translation>{parameter} würde auf {value} steigen, über die feste Grenze von {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>It would take {parameter} more than {days}&#xa0;days to come down.</source>
        <translation>Es würde mehr als {days}&#xa0;Tage dauern, bis {parameter} gesunken ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Seen: {and_}. Calcium carbonate is falling out. No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <translation>Gesehen: {and_}. Calciumcarbonat fällt aus. Keine Zahl hier gilt mehr: Testen Sie Alkalinität, Calcium und pH vor allem anderen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>cloudy water</source>
        <translation>trübes Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a white film</source>
        <translation>ein weißer Belag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Nothing can be proposed that brings {parameter} down. Keep its doses held, test every day, and ask for advice.</source>
        <translation>Es kann nichts vorgeschlagen werden, was {parameter} senkt. Lassen Sie die Dosen ausgesetzt, testen Sie jeden Tag, und bitten Sie um Rat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} was found at {value}, less than the {expected} expected from what ran in. Less ran in, or some of it has fallen out already.</source>
        <translation>{parameter} wurde mit {value} gemessen, weniger als die {expected}, die nach dem Eingelaufenen zu erwarten waren. Es lief weniger ein, oder etwas davon ist schon ausgefallen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} is too high as well: {value}, more than the {most} no plan may aim for.</source>
        <translation>{parameter} ist auch zu hoch: {value}, mehr als die {most}, die ein Plan höchstens anstreben darf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The last test of {names} is not given; the top of the range usually kept is assumed. Test it.</source>
        <translation>Der letzte Test ist nicht angegeben: {names}; das obere Ende des üblich gehaltenen Bereichs wird angenommen. Testen Sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The doses of {names} are held too, but its use is not known: it falls by an unknown amount. Test it as often.</source>
        <translation>Auch diese Dosen sind ausgesetzt: {names}, aber der Verbrauch ist nicht bekannt: Der Wert sinkt um eine unbekannte Menge. Testen Sie ebenso oft.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Of {names} the value in the tank or in the new water is not known, so its change is neither reckoned nor limited.</source>
        <translation>Für {names} ist der Wert im Becken oder im frischen Salzwasser nicht bekannt, deshalb ist die Änderung weder berechnet noch begrenzt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Bring the new water to the tank's temperature before it goes in.</source>
        <translation>Bringen Sie das frische Salzwasser auf die Temperatur des Beckens, bevor es hineinkommt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, the tank {tank}. Bring it to the tank's temperature first.</source>
        <translation>Das frische Salzwasser hat {new}, das Becken {tank}. Bringen Sie es zuerst auf die Temperatur des Beckens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Switch the dosing pump off, and pull its plug with dry hands.</source>
        <translation>Schalten Sie die Dosierpumpe aus, und ziehen Sie ihren Stecker mit trockenen Händen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Take the line out of the jug and lift its outlet out of the water. Nothing may run on.</source>
        <translation>Nehmen Sie die Leitung aus dem Kanister, und heben Sie ihren Auslass aus dem Wasser. Nichts darf nachlaufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it. A second chemical adds a second shock.</source>
        <translation>Dosieren Sie nichts dagegen. Eine zweite Chemikalie fügt einen zweiten Schock hinzu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid, whatever pH shows.</source>
        <translation>Geben Sie keine Säure zu, was auch immer der pH zeigt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test alkalinity, calcium, magnesium, pH and salinity now, in water taken far from the outlet. Note the time.</source>
        <translation>Testen Sie jetzt Alkalinität, Calcium, Magnesium, pH und Salinität, in Wasser, das weit vom Auslass entnommen ist. Notieren Sie die Zeit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call whoever is in charge of the system, and tell what ran in, how much and when.</source>
        <translation>Rufen Sie an, wer für das System zuständig ist, und sagen Sie, was eingelaufen ist, wie viel und wann.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off. Pull its plug.</source>
        <translation>Pumpe aus. Stecker ziehen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out of the jug.</source>
        <translation>Leitung aus dem Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it.</source>
        <translation>Nichts dagegen dosieren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid.</source>
        <translation>Keine Säure zugeben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the water now.</source>
        <translation>Jetzt das Wasser testen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off</source>
        <translation>Pumpe aus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out</source>
        <translation>Leitung raus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No doses</source>
        <translation>Keine Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No acid</source>
        <translation>Keine Säure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test water</source>
        <translation>Wasser testen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call keeper</source>
        <translation>Halter anrufen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>only after a new test</source>
        <translation>erst nach einem neuen Test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>not proposed</source>
        <translation>nicht vorgeschlagen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and wait</source>
        <translation>Dosen aussetzen und warten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Exchange water, not counting on any use</source>
        <translation>Wasser wechseln, ohne mit Verbrauch zu rechnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and exchange water, counting on the use</source>
        <translation>Dosen aussetzen und Wasser wechseln, mit Verbrauch gerechnet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>In every choice the doses of what is too high stay held, and no chemical is given against it.</source>
        <translation>Bei jeder Wahl bleiben die Dosen dessen, was zu hoch ist, ausgesetzt, und keine Chemikalie wird dagegen gegeben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>New water goes in as fast as old water goes out, far from the animals.</source>
        <translation>Frisches Salzwasser kommt so schnell hinein, wie altes Wasser hinausgeht, weit weg von den Tieren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the most that is exchanged in a day</source>
        <translation>was am Tag höchstens gewechselt wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether the water is cloudy</source>
        <translation>ob das Wasser trüb ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether there is a white film</source>
        <translation>ob ein weißer Belag da ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the way that was chosen</source>
        <translation>der gewählte Weg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether {name} is held</source>
        <translation>ob ausgesetzt: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>This is a reminder, not an order to dose. Missed doses are never made up. Look at the Rounds sheet first: it knows what came since.</source>
        <translation>Dies ist eine Erinnerung, keine Anweisung zum Dosieren. Ausgefallene Dosen werden nie nachgeholt. Sehen Sie zuerst auf das Blatt Rundgang: Es weiß, was seitdem kam.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>No reading is in the log yet.</source>
        <extracomment>_tests, _by_reading</extracomment>
        <translation>Im Protokoll steht noch kein Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>The last reading holds until {at}.</source>
        <extracomment>_tests</extracomment>
        <translation>Der letzte Messwert gilt bis {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} asks for it by {retest_at}.</source>
        <extracomment>_tests</extracomment>
        <translation>Plan {plan_id} verlangt ihn bis {retest_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{systems}: test {name}</source>
        <extracomment>_tests</extracomment>
        <translation>{systems}: {name} testen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>As far as is known it is empty on {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Soweit bekannt, ist er am {day} leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Its batch is to be used by {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Sein Ansatz ist bis {day} zu verwenden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{jug}: look at the jug, mix a new batch</source>
        <extracomment>_jugs</extracomment>
        <translation>{jug}: Kanister ansehen, neuen Ansatz ansetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Card {plan_id} must not be followed. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>Karte {plan_id} darf nicht befolgt werden. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: card {plan_id} is void</source>
        <extracomment>_cards</extracomment>
        <translation>{place}: Karte {plan_id} ist ungültig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: replace card {plan_id}</source>
        <extracomment>_cards</extracomment>
        <translation>{place}: Karte {plan_id} ersetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>It is valid until {valid_until}. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>Sie gilt bis {valid_until}. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: end the plan for {parameter}</source>
        <extracomment>_plans</extracomment>
        <translation>{place}: Plan für {parameter} beenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} ends on {at}.</source>
        <extracomment>_plans</extracomment>
        <translation>Plan {plan_id} endet am {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be written: the file or its folder is read-only.</source>
        <translation>In das Protokoll kann nicht geschrieben werden: Die Datei oder ihr Ordner ist schreibgeschützt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is busy in another window or program. It is tried again with the next edit.</source>
        <translation>Das Protokoll wird gerade von einem anderen Fenster oder Programm benutzt. Mit der nächsten Änderung wird es wieder versucht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk does not answer. What you type is kept here and saved when it does.</source>
        <translation>Die Festplatte antwortet nicht. Was Sie eingeben, bleibt hier und wird gespeichert, sobald sie antwortet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk is full. What you type is kept here; make room, then go on.</source>
        <translation>Die Festplatte ist voll. Was Sie eingeben, bleibt hier; schaffen Sie Platz, dann machen Sie weiter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log file is damaged. Nothing was changed in it; </source>
        <translation>Die Protokolldatei ist beschädigt. Nichts wurde darin geändert; </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>its newest backup is {backup}.</source>
        <translation>ihre neueste Sicherung ist {backup}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>no backup was found beside it.</source>
        <translation>daneben wurde keine Sicherung gefunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is no longer at its place, {file}. What you type is kept here; put it back there, then go on.</source>
        <translation>Das Protokoll ist nicht mehr an seinem Ort, {file}. Was Sie eingeben, bleibt hier; legen Sie es dorthin zurück, dann machen Sie weiter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something in the log is damaged and cannot be read. The rest is used; the list of copies may hold it whole.</source>
        <translation>Etwas im Protokoll ist beschädigt und kann nicht gelesen werden. Der Rest wird benutzt; die Liste der Kopien enthält es vielleicht ganz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used. What you type is kept here; try again.</source>
        <translation>Das Protokoll konnte nicht benutzt werden. Was Sie eingeben, bleibt hier; versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater. Nothing was changed in it.</source>
        <translation>Diese Datei ist kein Protokoll von Evenwater. Nichts wurde darin geändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log was made by a newer Evenwater. Update the program to open it.</source>
        <translation>Das Protokoll wurde von einem neueren Evenwater angelegt. Aktualisieren Sie das Programm, um es zu öffnen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be opened at that place.</source>
        <translation>Das Protokoll kann an diesem Ort nicht geöffnet werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be brought up to date. Its backup from before is unchanged.</source>
        <translation>Das Protokoll konnte nicht auf den neuen Stand gebracht werden. Seine Sicherung von vorher ist unverändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log already holds something, so it was not filled.</source>
        <translation>Das Protokoll enthält schon etwas, deshalb wurde es nicht gefüllt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this in the meantime.</source>
        <translation>Ein anderes Fenster hat dies inzwischen entfernt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window added this in the meantime.</source>
        <translation>Ein anderes Fenster hat dies inzwischen hinzugefügt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this entry in the meantime.</source>
        <translation>Ein anderes Fenster hat diesen Eintrag inzwischen entfernt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This entry is in the log already, and says something else.</source>
        <translation>Dieser Eintrag steht schon im Protokoll und lautet anders.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window changed this entry in the meantime. Look at it again.</source>
        <translation>Ein anderes Fenster hat diesen Eintrag inzwischen geändert. Sehen Sie ihn noch einmal an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That plan is not in the log.</source>
        <translation>Dieser Plan steht nicht im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card with this plan id exists already.</source>
        <translation>Eine Karte mit dieser Plan-ID gibt es schon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is no longer in its folder.</source>
        <translation>Diese Kopie ist nicht mehr in ihrem Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater.</source>
        <translation>Diese Datei ist kein Protokoll von Evenwater.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy was made by a newer Evenwater. Update the program to restore it.</source>
        <translation>Diese Kopie wurde von einem neueren Evenwater angelegt. Aktualisieren Sie das Programm, um sie wiederherzustellen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is damaged and cannot be restored. Choose another one.</source>
        <translation>Diese Kopie ist beschädigt und kann nicht wiederhergestellt werden. Wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log and its copies lie there already. Choose another folder.</source>
        <translation>Das Protokoll und seine Kopien liegen schon dort. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>There is no room for the copy. Make room, or choose another folder.</source>
        <translation>Für die Kopie ist kein Platz. Schaffen Sie Platz, oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The copy could not be written there. Choose another folder.</source>
        <translation>Die Kopie konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This log is not on a disk, so it has no copies.</source>
        <translation>Dieses Protokoll liegt nicht auf einer Festplatte, deshalb hat es keine Kopien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something that was typed is not saved yet, and would be lost. Let the log be saved first.</source>
        <translation>Etwas Eingegebenes ist noch nicht gespeichert und ginge verloren. Lassen Sie zuerst das Protokoll speichern.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That card is not in the log.</source>
        <translation>Diese Karte steht nicht im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card that is void cannot be in use again. Print a new one.</source>
        <translation>Eine ungültige Karte kann nicht wieder in Gebrauch sein. Drucken Sie eine neue.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be painted on that device.</source>
        <translation>Die Karte konnte auf diesem Gerät nicht gezeichnet werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A word on the card is wider than this paper. Choose a larger paper.</source>
        <translation>Ein Wort auf der Karte ist breiter als dieses Papier. Wählen Sie ein größeres Papier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be written there. Choose another folder.</source>
        <translation>Die Karte konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card's typeface is missing. Install the program again.</source>
        <translation>Die Schrift der Karte fehlt. Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The printer put {got} in place of {wanted}. Choose the right paper.</source>
        <translation>Der Drucker nahm {got} statt {wanted}. Wählen Sie das richtige Papier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>system</source>
        <translation>System</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>jug</source>
        <translation>Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>level</source>
        <translation>Füllstand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>date of return</source>
        <translation>Datum der Rückkehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>exchange</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>recovery</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>logging {kind}</source>
        <translation>Protokollieren ({kind})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>change of {kind}</source>
        <extracomment>step_words</extracomment>
        <translation>Änderung ({kind})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing {kind}</source>
        <translation>Entfernen ({kind})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>import of readings</source>
        <translation>Import von Messwerten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>starting the plan for {subject}</source>
        <translation>Start des Plans für {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>ending the plan for {subject}</source>
        <translation>Ende des Plans für {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a reading</source>
        <translation>ein Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a dose</source>
        <translation>eine Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a water exchange</source>
        <translation>ein Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a note</source>
        <translation>eine Notiz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a calibration</source>
        <translation>eine Kalibrierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a batch</source>
        <translation>ein Ansatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the name</source>
        <translation>der Name</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug</source>
        <translation>der Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what is in the jug</source>
        <translation>was im Kanister ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how the strength is said</source>
        <translation>wie die Stärke angegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug to match</source>
        <translation>der Partnerkanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>who mixed it</source>
        <translation>wer es angesetzt hat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date to use it by</source>
        <translation>das Datum der letzten Verwendung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date of mixing</source>
        <translation>das Datum des Ansetzens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours begin</source>
        <translation>wann die Ruhezeiten beginnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours end</source>
        <translation>wann die Ruhezeiten enden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the time that opposing doses stay apart</source>
        <translation>die Zeit, die gegensätzliche Dosen auseinanderliegen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>one pump at a time</source>
        <translation>eine Pumpe zur Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the doses a day</source>
        <translation>die Dosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the fewest doses a day</source>
        <translation>die wenigsten Dosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the most doses a day</source>
        <translation>die meisten Dosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the hour of the first dose</source>
        <translation>die Stunde der ersten Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used ({code}).</source>
        <extracomment>sentence</extracomment>
        <translation>Das Protokoll konnte nicht benutzt werden ({code}).</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>{n}&#xa0;edits</source>
        <extracomment>for 1: {n}&#xa0;edit; edits_words</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Änderung</numerusform>
            <numerusform>{n}&#xa0;Änderungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>adding a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>Hinzufügen ({noun})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>Entfernen ({noun})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Jugs on the shelf</source>
        <translation>Kanister im Regal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Missed doses are never made up: go on with the next one.</source>
        <translation>Ausgefallene Dosen werden nie nachgeholt: Machen Sie mit der nächsten weiter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>This sheet holds for the round it was printed for. Doses stand on the cards, not here.</source>
        <translation>Dieses Blatt gilt für den Rundgang, für den es gedruckt wurde. Dosen stehen auf den Karten, nicht hier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>Nothing is wrong and nothing is due.</source>
        <extracomment>page, headline</extracomment>
        <translation>Nichts ist falsch, und nichts ist fällig.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>{n} things to do</source>
        <extracomment>for 1: {n} thing to do; page</extracomment>
        <translation>
            <numerusform>{n} Aufgabe</numerusform>
            <numerusform>{n} Aufgaben</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Round sheet</source>
        <extracomment>page</extracomment>
        <translation>Rundgangsblatt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Printed {date_words} {clock}</source>
        <extracomment>page</extracomment>
        <translation>Gedruckt {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Today</source>
        <extracomment>_line</extracomment>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>By {at}</source>
        <extracomment>_line</extracomment>
        <translation>Bis {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>wrong</source>
        <extracomment>headline</extracomment>
        <translation>falsch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due</source>
        <extracomment>headline</extracomment>
        <translation>fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due soon</source>
        <extracomment>headline</extracomment>
        <translation>bald fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Stop {food} and throw it away</source>
        <extracomment>_last_day</extracomment>
        <translation>{food} stoppen und wegwerfen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away</source>
        <extracomment>_last_day</extracomment>
        <translation>{food} wegwerfen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day was {day}. Rinse jug and line.</source>
        <extracomment>_last_day</extracomment>
        <translation>Der letzte Tag dafür war {day}. Spülen Sie Kanister und Leitung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away tonight</source>
        <extracomment>_last_day</extracomment>
        <translation>{food} heute Abend wegwerfen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>{day} is its last day.</source>
        <extracomment>_last_day</extracomment>
        <translation>{day} ist der letzte Tag dafür.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Get new {food}</source>
        <extracomment>_last_day, _empty</extracomment>
        <translation>Neu besorgen: {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day is {day}.</source>
        <extracomment>_last_day</extracomment>
        <translation>Der letzte Tag dafür ist {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug is empty on {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Nach der Tagesmenge ist der Kanister am {day} leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug would be empty since {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Nach der Tagesmenge wäre der Kanister seit {day} leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Look how much {food} is left</source>
        <extracomment>_empty</extracomment>
        <translation>Nachsehen, wie viel übrig ist: {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Look how much is left</source>
        <translation>Nachsehen, wie viel übrig ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its batch {was} to be used by {use_by}.</source>
        <extracomment>_old</extracomment>
        <translation>Der Ansatz {was} bis {use_by} zu verwenden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>was</source>
        <extracomment>_old, cards</extracomment>
        <translation>war</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>is</source>
        <extracomment>_old, cards</extracomment>
        <translation>ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Mix a new batch</source>
        <extracomment>_old, _empty</extracomment>
        <translation>Neuen Ansatz ansetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the daily rate it {gone} {at}.</source>
        <extracomment>_empty</extracomment>
        <translation>Nach der Tagesmenge {gone} {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, but far less is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>Bei {per_day} am Tag {gone} {at}, aber viel weniger ist protokolliert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its level was read on {at}: it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>Der Füllstand wurde am {at} abgelesen: Der Kanister ist leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the doses logged it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>Nach den protokollierten Dosen ist er leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>It {gone} {at}, reckoned from the doses logged.</source>
        <extracomment>_empty</extracomment>
        <translation>Berechnet aus den protokollierten Dosen {gone} {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>reckoned from the doses logged until {until}</source>
        <extracomment>_empty</extracomment>
        <translation>berechnet aus den bis {until} protokollierten Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, {logged}.</source>
        <extracomment>_empty</extracomment>
        <translation>Bei {per_day} am Tag {gone} {at}, {logged}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source> since {since}</source>
        <extracomment>_empty</extracomment>
        <translation> seit {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day{since} it {gone} {at}; no dose is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>Bei {per_day} am Tag{since} {gone} {at}; keine Dosis ist protokolliert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>would be empty since</source>
        <extracomment>_would</extracomment>
        <translation>wäre er leer seit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>is empty on</source>
        <extracomment>_would</extracomment>
        <translation>ist er leer am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Stop dosing {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>{parameter} nicht mehr dosieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Its plan says to stop.</source>
        <extracomment>plans</extracomment>
        <translation>Der Plan dafür sagt Stopp.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Look at the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Plan für {parameter} ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It cannot be reckoned any more.</source>
        <extracomment>plans</extracomment>
        <translation>Er kann nicht mehr berechnet werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>The readings leave its band.</source>
        <extracomment>plans</extracomment>
        <translation>Die Messwerte verlassen das Band des Plans.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Plan {plan_id} {reached} {ends}.</source>
        <extracomment>plans</extracomment>
        <translation>Plan {plan_id} {reached} {ends}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>reached its end on</source>
        <extracomment>plans</extracomment>
        <translation>endete am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>ends on</source>
        <extracomment>plans</extracomment>
        <translation>endet am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>End the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Plan für {parameter} beenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Another card has taken its place.</source>
        <extracomment>cards</extracomment>
        <translation>Eine andere Karte hat sie ersetzt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Take down card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Karte {plan_id} abnehmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It must not be followed.</source>
        <extracomment>cards</extracomment>
        <translation>Sie darf nicht befolgt werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It {was} valid until {valid_until}.</source>
        <extracomment>cards</extracomment>
        <translation>Sie {was} gültig bis {valid_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Replace card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Karte {plan_id} ersetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_room.py"/>
        <source>A system that is gone</source>
        <extracomment>place_of</extracomment>
        <translation>Ein System, das es nicht mehr gibt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter} again with a fresh kit</source>
        <extracomment>_duty</extracomment>
        <translation>{parameter} noch einmal mit frischem Testset testen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter}</source>
        <extracomment>_duty</extracomment>
        <translation>{parameter} testen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is dated {at}, which is still to come. Look at the clock and at the reading.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Der letzte Messwert trägt die Zeit {at}, die noch in der Zukunft liegt. Sehen Sie auf die Uhr und auf den Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings all say {typed}.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Die letzten {same} Messwerte lauten alle {typed}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings are all alike.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Die letzten {same} Messwerte sind alle gleich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Plan {plan_id} {asked} for a test by {at}.</source>
        <extracomment>_by_plan</extracomment>
        <translation>Plan {plan_id} {asked} einen Test bis {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asked</source>
        <extracomment>_by_plan</extracomment>
        <translation>verlangte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asks</source>
        <extracomment>_by_plan</extracomment>
        <translation>verlangt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>less than a day</source>
        <extracomment>_age</extracomment>
        <translation>weniger als einen Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>1 day</source>
        <extracomment>_age</extracomment>
        <translation>einen Tag</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{n} days</source>
        <extracomment>for 1: a day; _age</extracomment>
        <translation>
            <numerusform>einen Tag</numerusform>
            <numerusform>{n} Tage</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is {age} old; it holds {held}.</source>
        <extracomment>_age</extracomment>
        <translation>Der letzte Messwert ist {age} alt; er gilt {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer.</source>
        <extracomment>copy_shown</extracomment>
        <translation>Der Server mit dem Protokoll antwortet nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Read from this computer's copy of {when}; the server does not answer. What others logged since is not in it.</source>
        <extracomment>copy_shown</extracomment>
        <translation>Gelesen aus der Kopie dieses Computers, Stand {when}; der Server antwortet nicht. Was andere seitdem protokolliert haben, ist nicht darin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer. Look whether it runs and whether this computer is in its network.</source>
        <extracomment>_away</extracomment>
        <translation>Der Server mit dem Protokoll antwortet nicht. Sehen Sie nach, ob er läuft und ob dieser Computer in seinem Netzwerk ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not answer, so that was not done. Try again when it does.</source>
        <extracomment>_away</extracomment>
        <translation>Der Server antwortet nicht, deshalb wurde das nicht getan. Versuchen Sie es wieder, wenn er antwortet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Kept on this computer, and sent when the server answers. Read from the copy of {when}.</source>
        <extracomment>_waits</extracomment>
        <translation>Auf diesem Computer aufbewahrt; wird gesendet, wenn der Server antwortet. Gelesen aus der Kopie vom {when}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>{when} by {who}</source>
        <extracomment>_doubted</extracomment>
        <translation>{when} von {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>A dose that waited for the server was logged beside one that somebody else logged ({which}). If both are the same dose, remove one of them.</source>
        <extracomment>_doubted</extracomment>
        <translation>Eine Dosis, die auf den Server gewartet hat, wurde neben einer protokolliert, die jemand anderes protokolliert hat ({which}). Wenn beide dieselbe Dosis sind, entfernen Sie eine davon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Somebody logged a dose at this moment. Look at it before you log yours.</source>
        <translation>Jemand hat in diesem Augenblick eine Dosis protokolliert. Sehen Sie sie an, bevor Sie Ihre protokollieren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server cannot keep a character in it, so it was not saved. Type it again.</source>
        <translation>Der Server kann ein Zeichen darin nicht speichern, deshalb wurde es nicht gespeichert. Geben Sie es neu ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>That is no address of a log. It looks like postgresql://keeper@fishroom-server/fishroom</source>
        <translation>Das ist keine Adresse eines Protokolls. Sie sieht aus wie postgresql://keeper@fishroom-server/fishroom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>An address has no password in it, since it would stay where others can read it. Type it in the field for it, keep it in the system's keyring, or set EVENWATER_LOG_PASSWORD.</source>
        <translation>In einer Adresse steht kein Passwort, da es dort bliebe, wo andere es lesen können. Geben Sie es in das Feld dafür ein, legen Sie es im Schlüsselbund des Systems ab, oder setzen Sie EVENWATER_LOG_PASSWORD.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let you in with this name and password. The password is taken from the field, from EVENWATER_LOG_PASSWORD or from the system's keyring.</source>
        <translation>Der Server lässt Sie mit diesem Namen und Passwort nicht ein. Das Passwort kommt aus dem Feld, aus EVENWATER_LOG_PASSWORD oder aus dem Schlüsselbund des Systems.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server answers, but has no database of that name.</source>
        <translation>Der Server antwortet, hat aber keine Datenbank dieses Namens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>What was written is not what was read, so nothing was kept of it. Try again.</source>
        <translation>Geschrieben wurde etwas anderes als gelesen, deshalb wurde nichts davon behalten. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let this name make or change the log. Ask who looks after it.</source>
        <translation>Der Server lässt diesen Namen das Protokoll nicht anlegen oder ändern. Fragen Sie die Person, die ihn betreut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>This Evenwater was installed without what a log on a server needs. Install it with [facility].</source>
        <translation>Dieses Evenwater wurde ohne das installiert, was ein Protokoll auf einem Server braucht. Installieren Sie es mit [facility].</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>limewater, saturated {tall_man}</source>
        <extracomment>contents_options</extracomment>
        <translation>Kalkwasser, gesättigt, {tall_man}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>magnesium CHLORide and SULFate, as in seawater</source>
        <extracomment>contents_options</extracomment>
        <translation>Magnesium, CHLORid und SULFat, wie im Meerwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>A bottle, by its label</source>
        <extracomment>contents_options</extracomment>
        <translation>Eine Flasche, laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>What it was made for cannot be reckoned any more.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Wofür sie gemacht wurde, lässt sich nicht mehr berechnen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>It was made for another strength: {before}. {held_by}: {strength_line}.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Sie wurde für eine andere Stärke gemacht: {before}. {held_by}: {strength_line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>The jug now</source>
        <extracomment>card_outdated, StockRecords.outdated</extracomment>
        <translation>Der Kanister jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>by its label, {dose} raise {water} by {rise}</source>
        <extracomment>strength_line</extracomment>
        <translation>laut Etikett heben {dose} {water} um {rise} an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>No hazard statement</source>
        <extracomment>hazards</extracomment>
        <translation>Kein Gefahrenhinweis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In the jug</source>
        <extracomment>batch_row</extracomment>
        <translation>Im Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Used before</source>
        <extracomment>batch_row</extracomment>
        <translation>Früher benutzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Not in the jug yet</source>
        <extracomment>batch_row</extracomment>
        <translation>Noch nicht im Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>to be weighed</source>
        <extracomment>batch_row</extracomment>
        <translation>noch abzuwiegen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>mixed {mixed}</source>
        <extracomment>batch_row</extracomment>
        <translation>angesetzt {mixed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>use by {batch}</source>
        <extracomment>batch_row</extracomment>
        <translation>verwendbar bis {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Monday</source>
        <translation>Montag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Tuesday</source>
        <translation>Dienstag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Wednesday</source>
        <translation>Mittwoch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thursday</source>
        <translation>Donnerstag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Friday</source>
        <translation>Freitag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Saturday</source>
        <translation>Samstag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sunday</source>
        <translation>Sonntag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jan</source>
        <translation>Jan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Feb</source>
        <translation>Feb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Mar</source>
        <translation>Mär</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Apr</source>
        <translation>Apr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jun</source>
        <translation>Jun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jul</source>
        <translation>Jul</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Aug</source>
        <translation>Aug</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sep</source>
        <translation>Sep</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Oct</source>
        <translation>Okt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Nov</source>
        <translation>Nov</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Dec</source>
        <translation>Dez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{value} per day</source>
        <extracomment>Shown.per_day</extracomment>
        <translation>{value} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (cubic metres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (Kubikmeter)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (litres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (Liter)</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <extracomment>for 1: {n}&#xa0;day; span</extracomment>
        <translation>
            <numerusform>{n}&#xa0;Tag</numerusform>
            <numerusform>{n}&#xa0;Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <comment>every</comment>
        <extracomment>for 1: a day; days_words</extracomment>
        <translation>
            <numerusform>24&#xa0;h</numerusform>
            <numerusform>{n}&#xa0;Tage</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>once a day</source>
        <extracomment>every</extracomment>
        <translation>einmal am Tag</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {rest}</source>
        <extracomment>for 1: every minute; every</extracomment>
        <translation>
            <numerusform>jede Minute</numerusform>
            <numerusform>alle {rest}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours} {rest}</source>
        <extracomment>every</extracomment>
        <translation>alle {hours} {rest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours}</source>
        <extracomment>for 1: every hour; every</extracomment>
        <translation>
            <numerusform>jede Stunde</numerusform>
            <numerusform>alle {hours}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{weekday} {day} {month} {year}</source>
        <extracomment>date_words</extracomment>
        <translation>{weekday} {day}. {month} {year}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{day} {month}</source>
        <extracomment>day_words</extracomment>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{weekday} {day} {month}</source>
        <extracomment>day_words</extracomment>
        <translation>{weekday} {day}. {month}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>What else it does</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>Was es sonst bewirkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als NO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als PO4</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium is taken to be made good with calcium chloride</source>
        <translation>angenommen wird, dass Calcium mit Calciumchlorid ausgeglichen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity is taken to be made good with a sodium salt</source>
        <translation>angenommen wird, dass Alkalinität mit einem Natriumsalz ausgeglichen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>What comes along</source>
        <extracomment>_correction</extracomment>
        <translation>Was mitkommt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>a label does not say what else is in the bottle</source>
        <extracomment>_correction</extracomment>
        <translation>ein Etikett sagt nicht, was sonst in der Flasche ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>not known</source>
        <extracomment>_correction, _line</extracomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>{item} mit der Korrektur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>carried in by {stock} of stock</source>
        <extracomment>_correction</extracomment>
        <translation>eingebracht mit {stock} Stammlösung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what is in the water by then ÷ {density}; alkalinity counts as bicarbonate</source>
        <extracomment>_correction</extracomment>
        <translation>was bis dahin im Wasser ist ÷ {density}; Alkalinität zählt als Hydrogencarbonat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity by the last dose</source>
        <extracomment>_correction</extracomment>
        <translation>Salinität bis zur letzten Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>Wasser mit der Korrektur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>comes in place of as much top-off</source>
        <extracomment>_correction, _lines</extracomment>
        <translation>kommt anstelle von ebenso viel Nachfüllwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{per_unit} for each {words}</source>
        <extracomment>_pair</extracomment>
        <translation>{per_unit} je {words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>skeleton takes one mole of calcium to two equivalents</source>
        <extracomment>_pair</extracomment>
        <translation>Skelett nimmt ein Mol Calcium auf zwei Äquivalente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium to alkalinity</source>
        <extracomment>_pair</extracomment>
        <translation>Calcium zu Alkalinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{calcium_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{calcium_per_day} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{alkalinity_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{alkalinity_per_day} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Calcium, das mit verbraucht wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Alkalinity used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Alkalinität, die mit verbraucht wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, {salt_g} in the whole tank, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>Versorgung, {salt_g} im ganzen Becken, wenn nichts gewechselt wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinität in einem Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinität in einem Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>Versorgung, wenn nichts gewechselt wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>left as the nutrient is taken up</source>
        <extracomment>_upkeep</extracomment>
        <translation>bleibt übrig, wenn der Nährstoff aufgenommen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>not used up</source>
        <extracomment>_upkeep</extracomment>
        <translation>nicht verbraucht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{why}, if nothing is exchanged; {later} in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>{why}, wenn nichts gewechselt wird; {later} in einem Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>{item} in einem Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Wasser in einem Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, comes in place of as much top-off</source>
        <extracomment>_upkeep</extracomment>
        <translation>Versorgung, kommt anstelle von ebenso viel Nachfüllwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salt left behind in a month</source>
        <extracomment>_salt</extracomment>
        <translation>In einem Monat zurückbleibendes Salz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>everything that comes is used up</source>
        <extracomment>_salt</extracomment>
        <translation>alles, was kommt, wird verbraucht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>every equivalent leaves one mole, {mole}{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>jedes Äquivalent hinterlässt ein Mol, {mole}{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salt_g} of sodium chloride</source>
        <extracomment>_salt</extracomment>
        <translation>{salt_g} Natriumchlorid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the mass of what is not used up{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>die Masse dessen, was nicht verbraucht wird{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Dissolved inorganic carbon</source>
        <extracomment>_way</extracomment>
        <translation>Gelöster anorganischer Kohlenstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Taken for these</source>
        <extracomment>_way</extracomment>
        <translation>Dafür angenommen</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>right after the {n} doses of an hour</source>
        <extracomment>for 1: right after a dose; _instants</extracomment>
        <translation>
            <numerusform>direkt nach einer Dosis</numerusform>
            <numerusform>direkt nach den {n} Dosen einer Stunde</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>at the target</source>
        <extracomment>_instants</extracomment>
        <translation>beim Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{dose} there</source>
        <extracomment>_instants</extracomment>
        <translation>{dose} dort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{at_target} at the target</source>
        <extracomment>_instants</extracomment>
        <translation>{at_target} beim Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the air brings the carbon dioxide back between doses</source>
        <extracomment>_taken</extracomment>
        <translation>die Luft bringt das Kohlendioxid zwischen den Dosen zurück</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>pH was not measured: {ph_assumed} now and at the target</source>
        <extracomment>_taken</extracomment>
        <translation>der pH wurde nicht gemessen: {ph_assumed} jetzt und beim Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>Calcium wurde nicht angegeben: wie in natürlichem Meerwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>Alkalinität wurde nicht angegeben: wie in natürlichem Meerwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what a dose of this bottle does at once is not known</source>
        <extracomment>_taken</extracomment>
        <translation>was eine Dosis aus dieser Flasche sofort bewirkt, ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per L</source>
        <extracomment>_density, _spread_line, a unit beside a figure</extracomment>
        <translation>kg pro L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>less than {least_salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>weniger als {least_salinity} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>g per kg</source>
        <extracomment>_more, _figure</extracomment>
        <translation>g pro kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>{salinity} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I weighed it</source>
        <translation>Ich habe es abgewogen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I want a strength</source>
        <translation>Ich will eine Stärke</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>To match another jug</source>
        <translation>Passend zu anderem Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{chemical} raises nothing that is corrected here. Weigh it instead.</source>
        <extracomment>evaluate</extracomment>
        <translation>{chemical} hebt nichts an, was hier korrigiert wird. Wiegen Sie es stattdessen ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Choose the jug to match.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Wählen Sie den Kanister, zu dem es passen soll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>A bottle known by its label, or a jug with nothing in it, cannot be matched. Choose another jug.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Zu einer Flasche, die nur durch ihr Etikett bekannt ist, oder zu einem Kanister, in dem nichts ist, kann nichts abgestimmt werden. Wählen Sie einen anderen Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>of {first}</source>
        <extracomment>_answered</extracomment>
        <translation>{first}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{grams} of {tall_man}</source>
        <extracomment>_answered</extracomment>
        <translation>{grams} {tall_man}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{weighed}, filled up to {litres}</source>
        <extracomment>_answered</extracomment>
        <translation>{weighed}, aufgefüllt auf {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source> and {mass}</source>
        <extracomment>_answered</extracomment>
        <translation> und {mass}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>g{also} to weigh out</source>
        <extracomment>_answered</extracomment>
        <translation>g{also} abzuwiegen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>saturated, clear, in a jug of {litres}</source>
        <extracomment>_answered</extracomment>
        <translation>gesättigt, klar, in einem Kanister mit {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>meq per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>meq pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>g pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>mmol per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>mmol pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>mg pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{dose} raises {water} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>{dose} hebt {water} um {shown} an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>and {parameter} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>und {parameter} um {shown}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Dissolved, at {at}</source>
        <extracomment>_bars</extracomment>
        <translation>Gelöst, bei {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{made} of {most}</source>
        <extracomment>_bars</extracomment>
        <translation>{made} von {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in a litre</source>
        <extracomment>_working</extracomment>
        <translation>in einem Liter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in seawater {sulfate_per_magnesium}</source>
        <extracomment>_working</extracomment>
        <translation>im Meerwasser {sulfate_per_magnesium}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Sulfate to magnesium</source>
        <extracomment>_working</extracomment>
        <translation>Sulfat zu Magnesium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>by moles, {sea}</source>
        <extracomment>_working</extracomment>
        <translation>nach Mol, {sea}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{made} of {chemical} in a litre cannot dissolve: at {temperature} the most is {most} in a litre. Make the stock weaker.</source>
        <translation>{made} {chemical} in einem Liter können sich nicht lösen: Bei {temperature} sind höchstens {most} in einem Liter möglich. Machen Sie die Stammlösung schwächer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>The stock is near its limit ({made} of {most} in a litre). Keep it {warm} and look for crystals.</source>
        <translation>Die Stammlösung ist nahe an ihrer Grenze ({made} von {most} in einem Liter). Halten Sie sie {warm}, und achten Sie auf Kristalle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>warm</source>
        <translation>warm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>cool</source>
        <translation>kühl</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is dangerous to people and easy to overdose. Use it only if you are trained for it.</source>
        <translation>{chemical} ist für Menschen gefährlich und leicht zu überdosieren. Verwenden Sie es nur, wenn Sie dafür geschult sind.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} fall out when they are dissolved together. Give each a jug of its own.</source>
        <translation>{first} und {second} fallen aus, wenn sie zusammen gelöst werden. Geben Sie jedem einen eigenen Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is named twice. Add its masses up and name it once.</source>
        <translation>{chemical} ist zweimal genannt. Zählen Sie die Massen zusammen, und nennen Sie es einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} cannot be mixed to the magnesium and sulfate of seawater. Take magnesium chloride and magnesium sulfate.</source>
        <translation>{first} und {second} lassen sich nicht zu Magnesium und Sulfat wie im Meerwasser mischen. Nehmen Sie Magnesiumchlorid und Magnesiumsulfat.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>A jug of {chemical} must not be saturated: it crystallises when the room cools. Only limewater is dosed so.</source>
        <translation>Ein Kanister mit {chemical} darf nicht gesättigt sein: Der Inhalt kristallisiert, wenn der Raum abkühlt. Nur Kalkwasser wird so dosiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Limewater holds {grams_per} in a litre at {degc}, and less when it is warmer. Dose the clear water only, and keep the jug closed: air turns it into chalk.</source>
        <translation>Kalkwasser enthält bei {degc} {grams_per} in einem Liter, und weniger, wenn es wärmer ist. Dosieren Sie nur das klare Wasser, und halten Sie den Kanister geschlossen: Luft macht Kreide daraus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} and {partner} are no pair. Of a matched pair one stock carries alkalinity only and the other calcium only.</source>
        <translation>{chemical} und {partner} sind kein Paar. In einem abgestimmten Paar enthält eine Stammlösung nur Alkalinität und die andere nur Calcium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No seawater of this alkalinity has a pH of {ph}. Test both again, and see on which scale the pH is.</source>
        <translation>Kein Meerwasser dieser Alkalinität hat einen pH von {ph}. Testen Sie beides noch einmal, und sehen Sie nach, auf welcher Skala der pH angegeben ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Aragonite saturation reaches {saturation}; above {most} calcium carbonate may fall out, and these figures hold no longer. Add less at a time.</source>
        <translation>Die Aragonitsättigung erreicht {saturation}; über {most} kann Calciumcarbonat ausfallen, und diese Zahlen gelten nicht mehr. Geben Sie weniger auf einmal zu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No calcium is given, so {calcium} is assumed, as natural seawater of this salinity has.</source>
        <translation>Es ist kein Calcium angegeben, deshalb wird {calcium} angenommen, wie in natürlichem Meerwasser dieser Salinität.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>pH was not measured, so {ph} is assumed all along, and only its rise in an hour is limited. Measure it before a large correction.</source>
        <translation>Der pH wurde nicht gemessen, deshalb wird durchgehend {ph} angenommen, und nur sein Anstieg in einer Stunde ist begrenzt. Messen Sie ihn vor einer großen Korrektur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At the target pH comes to {ph} once gas exchange has caught up, above the {most} usually kept. More air from outdoors does not lower it; a nearer target does.</source>
        <translation>Beim Zielwert kommt der pH auf {ph}, sobald der Gasaustausch nachgekommen ist, über die üblich gehaltenen {most}. Mehr Luft von draußen senkt ihn nicht; ein näherer Zielwert schon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>What is in the bottle is not known. For pH it is reckoned as hydroxide, which lifts it most.</source>
        <translation>Was in der Flasche ist, ist nicht bekannt. Für den pH wird es als Hydroxid gerechnet, das ihn am meisten anhebt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At a salinity of {salinity} and {degc} not all constants were measured; these figures are less certain.</source>
        <translation>Bei einer Salinität von {salinity} und {degc} wurden nicht alle Konstanten gemessen; diese Zahlen sind weniger sicher.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sulfate</source>
        <translation>Sulfat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>boron</source>
        <translation>Bor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>{head}: {said}</source>
        <extracomment>headed</extracomment>
        <translation>{head}: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>{first} and {last}</source>
        <extracomment>listed</extracomment>
        <translation>{first} und {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {widest}</source>
        <extracomment>_beside</extracomment>
        <translation>{widest} nehmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{widest} would do</source>
        <extracomment>_beside</extracomment>
        <translation>Mit {widest} ginge es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>In the way</source>
        <extracomment>_beside</extracomment>
        <translation>Im Weg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave {open}</source>
        <extracomment>_beside</extracomment>
        <translation>Sie lassen {open} frei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave nothing</source>
        <extracomment>_beside</extracomment>
        <translation>Sie lassen nichts frei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {most}</source>
        <extracomment>_beside</extracomment>
        <translation>{most} nehmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{most} would do</source>
        <extracomment>_beside</extracomment>
        <translation>Mit {most} ginge es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never make up missed doses: go on with the next one.</source>
        <translation>Holen Sie ausgefallene Dosen nie nach: Machen Sie mit der nächsten weiter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Test again within the week, and after every change of doses, batch or pump.</source>
        <translation>Testen Sie innerhalb der Woche neu und nach jeder Änderung von Dosen, Ansatz oder Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Timetable of all pumps</source>
        <extracomment>page</extracomment>
        <translation>Zeitplan aller Pumpen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Replace this sheet when the code of the timetable changes.</source>
        <extracomment>page</extracomment>
        <translation>Ersetzen Sie dieses Blatt, wenn sich der Code des Zeitplans ändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Valid until {until}</source>
        <extracomment>page</extracomment>
        <translation>Gültig bis {until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never more than {most} of {additive_name} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Nie mehr als {most} in 24 Stunden, alle Dosen zusammen: {additive_name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if {parameter} reads above {stop_above}.</source>
        <extracomment>page</extracomment>
        <translation>Stoppen Sie und testen Sie noch einmal, wenn {parameter} über {stop_above} gemessen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if a value reads higher than it is usually kept.</source>
        <extracomment>page</extracomment>
        <translation>Stoppen Sie und testen Sie noch einmal, wenn ein Wert höher gemessen wird, als er üblich gehalten wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Every dose of the day in order of time, {rows} in all</source>
        <extracomment>page</extracomment>
        <translation>Jede Dosis des Tages in zeitlicher Reihenfolge, insgesamt {rows}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id}. Its dose card says when they end; here is at which minute.</source>
        <extracomment>page</extracomment>
        <translation>Die Dosen von {parameter} sind die von Plan {plan_id}. Dessen Dosierkarte sagt, wann sie enden; hier steht, zu welcher Minute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>After 30 days the tank uses something else: test and print it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Nach 30 Tagen verbraucht das Becken etwas anderes: Testen Sie, und drucken Sie ihn neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the dose card of plan {plan_id} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Dann endet die Dosierkarte von Plan {plan_id}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the clocks on the wall are changed.</source>
        <extracomment>_valid</extracomment>
        <translation>Dann werden die Uhren an der Wand umgestellt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{first} and {second}: {nearest} apart at the nearest, never under {minutes}.</source>
        <extracomment>_separation</extracomment>
        <translation>{first} und {second}: kürzester Abstand {nearest}, nie unter {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Use another outlet for each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Verwenden Sie für jede einen eigenen Auslass, in der Strömung. Mischen Sie nie die Konzentrate.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source> or </source>
        <extracomment>_setting</extracomment>
        <translation> oder </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{doses}{doses_2}
First at {minute}</source>
        <extracomment>_setting</extracomment>
        <translation>{doses}{doses_2}
Erste um {minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{pump}: runs {runs} each time. {in_24_hours} in 24 hours.{carried}</source>
        <extracomment>_setting</extracomment>
        <translation>{pump}: läuft jedes Mal {runs}. {in_24_hours} in 24 Stunden.{carried}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>Plan {plan_id} for {parameter}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>Plan {plan_id} für {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} cannot be read. End it on the Correct sheet.</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} kann nicht gelesen werden. Beenden Sie ihn auf dem Blatt Korrektur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} must not be followed on. {plan_said}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} darf nicht weiter befolgt werden. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>“{name}” is chosen for {parameter} and for {parameter_2}. A pump head gives from one jug: </source>
        <extracomment>names_of</extracomment>
        <translation>„{name}“ ist für {parameter} und für {parameter_2} gewählt. Ein Pumpenkopf fördert aus nur einem Kanister: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>{said}choose another pump for one of them.</source>
        <extracomment>names_of</extracomment>
        <translation>{said}Wählen Sie für eines davon eine andere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Let alkalinity and calcium flow in at different places, where the water moves.</source>
        <translation>Lassen Sie Alkalinität und Calcium an verschiedenen Stellen einfließen, wo sich das Wasser bewegt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>The pumps' clocks stay as they were set when the clocks on the wall are changed.</source>
        <translation>Die Uhren der Pumpen bleiben, wie sie gestellt sind, wenn die Uhren an der Wand umgestellt werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>To set the pumps' clocks again in autumn, stop the pumps for the hour that comes twice.</source>
        <translation>Um die Uhren der Pumpen im Herbst nachzustellen, stoppen Sie die Pumpen für die Stunde, die zweimal kommt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>, on some days {more} more</source>
        <extracomment>_lines</extracomment>
        <translation>, an manchen Tagen {more} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{first} and {second}: {nearest} apart, at least {minutes}</source>
        <extracomment>_lines</extracomment>
        <translation>{first} und {second}: {nearest} auseinander, mindestens {minutes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>Note: {remark}</source>
        <extracomment>_lines</extracomment>
        <translation>Hinweis: {remark}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{n} doses</source>
        <comment>in words</comment>
        <extracomment>for 1: one dose; pump_line</extracomment>
        <translation>
            <numerusform>eine Dosis</numerusform>
            <numerusform>{n} Dosen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{pump}: {how_many} a day{apart}, {in_day} in all, running {runs}</source>
        <extracomment>pump_line</extracomment>
        <translation>{pump}: {how_many} am Tag{apart}, {in_day} insgesamt, Laufzeit {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every {shortest}</source>
        <extracomment>_interval</extracomment>
        <translation>alle {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{shortest} to {longest} from one to the next</source>
        <extracomment>_interval</extracomment>
        <translation>{shortest} bis {longest} von einer zur nächsten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days {more} more</source>
        <extracomment>_row</extracomment>
        <translation>an manchen Tagen {more} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin}, then {run}</source>
        <extracomment>_when</extracomment>
        <translation>{begin}, dann {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin} to {minute}, {intervals}</source>
        <extracomment>_when</extracomment>
        <translation>{begin} bis {minute}, {intervals}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every hour</source>
        <extracomment>_interval</extracomment>
        <translation>jede Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{shortest} to {longest} apart</source>
        <extracomment>_interval</extracomment>
        <translation>{shortest} bis {longest} auseinander</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} of {dose}</source>
        <extracomment>_summary</extracomment>
        <translation>{count} zu je {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>up to {longest}</source>
        <extracomment>_summary</extracomment>
        <translation>bis zu {longest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>Plan {plan_id}</source>
        <extracomment>_summary</extracomment>
        <translation>Plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>one dose a day</source>
        <extracomment>_doses</extracomment>
        <translation>eine Dosis am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, the nearest {shortest} apart</source>
        <extracomment>_doses</extracomment>
        <translation>{count} Dosen am Tag, kürzester Abstand {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, {shortest}</source>
        <extracomment>_doses</extracomment>
        <translation>{count} Dosen am Tag, {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every day the same</source>
        <extracomment>_carried</extracomment>
        <translation>jeden Tag gleich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days the first dose is {step} more: what is left of a step is carried into the next day</source>
        <extracomment>_carried</extracomment>
        <translation>an manchen Tagen ist die erste Dosis um {step} größer: Was von einem Schritt übrig ist, wird auf den nächsten Tag übertragen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on {extra} of {days} days the first dose is {step} more; then the sum is exact</source>
        <extracomment>_carried</extracomment>
        <translation>an {extra} von {days} Tagen ist die erste Dosis um {step} größer; dann stimmt die Summe genau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{minute}: {dose}, runs {run_time}</source>
        <extracomment>lanes</extracomment>
        <translation>{minute}: {dose}, läuft {run_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{first} and {second} come {nearest} apart at the nearest; at least {minutes} are kept.</source>
        <extracomment>nearest_lines</extracomment>
        <translation>{first} und {second}: kürzester Abstand {nearest}; mindestens {minutes} werden eingehalten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Wear goggles and gloves at the jugs. In the eyes: rinse for at least 15 minutes and get medical help.</source>
        <translation>Tragen Sie an den Kanistern Schutzbrille und Handschuhe. In den Augen: mindestens 15 Minuten lang spülen und ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Never mix the concentrates.</source>
        <translation>Mischen Sie nie die Konzentrate.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>“{clean}” is not a clock time. Write it like 22:00.</source>
        <extracomment>clock_minute</extracomment>
        <translation>„{clean}“ ist keine Uhrzeit. Schreiben Sie sie wie 22:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>00:00 to {minute}</source>
        <extracomment>Wishes.not_before</extracomment>
        <translation>00:00–{minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours end as well.</source>
        <extracomment>read</extracomment>
        <translation>Schreiben Sie auch, wann die Ruhezeiten enden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours begin as well.</source>
        <extracomment>read</extracomment>
        <translation>Schreiben Sie auch, wann die Ruhezeiten beginnen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Quiet hours that end when they begin leave nothing of the day.</source>
        <extracomment>read</extracomment>
        <translation>Ruhezeiten, die enden, wenn sie beginnen, lassen nichts vom Tag übrig.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{n} doses a day</source>
        <extracomment>for 1: one dose a day; _doses</extracomment>
        <translation>
            <numerusform>1 Dosis am Tag</numerusform>
            <numerusform>{n} Dosen am Tag</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{fewest} to {most} doses a day</source>
        <extracomment>_number</extracomment>
        <translation>{fewest} bis {most} Dosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Choose {would_do}</source>
        <extracomment>_would_do</extracomment>
        <translation>Wählen Sie {would_do}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {fewest} the smaller doses of {name} would be {small}, below the {least} it gives accurately.</source>
        <extracomment>_smallest</extracomment>
        <translation>Bei {fewest} wären die kleineren Dosen von {name} {small}, unter den {least}, die sie genau fördert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a weaker stock.</source>
        <extracomment>_smallest</extracomment>
        <translation>{head} {would_do} oder eine schwächere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {most} a dose of {name} would be {large}, more than the {largest} it may be.</source>
        <extracomment>_largest</extracomment>
        <translation>Bei {most} wäre eine Dosis von {name} {large}, mehr als die erlaubten {largest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} {would_do} oder eine stärkere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} Verwenden Sie eine stärkere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No dose of {name} is both {smallest} or more and {largest} or less with {number}.</source>
        <extracomment>_between</extracomment>
        <translation>Keine Dosis von {name} ist mit {number} zugleich mindestens {smallest} und höchstens {largest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a finer pump or another stock.</source>
        <extracomment>_between</extracomment>
        <translation>{head} Verwenden Sie eine feinere Pumpe oder eine andere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No timetable of {names} {keeps} all wishes.</source>
        <extracomment>_none</extracomment>
        <translation>Ein Zeitplan für {names}, der alle Wünsche erfüllt, {keeps}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>keeps</source>
        <extracomment>_none</extracomment>
        <translation>existiert nicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>was found that keeps</source>
        <extracomment>_none</extracomment>
        <translation>wurde nicht gefunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second}</source>
        <extracomment>_apart</extracomment>
        <translation>{first} und {second}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} Only if {pair} need not stay {minutes} apart is there one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Nur wenn {pair} nicht {minutes} auseinanderliegen müssen, gibt es einen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {widest} between {pair} instead of {minutes} there is one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Mit {widest} zwischen {pair} statt {minutes} gibt es einen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the time that doses stay apart</source>
        <translation>die Zeit, die Dosen auseinanderliegen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the quiet hours</source>
        <translation>die Ruhezeiten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>only one pump at a time</source>
        <translation>nur eine Pumpe zur Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>how near the doses of one pump may come</source>
        <translation>wie nahe die Dosen einer Pumpe zusammenliegen dürfen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} They run too long for one day. Use stronger stocks or faster pumps.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Sie laufen zu lange für einen Tag. Verwenden Sie stärkere Stammlösungen oder schnellere Pumpen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} In the way: {wishes}. Leaving it out alone is not enough: use stronger stocks or faster pumps as well.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Im Weg: {wishes}. Dies allein wegzulassen reicht nicht: Verwenden Sie auch stärkere Stammlösungen oder schnellere Pumpen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} These stand in the way together: {said}. Give way in two of them.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Diese sind zusammen im Weg: {said}. Geben Sie bei zwei davon nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Add a pump, with what it gives in a day and its flow.</source>
        <translation>Fügen Sie eine Pumpe hinzu, mit ihrer Tagesmenge und ihrer Förderleistung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>These are {count} pumps; {most} can be planned together. Leave some out.</source>
        <translation>Das sind {count} Pumpen; {most} lassen sich zusammen planen. Lassen Sie einige weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{what}: one of the figures cannot be. Write them again.</source>
        <translation>{what}: Eine der Zahlen ist nicht möglich. Schreiben Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Two pumps are called {name}. Give each a name of its own.</source>
        <translation>Zwei Pumpen heißen {name}. Geben Sie jeder einen eigenen Namen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No pump is called {text}. There are: {choices}.</source>
        <translation>Keine Pumpe heißt {text}. Es gibt: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{text} are no hours. Write them like 22:00 to 07:00, several with a comma between them.</source>
        <translation>{text} sind keine Stunden. Schreiben Sie sie wie 22:00-07:00, mehrere mit Komma dazwischen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>For {name} {doses} are wished for, and {fewest} to {most} are allowed. Correct one of the three.</source>
        <translation>Für {name} sind {doses} gewünscht, und {fewest} bis {most} sind erlaubt. Korrigieren Sie eine der drei Angaben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} cannot be kept apart from itself. Name two pumps.</source>
        <translation>{name} kann nicht von sich selbst getrennt gehalten werden. Nennen Sie zwei Pumpen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} fall out when they meet in the water. Keep them {least} apart or more, not {minutes}.</source>
        <translation>{first} und {second} fallen aus, wenn sie sich im Wasser treffen. Halten Sie sie {least} oder mehr auseinander, nicht {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gives {per_day} a day, less than one step of {step}. Use a weaker stock or a finer pump.</source>
        <translation>{name} fördert {per_day} am Tag, weniger als einen Schritt von {step}. Verwenden Sie eine schwächere Stammlösung oder eine feinere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} is to give {per_day} a day, and can give {most} in {share} of the time. Use a stronger stock or a faster pump.</source>
        <translation>{name} soll {per_day} am Tag fördern und kann in {share} der Zeit {most} fördern. Verwenden Sie eine stärkere Stammlösung oder eine schnellere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave {open} of the day; without them there is one. Shorten them.</source>
        <translation>{none} Die Ruhezeiten lassen {open} vom Tag übrig; ohne sie gibt es einen. Verkürzen Sie sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave nothing of the day. Shorten them.</source>
        <translation>{none} Die Ruhezeiten lassen nichts vom Tag übrig. Verkürzen Sie sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {would_do} at most there is one.</source>
        <translation>{none} Mit höchstens {would_do} gibt es einen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when two pumps may run together.</source>
        <translation>{none} Es gibt einen, wenn zwei Pumpen zugleich laufen dürfen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when doses of {name} may come nearer than {minutes}.</source>
        <translation>{none} Es gibt einen, wenn Dosen von {name} näher als {minutes} zusammenliegen dürfen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The second reckoning does not agree with this timetable, so none is given. Please keep this question and report it.</source>
        <translation>Die zweite Rechnung stimmt nicht mit diesem Zeitplan überein, deshalb wird keiner gegeben. Bitte bewahren Sie diese Frage auf, und melden Sie sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gets {given} instead of the {wished} wished for, which its other wishes leave no room for.</source>
        <translation>{name} bekommt {given} statt der gewünschten {wished}, für die ihre anderen Wünsche keinen Platz lassen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The doses of {name} could not be spaced evenly: they come {shortest} to {longest} apart.</source>
        <translation>Die Dosen von {name} ließen sich nicht gleichmäßig verteilen: Sie liegen {shortest} bis {longest} auseinander.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>All doses of {name} come within {lasts} of the {open} in which it may run, so the water rises in that time. Fewer minutes apart, or shorter quiet hours, would spread them.</source>
        <translation>Alle Dosen von {name} fallen in eine Zeit von {lasts}, obwohl sie {open} lang laufen darf, deshalb steigen die Werte im Wasser in dieser Zeit. Weniger Minuten Abstand oder kürzere Ruhezeiten würden sie verteilen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step, so on {extra} of {days} days the first dose is {step} more. The sum is then exact.</source>
        <translation>Was {name} am Tag fördert, ist kein Vielfaches ihres Schritts, deshalb ist an {extra} von {days} Tagen die erste Dosis um {step} größer. Die Summe stimmt dann genau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step. What is left is carried on: on some days the first dose is {step} more.</source>
        <translation>Was {name} am Tag fördert, ist kein Vielfaches ihres Schritts. Der Rest wird übertragen: An manchen Tagen ist die erste Dosis um {step} größer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} come {minutes} apart at the nearest; {better} are better. Fewer doses make room.</source>
        <translation>{first} und {second}: kürzester Abstand {minutes}; {better} sind besser. Weniger Dosen schaffen Platz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>The upkeep is not counted. {said}</source>
        <extracomment>_Gathering.together</extracomment>
        <translation>Die Versorgung ist nicht mitgezählt. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} is over. {plan_said}</source>
        <extracomment>_Gathering._ramps</extracomment>
        <translation>{head} ist zu Ende. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>“{name}” cannot be read and is not counted. See the Foods sheet.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>„{name}“ kann nicht gelesen werden und ist nicht mitgezählt. Siehe Blatt Futter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>What the foods do to {found} is in what is used already, which was found by testing.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>Was das Futter bewirkt ({found}), steckt schon im Verbrauch, der durch Testen bestimmt wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: no reading, so only its change is known.</source>
        <extracomment>_Gathering._values</extracomment>
        <translation>{name}: kein Messwert, deshalb ist nur die Änderung bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: nobody said when it was tested; it is taken for now's.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}: Niemand hat angegeben, wann getestet wurde; der Wert wird als jetziger angenommen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: the reading is {now} old.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}: Der Messwert ist {now} alt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Only its change is known until it is tested.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Bis zum nächsten Test ist nur die Änderung bekannt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Test it again.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Testen Sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Draft, not to be followed</source>
        <translation>Entwurf, nicht zu befolgen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Everything that runs</source>
        <extracomment>page</extracomment>
        <translation>Alles, was läuft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Replace this card when its code changes.</source>
        <extracomment>page</extracomment>
        <translation>Ersetzen Sie diese Karte, wenn sich ihr Code ändert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never more than {most} of {each} for {parameter} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Nie mehr als {most} in 24 Stunden für {parameter}, alle Dosen zusammen: {each}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id} until {ends_at}; they make good the daily use as well. Then its upkeep begins: make this card again.</source>
        <extracomment>page</extracomment>
        <translation>Die Dosen von {parameter} sind bis {ends_at} die von Plan {plan_id}; sie gleichen auch den Tagesverbrauch aus. Dann beginnt die Versorgung: Erstellen Sie diese Karte neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run_time} each time. {in_24_hours}{each}</source>
        <extracomment>_upkeep</extracomment>
        <translation>{pump}: läuft jedes Mal {run_time}. {in_24_hours}{each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name} upkeep, {per_day}</source>
        <extracomment>_upkeep</extracomment>
        <translation>Versorgung {name}, {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> A full jug lasts until {empty_at}.</source>
        <extracomment>_empty</extracomment>
        <translation> Ein voller Kanister reicht bis {empty_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run} each time. {in_24_hours}</source>
        <extracomment>_ramps</extracomment>
        <translation>{pump}: läuft jedes Mal {run}. {in_24_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {name}</source>
        <extracomment>_ramps</extracomment>
        <translation>Pumpe für {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name}, {per_day}
Plan {plan_id}</source>
        <extracomment>_ramps</extracomment>
        <translation>{name}, {per_day}
Plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{in_24_hours} per hour, {in_24_hours_2} in 24 hours.</source>
        <extracomment>_sums</extracomment>
        <translation>{in_24_hours} pro Stunde, {in_24_hours_2} in 24 Stunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: clear saturated solution, {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> Im Kanister: klare gesättigte Lösung, {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: {said} made up to {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> Im Kanister: {said}, aufgefüllt auf {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Keep it cold.</source>
        <extracomment>_fed</extracomment>
        <translation>Halten Sie es kalt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Use it until {last_day}, then throw it away.</source>
        <extracomment>_fed</extracomment>
        <translation>Verwenden Sie es bis {last_day}, dann werfen Sie es weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never make up a missed feeding.</source>
        <extracomment>_fed</extracomment>
        <translation>Holen Sie eine ausgefallene Fütterung nie nach.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Food, in a day</source>
        <extracomment>_fed</extracomment>
        <translation>Futter, am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Old water out: {out} per day. New water in: {in_} per day.</source>
        <extracomment>_water</extracomment>
        <translation>Altes Wasser hinaus: {out} pro Tag. Frisches Salzwasser hinein: {in_} pro Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Both pumps are matched; when one stops, stop the other.</source>
        <extracomment>_water</extracomment>
        <translation>Beide Pumpen sind abgestimmt; wenn eine stehen bleibt, stoppen Sie die andere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Watch the level.</source>
        <extracomment>_water</extracomment>
        <translation>Achten Sie auf den Wasserstand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{alike} New water has a salinity of {salinity}.</source>
        <extracomment>_water</extracomment>
        <translation>{alike} Frisches Salzwasser hat eine Salinität von {salinity}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{names} and {names_2}: {apart} apart, by another outlet each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>{names} und {names_2}: {apart} auseinander, jede durch einen eigenen Auslass, in der Strömung. Mischen Sie nie die Konzentrate.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>At which minute each pump doses stands on the timetable.</source>
        <extracomment>_separation</extracomment>
        <translation>Zu welcher Minute jede Pumpe dosiert, steht im Zeitplan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Stop dosing {name} and test again if it reads above {above}.</source>
        <extracomment>_stop</extracomment>
        <translation>Stoppen Sie das Dosieren ({name}) und testen Sie noch einmal, wenn über {above} gemessen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name}: {due}, then every {stale_days}.</source>
        <extracomment>_tests</extracomment>
        <translation>{name}: {due}, dann alle {stale_days}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>by {due}</source>
        <extracomment>_tests</extracomment>
        <translation>bis {due}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>, a test may say {low} to {high}</source>
        <extracomment>_between</extracomment>
        <translation>, ein Test kann {low} bis {high} zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>After 30 days the tank uses something else: test and make it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Nach 30 Tagen verbraucht das Becken etwas anderes: Testen Sie, und erstellen Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then plan {plan_id} for {parameter} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Dann endet Plan {plan_id} für {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then {parameter} would leave its range: change what moves it.</source>
        <extracomment>_valid</extracomment>
        <translation>Dann würde {parameter} den Bereich verlassen: Ändern Sie, was den Wert bewegt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>stays there</source>
        <translation>bleibt dort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing can be said yet.</source>
        <extracomment>view</extracomment>
        <translation>Alle Pläne zusammen: Noch lässt sich nichts sagen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>What does not move: {still}.</source>
        <extracomment>view</extracomment>
        <translation>Was sich nicht bewegt: {still}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing moves.</source>
        <extracomment>_summary</extracomment>
        <translation>Alle Pläne zusammen: Nichts bewegt sich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said} and {said_2} more.</source>
        <extracomment>_summary</extracomment>
        <translation>Alle Pläne zusammen, in einer Woche: {said} und {said_2} weitere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said}.</source>
        <extracomment>_summary</extracomment>
        <translation>Alle Pläne zusammen, in einer Woche: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{said} values move.</source>
        <extracomment>_summary</extracomment>
        <translation>{said} Werte bewegen sich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a month</source>
        <extracomment>_spoken</extracomment>
        <translation>in einem Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>used up on {date_words}</source>
        <extracomment>_then</extracomment>
        <translation>verbraucht am {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>the usual </source>
        <extracomment>_then</extracomment>
        <translation>üblich </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>settles at {settles}</source>
        <extracomment>_then</extracomment>
        <translation>pendelt sich bei {settles} ein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} now</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} on {date_words}</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} am {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>up {rise}</source>
        <extracomment>_change</extracomment>
        <translation>{rise} hinauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>down {rise}</source>
        <extracomment>_change</extracomment>
        <translation>{rise} hinunter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Together now</source>
        <extracomment>_budget</extracomment>
        <translation>Jetzt zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>of {rise_hard} at the most</source>
        <extracomment>_limits</extracomment>
        <translation>von höchstens {rise_hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest rise in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Größter Anstieg in 24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest fall in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Größter Rückgang in 24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>from {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>ab {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>until {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>bis {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{named}, next {times} days</source>
        <extracomment>_course</extracomment>
        <translation>{named}, nächste {times} Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the upkeep of {}</source>
        <translation>die Versorgung mit {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the correction of {}</source>
        <translation>die Korrektur von {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>used</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>taken by skimmer, algae and media</source>
        <translation>entzogen durch Abschäumer, Algen und Filtermedien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>water exchange</source>
        <translation>Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the new water</source>
        <extracomment>_plans</extracomment>
        <translation>das frische Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>below {low}</source>
        <extracomment>_bound</extracomment>
        <translation>unter {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>above {high}</source>
        <extracomment>_bound</extracomment>
        <translation>über {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound} and does not come back by itself. Correct it first.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name} ist {bound} und kommt nicht von selbst zurück. Korrigieren Sie diesen Wert zuerst.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Change what moves it before that.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name} gerät {bound} (bis dahin {day}), wohin kein Plan den Wert bringen darf. Ändern Sie vorher, was ihn bewegt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would rise {rise} in 24 hours, of {most} at the most</source>
        <extracomment>_too_fast</extracomment>
        <translation>{name} würde in 24 Stunden um {rise} steigen (höchstens erlaubt: {most})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}: no single plan does that. Let some of them wait.</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}: Kein einzelner Plan bewirkt das. Lassen Sie einige davon warten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Bring it nearer, or exchange more slowly.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Bringen Sie es näher an das Becken heran, oder wechseln Sie langsamer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Give less of it.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Geben Sie weniger davon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}, by {plans}. {less}</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}, durch {plans}. {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>All together {parameter} would rise {rise} in 24 hours, of {most} at the most: {plans} raise it, though each alone keeps the limit. Let one wait until the other is done, or make it slower.</source>
        <translation>Alles zusammen würde {parameter} in 24 Stunden um {rise} steigen (höchstens erlaubt: {most}): Gemeinsam heben den Wert an: {plans}, obwohl jedes allein die Grenze einhält. Lassen Sie eines warten, bis das andere fertig ist, oder machen Sie es langsamer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would fall {fall} in 24 hours, of {most} at the most. Exchange more slowly, or bring the new water nearer.</source>
        <translation>{name} würde in 24 Stunden um {fall} sinken (höchstens erlaubt: {most}). Wechseln Sie langsamer, oder bringen Sie das frische Salzwasser näher heran.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Test it before, and change what moves it.</source>
        <translation>{name} gerät {bound} (bis dahin {day}), wohin kein Plan den Wert bringen darf. Testen Sie vorher, und ändern Sie, was ihn bewegt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound}, outside of what is usually kept.</source>
        <translation>{name} ist {bound}, außerhalb dessen, was üblich gehalten wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, out of what is usually kept.</source>
        <translation>{name} gerät {bound} (bis dahin {day}), aus dem heraus, was üblich gehalten wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would be used up in {day}.</source>
        <translation>{name} reicht noch {day}, dann wäre nichts mehr übrig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is raised by {plans}: {rise} per day together.</source>
        <translation>{name} wird angehoben durch {plans}: zusammen {rise} pro Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would come to {comes_to} in {day}, not to the target of {target}: {plans} raise it as well. Plan it lower or slower, or let the other wait.</source>
        <translation>{name} käme auf {comes_to} (bis dahin {day}), nicht auf den Zielwert {target}: Auch dies hebt den Wert an: {plans}. Planen Sie niedriger oder langsamer, oder lassen Sie das andere warten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Two ways to reckon all plans together differ for {what}, so nothing is said. Please report this log.</source>
        <translation>Zwei Rechenwege für alle Pläne zusammen weichen voneinander ab ({what}), deshalb wird nichts angegeben. Bitte melden Sie dieses Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Doses at one moment</source>
        <translation>Dosen zu einem Zeitpunkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>nothing is dosed</source>
        <extracomment>view, UpkeepSheet._row</extracomment>
        <translation>nichts wird dosiert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>a bottle, by its label</source>
        <extracomment>_row</extracomment>
        <translation>eine Flasche, laut Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{in_24_hours} per hour</source>
        <extracomment>_row</extracomment>
        <translation>{in_24_hours} pro Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{share} of the use; the other additives bring the rest</source>
        <extracomment>_row</extracomment>
        <translation>{share} des Verbrauchs; die anderen Zusätze bringen den Rest</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>with {exchange_fraction} exchanged a day</source>
        <extracomment>_spans</extracomment>
        <translation>mit {exchange_fraction} Wasserwechsel am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Salt left behind</source>
        <extracomment>_spans</extracomment>
        <translation>Zurückbleibendes Salz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Of it sodium chloride</source>
        <extracomment>_spans</extracomment>
        <translation>Davon Natriumchlorid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {steady} in the tank</source>
        <extracomment>_salt</extracomment>
        <translation>bei {steady} im Becken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} more</source>
        <extracomment>_change</extracomment>
        <translation>{amount} mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} less</source>
        <extracomment>_change</extracomment>
        <translation>{amount} weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{drift} than in the new water</source>
        <extracomment>_settles</extracomment>
        <translation>{drift} als im frischen Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {drift}</source>
        <extracomment>_settles</extracomment>
        <translation>bei {drift}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>skeleton takes {of_skeleton}, one mole to two equivalents</source>
        <extracomment>_lines</extracomment>
        <translation>Skelett nimmt {of_skeleton}, ein Mol auf zwei Äquivalente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as used</source>
        <extracomment>_lines</extracomment>
        <translation>Calcium zu Alkalinität, verbraucht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as dosed</source>
        <extracomment>_lines</extracomment>
        <translation>Calcium zu Alkalinität, dosiert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>what all doses bring of both</source>
        <extracomment>_lines</extracomment>
        <translation>was alle Dosen von beidem bringen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Left of the use of {parameter}</source>
        <extracomment>_lines</extracomment>
        <translation>Vom Verbrauch nicht gedeckt: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>by rounding the dose down</source>
        <extracomment>_lines</extracomment>
        <translation>durch Abrunden der Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{short} per day</source>
        <extracomment>_lines</extracomment>
        <translation>{short} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Sodium chloride</source>
        <extracomment>_lines</extracomment>
        <translation>Natriumchlorid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>one mole for every equivalent made good with a two-part</source>
        <extracomment>_lines</extracomment>
        <translation>ein Mol für jedes Äquivalent, das mit zwei Lösungen ausgeglichen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Water with the doses of 24 hours</source>
        <extracomment>_lines</extracomment>
        <translation>Wasser mit den Dosen von 24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{ph_nbs} now, before the air has evened it out</source>
        <extracomment>_lines</extracomment>
        <translation>{ph_nbs} jetzt, bevor die Luft es ausgeglichen hat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>pH after the doses of the fullest hour</source>
        <extracomment>_lines</extracomment>
        <translation>pH nach den Dosen der vollsten Stunde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{saturation} now</source>
        <extracomment>_lines</extracomment>
        <translation>{saturation} jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Aragonite saturation after them</source>
        <extracomment>_lines</extracomment>
        <translation>Aragonitsättigung danach</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} for {for_}</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} für {for_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>the bottle</source>
        <extracomment>_too_much</extracomment>
        <translation>die Flasche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} and the other additives bring</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} und die anderen Zusätze bringen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} brings</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} bringt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} {brought} of {name}, more than the {used} used. Choose another additive, or take {name} off the list and watch it rise.</source>
        <extracomment>_too_much</extracomment>
        <translation>{head} {brought} {name}, mehr als die verbrauchten {used}. Wählen Sie einen anderen Zusatz, oder nehmen Sie {name} von der Liste, und beobachten Sie den Anstieg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Each dose for {parameter} would be {dose}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Jede Dosis für {parameter} wäre {dose}, unter der kleinsten genauen Dosis der Pumpe von {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} would rise by {rise}, more than the {most} it may.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{parameter} würde um {rise} steigen, mehr als die erlaubten {most}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} The doses of the correction make good the daily use already: begin this upkeep when it is over.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Die Dosen der Korrektur gleichen den Tagesverbrauch schon aus: Beginnen Sie diese Versorgung, wenn die Korrektur zu Ende ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose an additive that brings less of it.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Wählen Sie einen Zusatz, der davon weniger bringt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Keep the doses for {first} and for {second} at least {minutes} apart, and let them flow in at different places: together they fall out.</source>
        <extracomment>_apart</extracomment>
        <translation>Halten Sie die Dosen für {first} und für {second} mindestens {minutes} auseinander, und lassen Sie sie an verschiedenen Stellen einfließen: Zusammen fallen sie aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} With these doses a day they come no further apart than {widest}: choose the same number for both, {most_doses} or fewer.</source>
        <extracomment>_apart</extracomment>
        <translation>{head} Mit diesen Dosen am Tag liegen sie nicht weiter als {widest} auseinander: Wählen Sie für beide dieselbe Zahl, {most_doses} oder weniger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Add a value to keep, with its use per day, its additive and its pump.</source>
        <translation>Fügen Sie einen Wert hinzu, der gehalten werden soll, mit seinem Verbrauch pro Tag, seinem Zusatz und seiner Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} stands twice on the list. Keep each value with one additive.</source>
        <translation>{parameter} steht zweimal auf der Liste. Halten Sie jeden Wert mit nur einem Zusatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} has no use per day, so there is nothing to make good. Test it twice, some days apart, or take it off the list.</source>
        <translation>{parameter} hat keinen Verbrauch pro Tag, deshalb gibt es nichts auszugleichen. Testen Sie zweimal im Abstand von einigen Tagen, oder nehmen Sie den Wert von der Liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What is dosed for {first} and for {second} raises both in the same proportion, so one of them is enough. Take one off the list, or choose another additive.</source>
        <translation>Was für {first} und für {second} dosiert wird, hebt beide im gleichen Verhältnis an, deshalb reicht eines davon. Nehmen Sie eines von der Liste, oder wählen Sie einen anderen Zusatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>No doses of these additives make good {parameters} at once. Choose additives that raise one value each.</source>
        <translation>Keine Dosen dieser Zusätze gleichen {parameters} zugleich aus. Wählen Sie Zusätze, die je einen Wert anheben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A dose of {single} for {parameter} rounded down to steps of {step} is nothing. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Eine Dosis von {single} für {parameter}, abgerundet auf Schritte von {step}, ist nichts. Wählen Sie weniger Dosen am Tag, einen feineren Schritt oder eine schwächere Stammlösung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} needs {needs} in 24 hours, and its pump can give {most}. Use a stronger stock or a faster pump.</source>
        <translation>{parameter} braucht {needs} in 24 Stunden, und die Pumpe dafür kann {most} fördern. Verwenden Sie eine stärkere Stammlösung oder eine schnellere Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one moment would raise {parameter} by {rise}, more than the {most} they may. Choose more doses a day.</source>
        <translation>Die Dosen eines Zeitpunkts würden {parameter} um {rise} anheben, mehr als die erlaubten {most}. Wählen Sie mehr Dosen am Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of 24 hours are {in_day}, but only {most} evaporate. Use stronger stocks, or something stronger than limewater.</source>
        <translation>Die Dosen von 24 Stunden sind {in_day}, aber nur {most} verdunsten. Verwenden Sie stärkere Stammlösungen oder etwas Stärkeres als Kalkwasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one hour would lift pH by {rise}, more than the {most} they may. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Die Dosen einer Stunde würden den pH um {rise} anheben, mehr als die erlaubten {most}. {per_day}Natriumhydrogencarbonat hebt ihn nicht sofort an.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH is {now} now and would come to {ph} after the doses of one hour; they must not take it above {most}. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>Der pH ist jetzt {now} und käme nach den Dosen einer Stunde auf {ph}; sie dürfen ihn nicht über {most} bringen. {per_day}Nehmen Sie Natriumhydrogencarbonat, oder dosieren Sie nachts und testen Sie dann den pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} after the doses of one hour. Above {most} calcium carbonate falls out. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>Die Aragonitsättigung ist jetzt {now} und käme nach den Dosen einer Stunde auf {saturation}. Über {most} fällt Calciumcarbonat aus. {per_day}Nehmen Sie Natriumhydrogencarbonat, oder dosieren Sie nachts und testen Sie dann den pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Calcium and alkalinity are used at {of_use}, but skeleton takes {of_skeleton}. A test may be wrong, or something falls out. Test both again.</source>
        <translation>Calcium und Alkalinität werden im Verhältnis {of_use} verbraucht, aber Skelett nimmt {of_skeleton}. Ein Test kann falsch sein, oder etwas fällt aus. Testen Sie beide noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A correction of {parameter} goes on for {days} more days. Its doses make good the daily use already: begin this upkeep when it is over.</source>
        <translation>Eine Korrektur von {parameter} dauert noch {days} Tage. Ihre Dosen gleichen den Tagesverbrauch schon aus: Beginnen Sie diese Versorgung, wenn sie zu Ende ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The other additives bring all of the {parameter} that is used, so nothing is dosed for it.</source>
        <translation>Die anderen Zusätze bringen alles, was an {parameter} verbraucht wird, deshalb wird dafür nichts dosiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Skeleton takes calcium and alkalinity together: {parameter} falls by {falls}, and nothing on the list makes it good.</source>
        <translation>Skelett nimmt Calcium und Alkalinität zusammen: {parameter} sinkt um {falls}, und nichts auf der Liste gleicht das aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Rounding down to steps of {step} leaves {lost} of the dose for {parameter} out. Use fewer doses a day or a finer step.</source>
        <translation>Das Abrunden auf Schritte von {step} lässt {lost} der Dosis für {parameter} weg. Verwenden Sie weniger Dosen am Tag oder einen feineren Schritt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What else is in the bottle for {parameter} is not known, so what it leaves behind is not counted.</source>
        <translation>Was sonst in der Flasche für {parameter} ist, ist nicht bekannt, deshalb ist nicht mitgezählt, was sie zurücklässt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH was not measured, so {ph} is assumed, and only its rise in an hour is limited. Measure it.</source>
        <translation>Der pH wurde nicht gemessen, deshalb wird {ph} angenommen, und nur sein Anstieg in einer Stunde ist begrenzt. Messen Sie ihn.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This tank is invented and nothing of it is kept. Its alkalinity has fallen to 6.8 dKH and is to come back to 8.4, slowly. You type what the keeper knows, and see what follows.</source>
        <translation>Dieses Becken ist erfunden, und nichts davon wird aufbewahrt. Seine Alkalinität ist auf 6,8 dKH gesunken und soll auf 8,4 zurückkommen, langsam. Sie geben ein, was der Halter weiß, und sehen, was daraus folgt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 6.8, what the test showed, and press Enter.</source>
        <translation>{field}: Geben Sie 6,8 ein, was der Test ergab, und drücken Sie die Eingabetaste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type now. An old reading is no basis for a correction.</source>
        <translation>{field}: Geben Sie „jetzt“ ein. Ein alter Messwert ist keine Grundlage für eine Korrektur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 340, the litres of water without rock and sand.</source>
        <translation>{field}: Geben Sie 340 ein, die Liter Wasser ohne Gestein und Sand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 8.4, where it should come to rest.</source>
        <translation>{field}: Geben Sie 8,4 ein, wo der Wert zur Ruhe kommen soll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 0.9. So much the corals take out of the water in a day.</source>
        <translation>{field}: Geben Sie 0,9 ein. So viel nehmen die Korallen an einem Tag aus dem Wasser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: open the list with Space, go to {wanted} with the arrow keys, press Enter.</source>
        <translation>{field}: Öffnen Sie die Liste mit der Leertaste, gehen Sie mit den Pfeiltasten zu {wanted}, drücken Sie die Eingabetaste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Read the cautions first. {field}: type 106, the grams on the scale.</source>
        <translation>Lesen Sie zuerst die Warnhinweise. {field}: Geben Sie 106 ein, die Gramm auf der Waage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 1. The jug was filled up to the litre mark.</source>
        <translation>{field}: Geben Sie 1 ein. Der Kanister wurde bis zur Litermarke aufgefüllt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 24. So much came out of the pump in a minute.</source>
        <translation>{field}: Geben Sie 24 ein. So viel kam in einer Minute aus der Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This is the answer: {answer}. Below it stands which limit sets the pace, and on the chart what the water will do. Change a figure at the left and see the answer follow.</source>
        <translation>Das ist die Antwort: {answer}. Darunter steht, welche Grenze das Tempo bestimmt, und im Diagramm, was das Wasser tun wird. Ändern Sie links eine Zahl, und sehen Sie, wie die Antwort folgt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Press {button}: the card that would hang on the stand. Close it again when you have read it.</source>
        <translation>Drücken Sie {button}: die Karte, die am Unterschrank hängen würde. Schließen Sie sie wieder, wenn Sie sie gelesen haben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>That was the main job. With your own tank the card is saved or printed from the same row of buttons. F1 in any field says why it is there.</source>
        <translation>Das war die Hauptaufgabe. Bei Ihrem eigenen Becken wird die Karte mit derselben Reihe von Knöpfen gespeichert oder gedruckt. F1 in einem Feld sagt, warum es da ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Invented tank, step {number} of {all}</source>
        <extracomment>counted</extracomment>
        <translation>Erfundenes Becken, Schritt {number} von {all}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {out} a day go out, {into} come in.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>Auf dem Blatt Wasserwechsel steht: {out} gehen am Tag hinaus, {into} kommen hinein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {litres} a day, out and in alike.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>Auf dem Blatt Wasserwechsel steht: {litres} am Tag, hinaus und hinein gleich viel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet does not say yet how much; no exchange is reckoned with.</source>
        <translation>Auf dem Blatt Wasserwechsel steht noch nicht, wie viel; es wird mit keinem Wasserwechsel gerechnet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{minutes}&#xa0;min ago</source>
        <extracomment>age_words</extracomment>
        <translation>vor {minutes}&#xa0;min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{hours}&#xa0;h ago</source>
        <extracomment>age_words</extracomment>
        <translation>vor {hours}&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{days}&#xa0;days ago</source>
        <extracomment>age_words</extracomment>
        <translation>vor {days}&#xa0;Tagen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: which is the day and which the month? Write the date like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“: Was ist der Tag und was der Monat? Schreiben Sie das Datum wie 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: write the hour from 00 to 23, like today 18:30.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“: Schreiben Sie die Stunde von 00 bis 23, wie heute 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” has no hour. Write it like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“ hat keine Stunde. Schreiben Sie es wie 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” does not exist in the calendar or on the clock.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“ gibt es im Kalender oder auf der Uhr nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is still to come. Write when it was measured.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“ liegt noch in der Zukunft. Schreiben Sie, wann gemessen wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: today or yesterday?</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“: heute oder gestern?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” comes twice, or not at all, on the night the clocks change. Choose another minute.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“ kommt in der Nacht der Zeitumstellung zweimal oder gar nicht vor. Wählen Sie eine andere Minute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is not a time. Write today 08:00, yesterday 18:30 or 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>„{text}“ ist keine Zeitangabe. Schreiben Sie heute 08:00, gestern 18:30 oder 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>today</source>
        <comment>in a narrow field</comment>
        <extracomment>_short_today</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>more than {low}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>mehr als {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start}, up to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start}, bis zu {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start} to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start} bis {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{number} is outside what can be entered here: {joined}.</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{number} liegt außerhalb dessen, was hier eingegeben werden kann: {joined}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is a value, not a rate. Write {per_day}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>„{unit}“ ist ein Wert, keine Rate. Schreiben Sie {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is not a unit of this field. Write {choices}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>„{unit}“ ist keine Einheit dieses Feldes. Schreiben Sie {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill in {field_words}.</source>
        <translation>Bitte ausfüllen: {field_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a number. Write it like {example}.</source>
        <translation>„{text}“ ist keine Zahl. Schreiben Sie sie wie {example}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}”: write the number without spaces between its digits.</source>
        <translation>„{text}“: Schreiben Sie die Zahl ohne Leerzeichen zwischen den Ziffern.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” has more than one point or comma. Write one decimal mark and no thousands.</source>
        <translation>„{text}“ hat mehr als einen Punkt oder ein Komma. Schreiben Sie nur ein Dezimalzeichen und keine Tausenderzeichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” ends with a decimal mark. Write the digits after it, or leave it out.</source>
        <translation>„{text}“ endet mit einem Dezimalzeichen. Schreiben Sie die Ziffern dahinter, oder lassen Sie es weg.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Write the value itself, without a plus sign.</source>
        <translation>Schreiben Sie den Wert selbst, ohne Pluszeichen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>That number has more digits than can be kept. Use 40 or fewer.</source>
        <translation>Diese Zahl hat mehr Ziffern, als aufbewahrt werden können. Verwenden Sie 40 oder weniger.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” can be read in two ways: {r}.</source>
        <extracomment>for 1: “{text}”: is {readings} meant? Write it without a thousands mark.</extracomment>
        <translation>
            <numerusform>„{text}“: Ist {readings} gemeint? Schreiben Sie es ohne Tausenderzeichen.</numerusform>
            <numerusform>„{text}“ lässt sich auf zwei Arten lesen: {r}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” must be a whole number.</source>
        <translation>„{text}“ muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>The unit is missing. Write {choices} after the number.</source>
        <translation>Die Einheit fehlt. Schreiben Sie {choices} hinter die Zahl.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which gallon? Write US gal (3.785&#xa0;L) or imperial gal (4.546&#xa0;L).</source>
        <translation>Welche Gallone? Schreiben Sie US gal (3,785&#xa0;L) oder imperial gal (4,546&#xa0;L).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>At which temperatures? Write {choices}, as on the hydrometer.</source>
        <translation>Bei welchen Temperaturen? Schreiben Sie {choices}, wie auf dem Aräometer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” does not say as what it counts. Write {choices}.</source>
        <translation>„{unit}“ sagt nicht, als was gezählt wird. Schreiben Sie {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no unit. Write it in quotes with its unit.</source>
        <translation>{text} hat keine Einheit. Schreiben Sie es in Anführungszeichen mit Einheit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a time. Write it like 2026-11-25 08:00.</source>
        <translation>„{text}“ ist keine Zeitangabe. Schreiben Sie sie wie 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no time zone. Write the offset, like 2026-11-25T08:00:00+00:00.</source>
        <translation>{text} hat keine Zeitzone. Schreiben Sie die Abweichung dazu, wie 2026-11-25T08:00:00+00:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Write {choices}.</source>
        <translation>„{text}“ ist nicht bekannt. Schreiben Sie {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not one of the choices. Write {choices}.</source>
        <translation>„{text}“ gehört nicht zur Auswahl. Schreiben Sie {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which “{text}”? The bag says one of: {choices}.</source>
        <translation>Welches „{text}“? Auf dem Beutel steht eines davon: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{chemical} does not raise {parameter}. Choose another additive.</source>
        <translation>{chemical} hebt {parameter} nicht an. Wählen Sie einen anderen Zusatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>This bottle</source>
        <translation>Diese Flasche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Known are: {choices}.</source>
        <translation>„{text}“ ist nicht bekannt. Bekannt sind: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL of stock carries</source>
        <translation>1&#xa0;mL Stammlösung enthält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL raises</source>
        <translation>1&#xa0;mL hebt an um</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the daily rise sets the pace</source>
        <translation>der Anstieg am Tag bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the size of a single dose sets the pace</source>
        <translation>die Größe einer Einzeldosis bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump sets the pace</source>
        <translation>die Pumpe bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the rise of pH in an hour sets the pace</source>
        <translation>der pH-Anstieg in einer Stunde bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the highest pH sets the pace</source>
        <translation>der höchste pH bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>aragonite saturation sets the pace</source>
        <translation>die Aragonitsättigung bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what evaporates sets the pace</source>
        <translation>die Verdunstung bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what was given already sets the pace</source>
        <translation>das schon Gegebene bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{measured} and {untested} untested</source>
        <extracomment>_from</extracomment>
        <translation>{measured} und {untested} ungetestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source> and {use} used</source>
        <extracomment>working</extracomment>
        <translation> und {use} Verbrauch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Rise wanted</source>
        <extracomment>working</extracomment>
        <translation>Gewünschter Anstieg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{target} less {answer}</source>
        <extracomment>working</extracomment>
        <translation>{target} minus {answer}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Pace</source>
        <extracomment>working</extracomment>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>limited by what else it raises</source>
        <extracomment>working</extracomment>
        <translation>begrenzt durch das, was es sonst anhebt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} per day</source>
        <extracomment>working</extracomment>
        <translation>{rise} pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>To be given in 24 hours</source>
        <extracomment>working</extracomment>
        <translation>In 24 Stunden zu geben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} rise{used}</source>
        <extracomment>working</extracomment>
        <translation>{rise} Anstieg{used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{to_give} ÷ {per} per mL</source>
        <extracomment>working</extracomment>
        <translation>{to_give} ÷ {per} pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Each dose</source>
        <extracomment>working</extracomment>
        <translation>Jede Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{single_dose}, set {dose}</source>
        <extracomment>working</extracomment>
        <translation>{single_dose}, eingestellt {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left after use</source>
        <extracomment>working</extracomment>
        <translation>Nach Verbrauch übrig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what each dose leaves in the water until the next</source>
        <extracomment>working</extracomment>
        <translation>was jede Dosis bis zur nächsten im Wasser lässt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Number of doses</source>
        <extracomment>working</extracomment>
        <translation>Anzahl der Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{climb} ÷ {net}, whole doses only</source>
        <extracomment>working</extracomment>
        <translation>{climb} ÷ {net}, nur ganze Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left to the target</source>
        <extracomment>working</extracomment>
        <translation>Rest bis zum Zielwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by rounding down</source>
        <extracomment>working</extracomment>
        <translation>durch Abrunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump runs</source>
        <extracomment>working</extracomment>
        <translation>Pumpe läuft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{run_time} each</source>
        <extracomment>working</extracomment>
        <translation>je {run_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Afterwards</source>
        <extracomment>working</extracomment>
        <translation>Danach</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{use} used per day ÷ {per} per mL ÷ {with_unit}</source>
        <extracomment>working</extracomment>
        <translation>{use} Verbrauch pro Tag ÷ {per} pro mL ÷ {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Second reckoning</source>
        <extracomment>working</extracomment>
        <translation>Zweite Rechnung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>all doses given one by one</source>
        <extracomment>working</extracomment>
        <translation>alle Dosen einzeln gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>ends at {end_value}</source>
        <extracomment>working</extracomment>
        <translation>endet bei {end_value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>9 times in 10 it ends</source>
        <extracomment>working</extracomment>
        <translation>In 9 von 10 Fällen endet es bei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>in steps of {step}, rounded down</source>
        <extracomment>_rounding</extracomment>
        <translation>in Schritten von {step}, abgerundet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses; one smaller dose fits the rise wanted, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} Dosen; eine kleinere Dosis passt zum gewünschten Anstieg, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} Dosen, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g of salt</source>
        <extracomment>_stock_line</extracomment>
        <translation>g Salz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{carried} per mL</source>
        <extracomment>_stock_line</extracomment>
        <translation>{carried} pro mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{mass}; {grams} in {litres}{pure} × {each}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{mass}; {grams} in {litres}{pure} × {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{parts}, in {litres}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{parts}, in {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{dose} raise {water} by {rise}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{dose} heben {water} um {rise} an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by its label, {how}</source>
        <extracomment>_stock_line</extracomment>
        <translation>laut Etikett, {how}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g per mol</source>
        <extracomment>_portion_words</extracomment>
        <translation>g pro mol</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{unit} per g</source>
        <extracomment>_portion_words</extracomment>
        <translation>{unit} pro g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ ({litres} × {water})</source>
        <extracomment>_spread_line</extracomment>
        <translation>dies ÷ ({litres} × {water})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres}</source>
        <extracomment>_spread_line</extracomment>
        <translation>dies ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres} × {factor} per {canonical}</source>
        <extracomment>_spread_line</extracomment>
        <translation>dies ÷ {litres} × {factor} pro {canonical}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the volume</source>
        <extracomment>_largest_source</extracomment>
        <translation>das Volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the strength</source>
        <extracomment>_largest_source</extracomment>
        <translation>die Stärke</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the largest part of the doubt ({share}) comes from {source}</source>
        <extracomment>_largest_source</extracomment>
        <translation>größter Anteil der Unsicherheit ({share}): {source}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Emergency card</source>
        <translation>Notfallkarte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The way down</source>
        <translation>Der Weg zum Senken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Electricity</source>
        <translation>Elektrizität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <location filename="../chemicals.toml"/>
        <source>Danger</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>Gefahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The same in full</source>
        <translation>Dasselbe ausführlich</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A6 landscape</source>
        <translation>A6 quer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A4 with two labels</source>
        <translation>A4 mit zwei Etiketten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>Letter with two labels</source>
        <translation>Letter mit zwei Etiketten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>{width} x {height} mm</source>
        <extracomment>print_card</extracomment>
        <translation>{width} x {height} mm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>{title}, {system}, plan {plan_id}</source>
        <extracomment>title_of</extracomment>
        <translation>{title}, {system}, Plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>Contingency cards, {system}, plan {plan_id}</source>
        <extracomment>title_of</extracomment>
        <translation>Störungskarten, {system}, Plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>batch {batch}</source>
        <extracomment>title_of</extracomment>
        <translation>Ansatz {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Figure read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>goes on</source>
        <translation>Fortsetzung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Timetable</source>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>Pump and additive</source>
        <translation>Pumpe und Zusatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <source>Clocks</source>
        <translation>Uhren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>All plans</source>
        <translation>Alle Pläne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>In a week</source>
        <translation>In einer Woche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Goes on from the page before:</source>
        <translation>Fortsetzung der vorigen Seite:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Handle with care</source>
        <translation>Vorsicht beim Umgang</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Test again</source>
        <translation>Nachtest</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Refill</source>
        <translation>Nachfüllen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Totals</source>
        <translation>Summen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Whole jug</source>
        <translation>Ganzer Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>50&#xa0;mm at full size</source>
        <translation>50&#xa0;mm im Original</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>h after the reading</source>
        <translation>h nach dem Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>days after the reading</source>
        <translation>Tage nach dem Messwert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>{page} of {pages}</source>
        <extracomment>page_of</extracomment>
        <translation>{page} von {pages}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Before you leave</source>
        <translation>Vor der Abreise</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away until</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Abwesend bis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>like 2026-12-20 18:00</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>wie 2026-12-20 18:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Going away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Due already</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Schon fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Falls into the time away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Fällt in die Abwesenheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away {until}.</source>
        <extracomment>AbsencePage.show_absence</extracomment>
        <translation>Abwesend {until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>The question has changed</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>Die Frage hat sich geändert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>How this was worked out</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide the working</source>
        <translation>Rechenweg ausblenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide what else it does</source>
        <translation>Ausblenden, was es sonst bewirkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>There is nothing to show yet.</source>
        <extracomment>AnswerPanel.set_stale</extracomment>
        <translation>Es gibt noch nichts zu zeigen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_parts.py"/>
        <source>No figure yet</source>
        <extracomment>Figure.set_figure</extracomment>
        <translation>Noch keine Zahl</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>When</source>
        <extracomment>CalibrationStep.__init__, CorrectForm._water, LevelForm.__init__</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>What</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Holds</source>
        <translation>Enthält</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Backups</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Restore this copy</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Diese Kopie &amp;wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Save a copy elsewhere</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Kopie anderswo &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Open the folder</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Ordner öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>One log for several &amp;laptops</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Ein Protokoll für mehrere &amp;Laptops</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Yes, restore it</source>
        <extracomment>BackupsWindow.__init__, NoticePage.__init__</extracomment>
        <translation>&amp;Ja, wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Keep the log as it is</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Protokoll lassen, wie es ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Copies of the log</source>
        <extracomment>BackupsWindow._list</extracomment>
        <translation>Kopien des Protokolls</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Choose a copy of the list that can be read.</source>
        <extracomment>BackupsWindow._selected</extracomment>
        <translation>Wählen Sie eine Kopie der Liste, die gelesen werden kann.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Save a copy of the log</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Kopie des Protokolls speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Log (*.sqlite)</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Protokoll (*.sqlite)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Evenwater {date}.sqlite</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Evenwater {date}.sqlite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run {number} lasted</source>
        <extracomment>Runs.__init__</extracomment>
        <translation>Lauf {number} dauerte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run {number} gave</source>
        <extracomment>Runs.__init__</extracomment>
        <translation>Lauf {number} ergab</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run it {text}&#xa0;s</source>
        <extracomment>Runs.propose</extracomment>
        <translation>{text}&#xa0;s laufen lassen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Calibration</source>
        <extracomment>CalibrationStep.__init__, calibration</extracomment>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>&amp;New calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>&amp;Neue Kalibrierung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Remove calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Kalibrierung entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Running hours</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Laufstunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Measured with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Finest line of the cylinder</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Teilung des Zylinders</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Last digit of the scale</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Letzte Stelle der Waage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Water</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>its density counts</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>seine Dichte zählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>By</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Timed with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Zeit genommen mit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Doses in a run</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Dosen in einem Lauf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Air pressure</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>The head has run {said}.</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>Der Pumpenkopf ist {said} gelaufen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Take {text}&#xa0;h</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>{text}&#xa0;h nehmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>NOT A PLAN</source>
        <translation>KEIN PLAN</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Save card</source>
        <extracomment>CardActions.__init__, QuestionWindow.__init__</extracomment>
        <translation>Karte &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Save the dose card as a PDF file</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>Die Dosierkarte als PDF-Datei speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Print card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>Karte &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Look at card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>Karte &amp;ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>There is no plan yet: the sheet has no answer.</source>
        <extracomment>CardActions.__init__, CardActions.set_plan, CardActions.forget</extracomment>
        <translation>Es gibt noch keinen Plan: Das Blatt hat keine Antwort.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>dose card {plan_id}.pdf</source>
        <extracomment>CardActions._save</extracomment>
        <translation>Dosierkarte {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} saved as {path}. Take down the older one.</source>
        <extracomment>CardActions.write</extracomment>
        <translation>Karte {plan_id} gespeichert als {path}. Nehmen Sie die ältere ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No printer is set up on this computer. Save the card as PDF instead.</source>
        <extracomment>CardActions._print</extracomment>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Speichern Sie die Karte stattdessen als PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} sent to the printer. Take down the older one.</source>
        <extracomment>CardActions.send</extracomment>
        <translation>Karte {plan_id} an den Drucker gesendet. Nehmen Sie die ältere ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No card is made. {why}</source>
        <extracomment>CardActions._allowed</extracomment>
        <translation>Es wird keine Karte erstellt. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_paper.py"/>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>Letter</source>
        <extracomment>card_paper, PageActions.paper</extracomment>
        <translation>Letter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <location filename="../glossary.toml"/>
        <source>Dose card</source>
        <extracomment>CardPreview.__init__, dose card</extracomment>
        <translation>Dosierkarte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>Paper</source>
        <extracomment>CardPreview.__init__</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>As a copier sees it, &amp;black and white only</source>
        <extracomment>CardPreview.__init__</extracomment>
        <translation>Wie ein Kopierer es sieht, nur sch&amp;warz und weiß</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>The first {count} of {made} pages; all of them are printed and saved.</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Die ersten {count} von {made} Seiten; gedruckt und gespeichert werden alle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>Page {page} of {made}: {title}</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Seite {page} von {made}: {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Drag the ring, or press Shift and an arrow key:</source>
        <translation>Ziehen Sie den Ring, oder Umschalt und Pfeiltaste:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Chart of the correction</source>
        <extracomment>RampChart.__init__</extracomment>
        <translation>Diagramm der Korrektur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>This is the fastest allowed. </source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>Das ist das schnellste erlaubte Tempo. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>{held}Reaches {target} on {ends}. Escape takes it back.</source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>{held}Erreicht {target} am {ends}. Escape nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>Wed 28 Nov</source>
        <extracomment>time_ticks</extracomment>
        <translation>Mi 28. Nov</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>May 2026</source>
        <extracomment>long_ticks</extracomment>
        <translation>Mai 2026</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;drawing (SVG)</source>
        <translation>Als &amp;Zeichnung speichern (SVG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;picture (PNG)</source>
        <translation>Als &amp;Bild speichern (PNG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save the &amp;figures (CSV)</source>
        <translation>Za&amp;hlen speichern (CSV)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Drawing (*.svg)</source>
        <translation>Zeichnung (*.svg)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Spreadsheet as CSV (*.csv)</source>
        <translation>Tabelle als CSV (*.csv)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart</source>
        <translation>Dieses Diagramm speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart as a drawing, a picture or its figures (Ctrl+Shift+S)</source>
        <translation>Dieses Diagramm als Zeichnung, als Bild oder seine Zahlen speichern (Strg+Umschalt+S)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Saved {name}.</source>
        <translation>{name} gespeichert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>The chart could not be written there. Choose another folder.</source>
        <translation>Das Diagramm konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_paint.py"/>
        <source>Title</source>
        <extracomment>picture</extracomment>
        <translation>Title</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_paint.py"/>
        <source>Description</source>
        <extracomment>picture</extracomment>
        <translation>Description</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <source>mL each dose</source>
        <extracomment>Picture.arrange</extracomment>
        <translation>mL pro Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <source>aragonite</source>
        <extracomment>Picture._show_water</extracomment>
        <translation>Aragonit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines; Shift and an arrow key choose a slower pace.</source>
        <translation>Pfeiltasten lesen die Linien; Umschalt und eine Pfeiltaste wählen ein langsameres Tempo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines.</source>
        <translation>Pfeiltasten lesen die Linien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>plan {plan} {view_unit} ({low} to {high})</source>
        <extracomment>reading_at</extracomment>
        <translation>Plan {plan} {view_unit} ({low} bis {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>pH {before}, after a dose {after}</source>
        <extracomment>_water_at</extracomment>
        <translation>pH {before}, nach einer Dosis {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{at} {m_value} {view_unit}, {place} the band</source>
        <extracomment>_retests</extracomment>
        <translation>{at} {m_value} {view_unit}, Band: {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Readings: {said}. </source>
        <extracomment>_retests</extracomment>
        <translation>Messwerte: {said}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>No reading since the start. </source>
        <extracomment>_retests</extracomment>
        <translation>Kein Messwert seit dem Start. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{title} from {measured} to {target} {view_unit}, reached on {ramp_end}, with {size} doses shown. At the end of the chart: {ends}. {view}{keys_followed}</source>
        <extracomment>in_words</extracomment>
        <translation>{title} von {measured} auf {target} {view_unit}, erreicht am {ramp_end}, mit {size} gezeigten Dosen. Am Ende des Diagramms: {ends}. {view}{keys_followed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/clock_field.py"/>
        <source>{quantity}, time of day</source>
        <extracomment>ClockField.set_spoken_name</extracomment>
        <translation>{quantity}, Uhrzeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>There is no plan to follow now, so there are no contingency cards. Take down those of an older plan.</source>
        <translation>Es gibt jetzt keinen Plan zu befolgen, deshalb gibt es keine Störungskarten. Nehmen Sie die eines älteren Plans ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Contingency cards</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Störun&amp;gskarten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Four cards for whoever looks after the tank: high test, missed days, failed pump, new batch.</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Vier Karten für den, der nach dem Becken sieht: hoher Messwert, ausgefallene Tage, ausgefallene Pumpe, neuer Ansatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Save all as PDF</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Alle als PDF &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Print all</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Alle &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} saved as {path}. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.write</extracomment>
        <translation>Störungskarten von Plan {plan_id} gespeichert als {path}. Hängen Sie sie neben seine Dosierkarte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} sent to the printer. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.send</extracomment>
        <translation>Störungskarten von Plan {plan_id} an den Drucker gesendet. Hängen Sie sie neben seine Dosierkarte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>contingency cards {plan_id}.pdf</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>Störungskarten {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Save contingency cards as PDF</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>Störungskarten als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>No printer is set up on this computer. Save the cards as PDF instead.</source>
        <extracomment>ContingencyActions._print</extracomment>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Speichern Sie die Karten stattdessen als PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The water</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Das Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Anheben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>How the volume is known</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Herkunft des Volumens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Measured</source>
        <extracomment>CorrectForm._water, LogForm._make_fields</extracomment>
        <translation>Gemessen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Net volume</source>
        <extracomment>CorrectForm._water, net volume</extracomment>
        <translation>Nettovolumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Within</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Genau auf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Alkalinity now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Alkalinität jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Calcium now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Calcium jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Evaporates</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Verdunstet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Name of the system</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Name des Systems</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The change</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Die Änderung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise to</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Anheben auf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>At most</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Höchstens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Used by the tank</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Verbrauch des Beckens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Needed only to go beyond the recommended rise; printed on the card.</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Nur nötig, um über den empfohlenen Anstieg hinauszugehen; steht auf der Karte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Reason for a faster rise</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Grund, falls schneller</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The additive</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Der Zusatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New &amp;jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Neuer &amp;Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Kanister entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Jug on the shelf</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Kanister im Regal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>What is in it</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Was darin ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>And of the second</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Und vom zweiten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed on</source>
        <extracomment>CorrectForm._additive, StockForm._label</extracomment>
        <translation>Angesetzt am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>By its label, a dose of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Laut Etikett: Dosis von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>in water of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>in Wasser von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>raises by</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>hebt an um</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Name of the jug</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Name des Kanisters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Reinheit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Coolest it gets</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Kühlste Temperatur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>The pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Die Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New p&amp;ump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Neue P&amp;umpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Pumpe entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Flow</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Doses a day</source>
        <extracomment>CorrectForm._pump, PumpForm._pump, TimetableForm._make</extracomment>
        <translation>Dosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Step</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Schritt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Runs at most</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Läuft höchstens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Name of the pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Name der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed jug</source>
        <translation>Kanister ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/foods_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed pump</source>
        <extracomment>FoodsRecords.pumps</extracomment>
        <translation>Pumpe ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>This batch is not in the jug yet. Put it in on the Stocks sheet before a card is made.</source>
        <translation>Dieser Ansatz ist noch nicht im Kanister. Geben Sie ihn auf dem Blatt Stammlösungen hinein, bevor eine Karte erstellt wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>The ramp appears here as soon as the question is complete.</source>
        <translation>Die Rampe erscheint hier, sobald die Frage vollständig ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No jug is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>Es ist kein Kanister gewählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No pump is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>Es ist keine Pumpe gewählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Add a system to begin.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Fügen Sie zuerst ein System hinzu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No plan, so no ramp.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Kein Plan, also keine Rampe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Use {use}</source>
        <extracomment>CorrectSheet._offer_use</extracomment>
        <translation>{use} verwenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Spreadsheet as CSV (*.csv *.CSV *.tsv *.txt);;Every file (*)</source>
        <translation>Tabelle als CSV (*.csv *.CSV *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>PDF (*.pdf)</source>
        <extracomment>Dialogs.save_pdf</extracomment>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Choose a spreadsheet</source>
        <extracomment>Dialogs.open_csv</extracomment>
        <translation>Tabelle wählen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Calendar (*.ics)</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due soon</source>
        <translation>Bald fällig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>What is wrong and what is due</source>
        <extracomment>DutyList.__init__</extracomment>
        <translation>Was falsch ist und was fällig ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Save card as PDF</source>
        <translation>Karte als PDF &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Save emergency card as PDF</source>
        <translation>Notfallkarte als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Look at emergency card</source>
        <translation>Notfallkarte ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card</source>
        <extracomment>EmergencyActions.__init__</extracomment>
        <translation>Notfallkarte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card.pdf</source>
        <extracomment>EmergencyActions.file_name</extracomment>
        <translation>Notfallkarte.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Nothing to show yet. What is exchanged is entered at the left.</source>
        <translation>Noch nichts zu zeigen. Was gewechselt wird, geben Sie links ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>settles</source>
        <translation>pendelt sich ein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Chart of the exchange</source>
        <extracomment>ExchangeChart.__init__</extracomment>
        <translation>Diagramm des Wasserwechsels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>{spoken} The arrow keys read it day by day.</source>
        <extracomment>ExchangeChart.render, TogetherChart.render</extracomment>
        <translation>{spoken} Die Pfeiltasten lesen es Tag für Tag.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>natural seawater, assumed</source>
        <translation>Meerwasser, angenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>as the tank, assumed</source>
        <translation>wie das Becken, angenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>How it is said</source>
        <extracomment>ExchangeForm.__init__</extracomment>
        <translation>Wie es angegeben wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The two pumps</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Die beiden Pumpen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Out and in, each</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Hinaus und hinein, je</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Batch change</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Einzelwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Once in so many days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Abstand, Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old water out</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Altes Wasser hinaus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Frisches hinein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Kanister alt fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Kanister frisch fasst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Look ahead, days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Vorausschau, Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The new water</source>
        <extracomment>ExchangeForm._new_water</extracomment>
        <translation>Das frische Salzwasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The mixing bucket</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Der Mischeimer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in it</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Salzwasser darin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>By the label: salt mix</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Etikett: Salzmischung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>in so much water</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>in so viel Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>gives salinity</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>ergibt Salinität</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Salinity found</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Salinität gemessen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>when all is clear</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>wenn alles klar ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>What leaves besides</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>Was sonst entzogen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>{name}, per day</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>{name}, pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>by skimmer, algae, media</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>Abschäumer, Algen, Filter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No system yet. Add one in the list at the left.</source>
        <translation>Noch kein System. Fügen Sie eines in der Liste links hinzu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Enter what the two pumps move in a day.</source>
        <translation>Geben Sie ein, was die beiden Pumpen am Tag bewegen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The Upkeep sheet has no plan for what is used, so no dosing is reckoned with.</source>
        <translation>Das Blatt Versorgung hat keinen Plan für den Verbrauch, deshalb wird mit keinem Dosieren gerechnet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No figures of {names} yet: nothing is reckoned of it. See the Foods sheet.</source>
        <translation>Noch keine Zahlen für {names}: Davon ist nichts eingerechnet. Siehe Blatt Futter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Every value</source>
        <translation>Jeder Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The pair and its jugs</source>
        <translation>Das Pumpenpaar und seine Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>What the dosing plan becomes</source>
        <translation>Was aus dem Dosierplan wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To be known</source>
        <translation>Zu wissen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>Now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>Jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Settles at</source>
        <translation>Pendelt sich ein bei</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To keep it where it is</source>
        <translation>Um es zu halten, wo es ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>with it</source>
        <translation>mit Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>a day</source>
        <translation>am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show</source>
        <extracomment>ExchangeSheet.__init__, LogSheet.__init__</extracomment>
        <translation>Zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Open it on the &amp;Correct sheet</source>
        <extracomment>ExchangeSheet.__init__</extracomment>
        <translation>Auf dem Blatt &amp;Korrektur öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Correct {parameter}</source>
        <extracomment>FindActions._doings</extracomment>
        <translation>{parameter} korrigieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>on the {sheet} sheet</source>
        <extracomment>FindActions._elsewhere</extracomment>
        <translation>auf dem Blatt {sheet}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Explain the field with the focus</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Das Feld mit dem Fokus erklären</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the glossary</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Glossar zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the guide</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Anleitung zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Not possible now.</source>
        <extracomment>FindActions._why_not</extracomment>
        <translation>Jetzt nicht möglich.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Find an action, a sheet, a system, a jug, a pump or a word of the trade</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Aktion, Blatt, System, Kanister, Pumpe oder Fachwort finden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>What was found</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Was gefunden wurde</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>{n} found</source>
        <extracomment>for 1: {n} found; FinderPanel._search</extracomment>
        <translation>
            <numerusform>{n} gefunden</numerusform>
            <numerusform>{n} gefunden</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Nothing has these words.</source>
        <extracomment>FinderPanel._search</extracomment>
        <translation>Nichts enthält diese Wörter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>This plan was kept by another version and cannot be read, so it must not be followed. End it, then plan again from a fresh reading.</source>
        <translation>Dieser Plan wurde von einer anderen Version gespeichert und kann nicht gelesen werden, deshalb darf er nicht befolgt werden. Beenden Sie ihn, dann planen Sie neu aus einem frischen Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show the &amp;plan</source>
        <translation>&amp;Plan zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show a new &amp;correction</source>
        <translation>Neue &amp;Korrektur zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Readings since the start</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Messwerte seit dem Start</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Hide the readings</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Messwerte ausblenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Chart of the plan that is followed</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Diagramm des befolgten Plans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;Note a reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Messwert &amp;notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan a&amp;gain from the reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Aus dem Messwert neu p&amp;lanen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;End this plan</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Diesen Plan &amp;beenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>It is too high: see &amp;Recovery</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Zu hoch: siehe Ab&amp;hilfe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} cannot be read.</source>
        <extracomment>FollowPage._say</extracomment>
        <translation>Plan {plan_id} kann nicht gelesen werden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>There is no reading to go on from yet.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>Es gibt noch keinen Messwert, von dem aus es weitergeht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>No ramp can be drawn of it.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>Dafür lässt sich keine Rampe zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>The reading stands in the form. The plan goes on until another is started.</source>
        <extracomment>FollowPage._plan_again</extracomment>
        <translation>Der Messwert steht im Formular. Der Plan läuft weiter, bis ein anderer gestartet wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>stop rule</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Stopp-Regel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>ended by hand</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>von Hand beendet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Ended plan {plan_id} for {parameter}: {reason}.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Plan {plan_id} für {parameter} beendet: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} has ended. Take its card down and stop the pump.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Plan {plan_id} ist beendet. Nehmen Sie seine Karte ab, und stoppen Sie die Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>Chart of nitrate and phosphate</source>
        <extracomment>FoodsChart.__init__</extracomment>
        <translation>Diagramm von Nitrat und Phosphat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>{week}&#xa0;weeks</source>
        <extracomment>FoodsChart._paint</extracomment>
        <translation>{week}&#xa0;Wochen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Das Futter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Name of the food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Name des Futters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What it is</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Was es ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Opened on</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Geöffnet am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2026-11-25</source>
        <extracomment>FoodsForm._food, PumpForm._head, StockForm._label</extracomment>
        <translation>wie 2026-11-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Keeps once opened, days</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Hält geöffnet, Tage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as its label says</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>wie das Etikett sagt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Kept cold</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Kalt gehalten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>In the jug when opened</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Im Kanister beim Öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The label says</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Das Etikett sagt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Stickstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>als N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Phosphorus</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Phosphor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as P, not as P2O5</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>als P, nicht als P2O5</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Protein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>÷ 6.25 is nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>÷ 6,25 ist Stickstoff</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen, if it says so</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Stickstoff, wenn genannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N; goes before protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>als N; hat Vorrang vor Protein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Density</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Dichte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as heavy as water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>so schwer wie Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>It raises</source>
        <extracomment>FoodsForm._carries, StockForm._contents</extracomment>
        <translation>Es hebt an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>So many mL</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>So viele mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>raise so much water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>für so viel Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Der Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Given in a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Am Tag gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Feedings a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Fütterungen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or the pump's doses a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>oder Pumpendosen am Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Is it given</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Wird es gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By which pump</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Mit welcher Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By hand, or another pump</source>
        <extracomment>FoodsForm._day, FoodsForm.set_pumps</extracomment>
        <translation>Von Hand oder andere Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The line</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>Die Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, inside</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Leitung, innen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or as its pump has it</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>oder wie bei der Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, length</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Leitung, Länge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>from jug to water</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>vom Kanister zum Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>No food yet. Press Add a food.</source>
        <translation>Noch kein Futter. Drücken Sie Futter hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Foods of this system</source>
        <translation>Futter dieses Systems</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Jug and line</source>
        <translation>Kanister und Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>What all of them bring</source>
        <translation>Was alles zusammen bringt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Where food takes it, without doses and use</source>
        <translation>Wohin Futter den Wert bringt, ohne Dosen und Verbrauch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Add a foo&amp;d</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>Futter hin&amp;zufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Re&amp;move this food</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>Dieses Futter ent&amp;fernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no system yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Es gibt noch kein System.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no food yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Es gibt noch kein Futter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Answer</source>
        <extracomment>Column.__init__, QuestionWindow.__init__</extracomment>
        <translation>Antwort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>There is no answer yet.</source>
        <extracomment>Column.focusInEvent, RecoverySheet._show_noted</extracomment>
        <translation>Es gibt noch keine Antwort.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More</source>
        <extracomment>Step.__init__, Step.open</extracomment>
        <translation>Mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More about {title}</source>
        <extracomment>Step.__init__</extracomment>
        <translation>Mehr zu {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>Less</source>
        <extracomment>Step.open</extracomment>
        <translation>Weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Glossary</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Glossar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Find a word</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Wort finden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Words of the trade</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Fachwörter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>See also</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Siehe auch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>&amp;Back</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Back to the term before</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Zurück zum Begriff davor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>No such word here.</source>
        <extracomment>GlossaryWindow._list</extracomment>
        <translation>Dieses Wort gibt es hier nicht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>This is the first term that was looked at.</source>
        <extracomment>GlossaryWindow._chosen</extracomment>
        <translation>Das ist der erste Begriff, der angesehen wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Show {term}</source>
        <extracomment>GlossaryWindow._show_links</extracomment>
        <translation>{term} zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Guide</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Anleitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Chapters</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Kapitel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Show the help</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Hilfe zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Help: glossary and guide. F1 in a field says why it is there.</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Hilfe: Glossar und Anleitung. F1 in einem Feld sagt, warum es da ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>&amp;Glossary</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>&amp;Glossar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>G&amp;uide</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>&amp;Anleitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>F1 in a field says why it is there</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>F1 in einem Feld sagt, warum es da ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>Why this is asked (F1)</source>
        <extracomment>WhyMark.__init__</extracomment>
        <translation>Warum das gefragt wird (F1)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>F1 again: glossary. Escape: close.</source>
        <extracomment>WhySlip.__init__</extracomment>
        <translation>F1 noch einmal: Glossar. Escape: schließen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose a cell to read what becomes of it.</source>
        <translation>Wählen Sie eine Zelle, um zu lesen, was aus ihr wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Stopped. Nothing was imported.</source>
        <translation>Gestoppt. Nichts wurde importiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose another &amp;file</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Andere &amp;Datei wählen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>What becomes of the chosen cell</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Was aus der gewählten Zelle wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Show only &amp;rows with something wrong</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Nur Zeilen mit Fehlern &amp;zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>&amp;Stop</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Importieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Close</source>
        <extracomment>ImportPage._make_parts, QuestionWindow.__init__</extracomment>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The file is being read.</source>
        <extracomment>ImportPage._look, ImportPage._came</extracomment>
        <translation>Die Datei wird gelesen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>{done} of about {most} rows are read.</source>
        <extracomment>ImportPage._came</extracomment>
        <translation>{done} von etwa {most} Zeilen sind gelesen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing can be imported yet: see the questions at the left.</source>
        <extracomment>ImportPage._show_button</extracomment>
        <translation>Noch kann nichts importiert werden: Sehen Sie die Fragen links.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The readings are being imported.</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>Die Messwerte werden importiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing was imported. {reason}</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>Nichts wurde importiert. {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose these first</source>
        <translation>Wählen Sie dies zuerst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed. See whether it is right</source>
        <translation>Vermutet. Sehen Sie nach, ob es stimmt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>As the file says</source>
        <translation>Wie die Datei sagt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>To be chosen.</source>
        <translation>Zu wählen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed.</source>
        <translation>Vermutet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Read in the file.</source>
        <translation>In der Datei gelesen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Chosen by you.</source>
        <translation>Von Ihnen gewählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose</source>
        <extracomment>PointRow.__init__</extracomment>
        <translation>Wählen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What is wrong with it</source>
        <translation>Was daran falsch ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not likely: </source>
        <translation>▲ Unwahrscheinlich: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>There twice: </source>
        <translation>Doppelt vorhanden: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not taken: </source>
        <translation>▲ Nicht übernommen: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What the import would take</source>
        <extracomment>PreviewTable.__init__</extracomment>
        <translation>Was der Import übernehmen würde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line {line}: {current}</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Zeile {line}: {current}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Taken as it is shown.</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Wird übernommen, wie gezeigt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file cannot be opened. See whether it is still there, and may be read.</source>
        <translation>Die Datei kann nicht geöffnet werden. Sehen Sie nach, ob sie noch da ist und gelesen werden darf.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file could not be read to its end. Choose it again.</source>
        <translation>Die Datei konnte nicht bis zu ihrem Ende gelesen werden. Wählen Sie sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>low</source>
        <extracomment>JugModel.data</extracomment>
        <translation>fast leer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>All jugs, what is in them and how long they last</source>
        <extracomment>JugList.__init__</extracomment>
        <translation>Alle Kanister, was darin ist und wie lange sie reichen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>No jug is on the shelf yet. Add one at the left.</source>
        <translation>Noch ist kein Kanister im Regal. Fügen Sie links einen hinzu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Primed no&amp;w: liquid at the outlet</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>&amp;Jetzt vorgefüllt: Flüssigkeit am Auslass</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Remove this level</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Diesen Füllstand entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>It holds, when full</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Fasst, wenn voll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Below the intake</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Unter der Ansaugung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>A level is read to</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Ablesegenauigkeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills of this jug</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Füllstände und Nachfüllungen dieses Kanisters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Read the level</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Füllstand ablesen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The jug itself</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Der Kanister selbst</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Füllstände und Nachfüllungen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>else as its batch says</source>
        <extracomment>JugPage._render</extracomment>
        <translation>sonst wie im Ansatz angegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>give or take; usually 1&#xa0;% of it</source>
        <extracomment>JugPage._render</extracomment>
        <translation>±; meist 1&#xa0;% davon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>what the pump cannot reach</source>
        <extracomment>JugPage._render</extracomment>
        <translation>was die Pumpe nicht erreicht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Choose a level of the list first.</source>
        <extracomment>JugPage._chosen</extracomment>
        <translation>Wählen Sie zuerst einen Füllstand der Liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is noted.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Der Füllstand ist notiert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Das Nachfüllen ist notiert. Machen Sie mit der nächsten Dosis weiter; nichts wird nachgeholt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Prime the line before the next dose.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Das Nachfüllen ist notiert. Füllen Sie die Leitung vor der nächsten Dosis vor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The line is primed. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._primed_now</extracomment>
        <translation>Die Leitung ist vorgefüllt. Machen Sie mit der nächsten Dosis weiter; nichts wird nachgeholt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is off the list. Undo brings it back.</source>
        <extracomment>JugPage._remove</extracomment>
        <translation>Der Füllstand ist aus der Liste genommen. Rückgängig bringt ihn zurück.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>{pump} is set by the new flow.</source>
        <extracomment>JugPage._use_flow</extracomment>
        <translation>{pump} ist auf die neue Förderleistung eingestellt.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Cards {cards} are out of date: print again before the pump is set.</source>
        <extracomment>for 1: Card {cards} is out of date: print again before the pump is set.; JugPage._use_flow</extracomment>
        <translation>
            <numerusform>Karte {cards} ist nicht mehr aktuell: Drucken Sie neu, bevor die Pumpe eingestellt wird.</numerusform>
            <numerusform>Karten {cards} sind nicht mehr aktuell: Drucken Sie neu, bevor die Pumpe eingestellt wird.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not looked at</source>
        <translation>Nicht nachgesehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>What the levels say of the pump</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Was die Füllstände über die Pumpe sagen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Look at this, in this order:</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Sehen Sie dies an, in dieser Reihenfolge:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>&amp;Use this flow</source>
        <extracomment>CheckPanel.__init__, PumpsSheet.__init__</extracomment>
        <translation>Diese Förderleistung &amp;verwenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>If the whole jug ran in at once</source>
        <extracomment>RunInPanel.__init__</extracomment>
        <translation>Wenn der ganze Kanister auf einmal einliefe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Before the jug is connected</source>
        <extracomment>ChecklistPanel.__init__</extracomment>
        <translation>Bevor der Kanister angeschlossen wird</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No jug yet</source>
        <translation>Noch kein Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>Plan an a&amp;bsence</source>
        <translation>A&amp;bwesenheit planen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>&amp;Back to the jug</source>
        <translation>Zurück zum &amp;Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs</source>
        <extracomment>JugsSheet.__init__, JugsSheet._headline</extracomment>
        <translation>Alle Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>to stop</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>zu stoppen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>with a pump off</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>mit abweichender Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs: {said}</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>Alle Kanister: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Save label as PDF</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>Etikett als PDF &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Print label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>Etikett &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Look at label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>Etikett &amp;ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>There is no label yet: the batch is not complete.</source>
        <extracomment>LabelActions.__init__, LabelActions.set_label</extracomment>
        <translation>Es gibt noch kein Etikett: Der Ansatz ist nicht vollständig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label saved as {path}.</source>
        <extracomment>LabelActions.write</extracomment>
        <translation>Etikett gespeichert als {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label sent to the printer.</source>
        <extracomment>LabelActions.send</extracomment>
        <translation>Etikett an den Drucker gesendet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>jug label {batch}.pdf</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>Kanisteretikett {batch}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>No printer is set up on this computer. Save the label as PDF instead.</source>
        <extracomment>LabelActions._print</extracomment>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Speichern Sie das Etikett stattdessen als PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Jug label</source>
        <extracomment>LabelActions._look</extracomment>
        <translation>Kanisteretikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>This batch has no label yet.</source>
        <extracomment>LabelActions._show_preview</extracomment>
        <translation>Dieser Ansatz hat noch kein Etikett.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Mixed anew? Put the new batch in the jug on the Stocks sheet as well: cards made for another strength become void there.</source>
        <translation>Neu angesetzt? Geben Sie den neuen Ansatz auch auf dem Blatt Stammlösungen in den Kanister: Dort werden Karten ungültig, die für eine andere Stärke gemacht wurden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Is the line primed? Run the pump until liquid stands at the outlet.</source>
        <translation>Ist die Leitung vorgefüllt? Lassen Sie die Pumpe laufen, bis Flüssigkeit am Auslass steht.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level now</source>
        <extracomment>LevelForm.__init__, LevelForm._show_refill</extracomment>
        <translation>Füllstand jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level before the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Füllstand vor Nachfüllen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Who</source>
        <extracomment>LevelForm.__init__, LogForm._make_fields</extracomment>
        <translation>Wer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>now, unless you say when</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>jetzt, wenn Sie nichts angeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Note this level</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Diesen Füllstand &amp;notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Jug &amp;refilled</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Kanister nach&amp;gefüllt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Liquid at the &amp;outlet: note the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Flüssigkeit am &amp;Auslass: Nachfüllen notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Not primed &amp;yet: note it so</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Noch nicht &amp;vorgefüllt: so notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Go back</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level after the refill</source>
        <extracomment>LevelForm._show_refill</extracomment>
        <translation>Füllstand nach Nachfüllen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>sets the pace</source>
        <translation>bestimmt das Tempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>over the limit</source>
        <translation>über der Grenze</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>Far from their limits</source>
        <translation>Weit von ihrer Grenze</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>How near each limit is</source>
        <extracomment>LimitBars.__init__</extracomment>
        <translation>Wie nahe jede Grenze ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Quarter</source>
        <translation>Quartal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>mL given</source>
        <translation>mL gegeben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>No readings yet. What is noted at the left appears here.</source>
        <translation>Noch keine Messwerte. Was links notiert wird, erscheint hier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Chart of the log</source>
        <extracomment>LogChart.__init__</extracomment>
        <translation>Diagramm des Protokolls</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {size} water exchanges</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {size} Wasserwechsel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {projected} plans drawn as dashed lines</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {projected} Pläne als gestrichelte Linien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>{title}: {size} readings, {size_2} doses{exchanges}{plans}. The last: {reading_words}. Plus and minus zoom, the arrow keys move, with Shift they read one reading after the other.</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>{title}: {size} Messwerte, {size_2} Dosen{exchanges}{plans}. Der letzte: {reading_words}. Plus und Minus zoomen, die Pfeiltasten verschieben, mit Umschalt lesen sie einen Messwert nach dem anderen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Saved.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Logged.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Protokolliert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The spreadsheet could not be written there. Choose another folder.</source>
        <translation>Die Tabelle konnte dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The log could not be read to its end. No spreadsheet was written.</source>
        <translation>Das Protokoll konnte nicht bis zu seinem Ende gelesen werden. Es wurde keine Tabelle geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>There are no readings to save.</source>
        <translation>Es gibt keine Messwerte zu speichern.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>Saved {readings} as {path}.</source>
        <extracomment>write</extracomment>
        <translation>{readings} gespeichert als {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>&amp;Log it</source>
        <extracomment>LogForm.__init__, LogForm.show_entry</extracomment>
        <translation>&amp;Protokollieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Leave it as it was</source>
        <extracomment>LogForm.__init__</extracomment>
        <translation>Lassen, wie es war</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note in the log</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Im Protokoll notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>From the jug</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Aus dem Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Exchanged</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Gewechselt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Kit</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Testset</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Sa&amp;ve the change</source>
        <extracomment>LogForm.show_entry</extracomment>
        <translation>Änderung &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Besides</source>
        <translation>Außerdem</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Entries of the log</source>
        <extracomment>LogList.__init__</extracomment>
        <translation>Einträge des Protokolls</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Show the plan</source>
        <translation>Plan zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>{alike}, was noted {at}{by}. Is this another one?</source>
        <extracomment>LogQuestions.before</extracomment>
        <translation>{alike}, das wurde schon notiert: {at}{by}. Ist dies ein weiterer Eintrag?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>{view_said} (Plan {plan_id}.)</source>
        <extracomment>LogQuestions.after</extracomment>
        <translation>{view_said} (Plan {plan_id}.)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Earlier</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Früher</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Later</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Später</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to earlier readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Das Diagramm zu früheren Messwerten verschieben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to later readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Das Diagramm zu späteren Messwerten verschieben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show on the chart: {span}</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Im Diagramm zeigen: {span}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Change entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Eintrag ä&amp;ndern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Remove entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Eintrag &amp;entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Use per day, learned from the log</source>
        <extracomment>LogSheet._lay_out</extracomment>
        <translation>Verbrauch pro Tag, aus dem Protokoll gelernt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Being worked out.</source>
        <extracomment>LogSheet._show_learned</extracomment>
        <translation>Wird berechnet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Choose an entry of the list first.</source>
        <extracomment>LogSheet._selected</extracomment>
        <translation>Wählen Sie zuerst einen Eintrag der Liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Removed. Undo brings it back.</source>
        <extracomment>LogSheet._remove</extracomment>
        <translation>Entfernt. Rückgängig bringt es zurück.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>&amp;Import from a spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>Aus einer Tabelle &amp;importieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Save as &amp;spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>Als &amp;Tabelle speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>{name} readings.csv</source>
        <extracomment>LogTransfer._ask_where</extracomment>
        <translation>{name} Messwerte.csv</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>The readings are being read.</source>
        <extracomment>LogTransfer._save</extracomment>
        <translation>Die Messwerte werden gelesen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Stopped. No spreadsheet was written.</source>
        <extracomment>LogTransfer._ended</extracomment>
        <translation>Gestoppt. Es wurde keine Tabelle geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/main_window.py"/>
        <source>Opening the fish room</source>
        <extracomment>MainWindow.__init__</extracomment>
        <translation>Der Aquarienraum wird geöffnet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Try again</source>
        <extracomment>NoticePage.__init__</extracomment>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Slower</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Langsamer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Faster</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Schneller</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a slower pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Ein langsameres Tempo wählen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a faster pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Ein schnelleres Tempo wählen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>This is the fastest pace allowed.</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>Das ist das schnellste erlaubte Tempo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {page} yet: the sheet has no answer.</source>
        <extracomment>PageActions._dress, PageActions.changed</extracomment>
        <translation>{page}: noch nicht vorhanden, das Blatt hat keine Antwort.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>It is still being worked out.</source>
        <extracomment>PageActions.halt</extracomment>
        <translation>Es wird noch berechnet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} saved as {path}.</source>
        <extracomment>PageActions.write</extracomment>
        <translation>{named} gespeichert als {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} sent to the printer.</source>
        <extracomment>PageActions.send</extracomment>
        <translation>{named} an den Drucker gesendet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>No printer is set up on this computer. Save the {named} as PDF instead.</source>
        <extracomment>PageActions._print</extracomment>
        <translation>Auf diesem Computer ist kein Drucker eingerichtet. Speichern Sie stattdessen als PDF: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>Save {named} as PDF</source>
        <extracomment>PageActions._save</extracomment>
        <translation>{named} als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {named} now. Take down an older one.</source>
        <extracomment>PageActions._show_preview</extracomment>
        <translation>{named}: jetzt nicht vorhanden. Nehmen Sie einen älteren Ausdruck ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>S&amp;tart</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>S&amp;tarten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Follow this correction from now on, and note it in the log</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Diese Korrektur ab jetzt befolgen und im Protokoll notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Not started. {why}</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>Nicht gestartet. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>The card of this very plan is out of use. Change the question, or wait a minute, then start.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>Die Karte genau dieses Plans ist außer Gebrauch. Ändern Sie die Frage, oder warten Sie eine Minute, dann starten Sie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Plan {plan_id} is started. Hang its card on the stand and take down the older one.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>Plan {plan_id} ist gestartet. Hängen Sie seine Karte an den Unterschrank, und nehmen Sie die ältere ab.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Motor</source>
        <extracomment>PumpForm._pump</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Flow in use</source>
        <extracomment>PumpForm._pump</extracomment>
        <translation>Benutzte Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head and line</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Pumpenkopf und Leitung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Outlet above the water</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Auslass über dem Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head fitted on</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Pumpenkopf eingebaut am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours it has run</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Gelaufene Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>by now, where it counts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>bis jetzt, falls sie zählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours a head lasts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Kopf hält, Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Tubing</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Schlauch</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>No pump yet</source>
        <translation>Noch keine Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>What follows</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Before it runs by itself</source>
        <translation>Bevor sie von selbst läuft</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today</source>
        <extracomment>PumpsSheet.__init__</extracomment>
        <translation>Heute &amp;erwarteten Wert verwenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Calibrations of this pump</source>
        <extracomment>PumpsSheet._lay_out</extracomment>
        <translation>Kalibrierungen dieser Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has no calibration yet.</source>
        <extracomment>PumpsSheet.recompute</extracomment>
        <translation>Die Pumpe hat noch keine Kalibrierung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has this flow already</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Die Pumpe hat diese Förderleistung schon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Only the newest calibration counts</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Nur die neueste Kalibrierung zählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today, {expected}</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Heute &amp;erwarteten Wert verwenden, {expected}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Card {plan_id} must not be followed. {why} Print a new card.</source>
        <extracomment>PumpsSheet._notes, StocksSheet._note</extracomment>
        <translation>Karte {plan_id} darf nicht befolgt werden. {why} Drucken Sie eine neue Karte.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>With this flow, cards {cards} are no longer right. Print new ones after using it.</source>
        <extracomment>for 1: With this flow, card {cards} is no longer right. Print new ones after using it.; PumpsSheet._notes</extracomment>
        <translation>
            <numerusform>Mit dieser Förderleistung stimmt Karte {cards} nicht mehr. Drucken Sie eine neue, nachdem Sie sie übernommen haben.</numerusform>
            <numerusform>Mit dieser Förderleistung stimmen die Karten {cards} nicht mehr. Drucken Sie neue, nachdem Sie sie übernommen haben.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>None yet. Press New calibration, or fill in the runs.</source>
        <extracomment>PumpsSheet._list_calibrations</extracomment>
        <translation>Noch keine. Drücken Sie Neue Kalibrierung, oder füllen Sie die Läufe aus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Doses are reckoned with {flow}&#xa0;mL per min from now on.</source>
        <extracomment>PumpsSheet._take_over</extracomment>
        <translation>Die Dosen werden von jetzt an mit {flow}&#xa0;mL pro min berechnet.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Cards {cards} are out of date: print new ones.</source>
        <extracomment>for 1: Card {cards} is out of date: print new ones.; _down</extracomment>
        <translation>
            <numerusform>Karte {cards} ist nicht mehr aktuell: Drucken Sie eine neue.</numerusform>
            <numerusform>Karten {cards} sind nicht mehr aktuell: Drucken Sie neue.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Not converted: correct the number first, or relabel it.</source>
        <translation>Nicht umgerechnet: Korrigieren Sie zuerst die Zahl, oder ändern Sie nur die Einheit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Unit of {quantity}</source>
        <extracomment>QuantityField._show_units</extracomment>
        <translation>Einheit von {quantity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>{file} – Evenwater</source>
        <extracomment>QuestionWindow.__init__</extracomment>
        <translation>{file} – Evenwater</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Answered from this file alone. Your log was not asked, so nothing counts that was dosed before.</source>
        <extracomment>QuestionWindow.__init__</extracomment>
        <translation>Nur aus dieser Datei beantwortet. Ihr Protokoll wurde nicht befragt, deshalb zählt nichts, was vorher dosiert wurde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>There is no plan, so there is no card.</source>
        <extracomment>QuestionWindow.__init__</extracomment>
        <translation>Es gibt keinen Plan, deshalb gibt es keine Karte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Saved: {file}</source>
        <extracomment>QuestionWindow.write_card</extracomment>
        <translation>Gespeichert: {file}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Fish room</source>
        <translation>Aquarienraum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Systems</source>
        <translation>Systeme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add system</source>
        <translation>System hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove system</source>
        <translation>System entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Jugs</source>
        <translation>Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Pumps</source>
        <translation>Pumpen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>&amp;Add</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>The list is empty.</source>
        <extracomment>RecordsPane._fill</extracomment>
        <translation>Die Liste ist leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The water is cl&amp;oudy</source>
        <translation>Das Wasser ist &amp;trüb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>There is a white fil&amp;m</source>
        <translation>Ein weißer &amp;Belag ist da</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>empty before a test</source>
        <translation>leer, solange kein Test da ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The &amp;whole jug ran in</source>
        <extracomment>RecoveryForm.__init__</extracomment>
        <translation>&amp;Ganzer Kanister eingelaufen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Was eingelaufen ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>How much ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Wie viel eingelaufen ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is too high</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Was zu hoch ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Tested since</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Seitdem getestet</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>To come down to</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Soll sinken auf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is seen</source>
        <extracomment>RecoveryForm._seen</extracomment>
        <translation>Was zu sehen ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What can be done</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Was getan werden kann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Exchanged in a day at most</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Wechsel am Tag, höchstens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>never more than half of the tank</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>nie mehr als die Hälfte des Beckens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Hold {name} too</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Auch aussetzen: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>None: a test shows it</source>
        <extracomment>RecoveryForm.set_jugs</extracomment>
        <translation>Keiner: Ein Test zeigt es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Choose first what is too high.</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>Zuerst wählen, was zu hoch ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>usually kept</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>üblich gehalten</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Hold only</source>
        <translation>Nur a&amp;ussetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>E&amp;xchange</source>
        <translation>&amp;Wechseln</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Both</source>
        <translation>B&amp;eides</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does</source>
        <translation>Was jede Wahl bewirkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Of each value: its end, in brackets the lowest and highest it comes to wherever in its interval the net volume lies, and the most it moves in 24&#xa0;hours.</source>
        <translation>Zu jedem Wert: sein Ende, in Klammern der niedrigste und der höchste, auf den er kommt, wo auch immer das Nettovolumen in seinem Intervall liegt, und seine größte Änderung in 24&#xa0;Stunden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Hold only</source>
        <translation>Nur aussetzen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>May move in 24&#xa0;h</source>
        <translation>Erlaubte Änderung in 24&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>First, in this order: </source>
        <extracomment>StopList.__init__</extracomment>
        <translation>Zuerst, in dieser Reihenfolge: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Choose: {choose}</source>
        <extracomment>ChoicePanel.__init__</extracomment>
        <translation>Wählen: {choose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>, chosen</source>
        <extracomment>ChoicePanel.render</extracomment>
        <translation>, gewählt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does to every value</source>
        <extracomment>Choices.__init__</extracomment>
        <translation>Was jede Wahl mit jedem Wert macht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>now {now}, may move {most}</source>
        <extracomment>_in_two</extracomment>
        <translation>jetzt {now}, erlaubte Änderung {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>{end} ({low} to {high})
moves {moves}{own}</source>
        <extracomment>_cells</extracomment>
        <translation>{end} ({low} bis {high})
Änderung {moves}{own}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Choose the jug that ran in first.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Wählen Sie zuerst den Kanister, der eingelaufen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Nobody wrote down what is in this jug. Type in how much ran in.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Niemand hat aufgeschrieben, was in diesem Kanister ist. Geben Sie ein, wie viel eingelaufen ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>its level as last read</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>der zuletzt abgelesene Füllstand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>what was made up</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>die aufgefüllte Menge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{left} is {what}, less the doses logged since. Doses nobody logged are not taken off.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>{left} ist {what}, abzüglich der seitdem protokollierten Dosen. Dosen, die niemand protokolliert hat, sind nicht abgezogen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{amount} ran in from {document}{contents}. </source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>Eingelaufen: {amount} aus {document}{contents}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Emergency, found {date_words}. {what}{said}</source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>Notfall, bemerkt am {date_words}. {what}{said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Say at the left what ran in, or what is too high. The list above holds before any figure is known.</source>
        <translation>Geben Sie links an, was eingelaufen ist oder was zu hoch ist. Die Liste oben gilt, bevor eine Zahl bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Choose a way: then it stands here day by day, and on the emergency card.</source>
        <translation>Wählen Sie einen Weg: Dann steht er hier Tag für Tag und auf der Notfallkarte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>&amp;Note it in the log</source>
        <translation>Im Protokoll &amp;notieren</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>No way down was chosen yet.</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Noch wurde kein Weg zum Senken gewählt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Chosen: {title}. {takes}</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Gewählt: {title}. {takes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>It is in the log already.</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>Es steht schon im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Noted in the log</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>Im Protokoll notiert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>The emergency is noted in the log. Undo takes it out again.</source>
        <extracomment>RecoverySheet._note</extracomment>
        <translation>Der Notfall ist im Protokoll notiert. Rückgängig nimmt ihn wieder heraus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Bac&amp;kups</source>
        <extracomment>Room._foot</extracomment>
        <translation>Siche&amp;rungen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the backups</source>
        <extracomment>Room._foot</extracomment>
        <translation>Sicherungen zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the settings</source>
        <extracomment>Room._foot</extracomment>
        <translation>Einstellungen zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Settings: colours and letters (Ctrl and comma)</source>
        <extracomment>Room._foot</extracomment>
        <translation>Einstellungen: Farben und Schrift (Strg und Komma)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Print round sheet</source>
        <translation>Rundgangsblatt &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save round sheet as P&amp;DF</source>
        <translation>Rundgangsblatt als PDF &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Look at round sheet</source>
        <translation>Rundgangsblatt &amp;ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Rundgangsblatt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save &amp;reminders</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>&amp;Erinnerungen speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>For any calendar program, as an iCalendar file. Save them again after a change.</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Für jedes Kalenderprogramm, als iCalendar-Datei. Speichern Sie sie nach einer Änderung neu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>Rundgangsblatt.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet {date}.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>Rundgangsblatt {date}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>The reminders could not be written there. Choose another folder.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>Die Erinnerungen konnten dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{n} reminders</source>
        <extracomment>for 1: 1 reminder; RoundActions._write_down</extracomment>
        <translation>
            <numerusform>1 Erinnerung</numerusform>
            <numerusform>{n} Erinnerungen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{said} saved as {file}. Open the file with your calendar.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>{said} gespeichert als {file}. Öffnen Sie die Datei mit Ihrem Kalender.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>reminders {date}.ics</source>
        <extracomment>RoundActions._remind</extracomment>
        <translation>Erinnerungen {date}.ics</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_watch.py"/>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Its jug is empty or gone.</source>
        <extracomment>RoundWatch._why_not, VoidCards._of_jug</extracomment>
        <translation>Der Kanister dazu ist leer oder nicht mehr da.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>The fish room</source>
        <extracomment>RoundsSheet.__init__</extracomment>
        <translation>Der Aquarienraum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>Looking at the log of {unread} more systems.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation>Die Protokolle weiterer Systeme werden angesehen, noch {unread}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source> Reckoning what {unplanned} more systems take from the jugs.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation> Was weitere Systeme aus den Kanistern entnehmen, wird berechnet, noch {unplanned}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>It was kept by another version. End it, then plan again from a fresh reading.</source>
        <extracomment>RoundsSheet._plans</extracomment>
        <translation>Er wurde von einer anderen Version gespeichert. Beenden Sie ihn, dann planen Sie neu aus einem frischen Messwert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Several laptops work on one log that lies on a server of your own (PostgreSQL). Nothing goes anywhere else. While the server does not answer, the last state is shown, and what you log is kept on this computer and sent later.</source>
        <translation>Mehrere Laptops arbeiten an einem Protokoll, das auf einem eigenen Server liegt (PostgreSQL). Nichts geht sonst irgendwohin. Solange der Server nicht antwortet, wird der letzte Stand gezeigt, und was Sie protokollieren, bleibt auf diesem Computer und wird später gesendet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>postgresql://name@server/database</source>
        <translation>postgresql://name@server/database</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>One log for the whole facility</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Ein Protokoll für die ganze Anlage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Keep the password in this computer's keyring</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Passwort im Schlüssel&amp;bund dieses Computers ablegen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Open this log</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Dieses Protokoll ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Use the log on &amp;this computer</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Protokoll auf &amp;diesem Computer verwenden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Address</source>
        <extracomment>ServerPage._lay_out</extracomment>
        <translation>&amp;Adresse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Password</source>
        <extracomment>ServerPage._lay_out</extracomment>
        <translation>&amp;Passwort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Asking the server</source>
        <extracomment>ServerPage.ask</extracomment>
        <translation>Der Server wird gefragt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the system &amp;has them</source>
        <translation>Wie das S&amp;ystem sie hat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High &amp;contrast, light</source>
        <translation>Hoher &amp;Kontrast, hell</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High contrast, d&amp;ark</source>
        <translation>Hoher Kontrast, d&amp;unkel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>{number}&#xa0;%</source>
        <translation>{number}&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Letters</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the &amp;system speaks</source>
        <translation>Wie das &amp;System spricht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>From 150&#xa0;% on the sheets are read standing back from the tank. Ctrl with plus or minus changes the letters on every sheet, F11 takes the whole screen.</source>
        <translation>Ab 150&#xa0;% lassen sich die Blätter mit Abstand zum Becken lesen. Strg mit Plus oder Minus ändert die Schrift auf jedem Blatt, F11 nimmt den ganzen Bildschirm.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>▲ The settings could not be written. They hold until the program is closed.</source>
        <translation>▲ Die Einstellungen konnten nicht geschrieben werden. Sie gelten, bis das Programm geschlossen wird.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>No system yet</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Noch kein System</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>&amp;Fish room</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>A&amp;quarienraum</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Show the lists of sheets, systems and jugs</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Die Listen der Blätter, Systeme und Kanister zeigen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Redo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Find an action</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Aktion finden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>By some of its words; Ctrl and K</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Über einige ihrer Wörter; Strg und K</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undone</source>
        <extracomment>SheetHeader._undo</extracomment>
        <translation>Rückgängig gemacht</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Done again</source>
        <extracomment>SheetHeader._redo</extracomment>
        <translation>Wiederholt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Nothing was done yet that could be taken back or done again.</source>
        <extracomment>SheetHeader._show_state</extracomment>
        <translation>Noch wurde nichts getan, was rückgängig gemacht oder wiederholt werden könnte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Everything is saved again.</source>
        <extracomment>SheetHeader._save_restored</extracomment>
        <translation>Alles ist wieder gespeichert.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Rounds</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Upkeep</source>
        <extracomment>upkeep</extracomment>
        <translation>Versorgung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Stocks</source>
        <translation>Stammlösungen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Recovery</source>
        <extracomment>recovery</extracomment>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Sheets</source>
        <extracomment>SheetList.__init__</extracomment>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>The jug</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Der Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>New &amp;batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Neuer A&amp;nsatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Remove batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Ansatz entfernen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Contents</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Inhalt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Its strength</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Seine Stärke</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>To match the jug</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Passend zum Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>A dose of</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Eine Dosis von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>is to raise it by</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>soll anheben um</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>And of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Und vom Sulfat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Reinheit des Sulfats</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>On its label</source>
        <extracomment>StockForm._label</extracomment>
        <translation>Auf dem Etikett</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed by</source>
        <extracomment>StockForm._label</extracomment>
        <translation>Angesetzt von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2027-02-25</source>
        <extracomment>StockForm._label</extracomment>
        <translation>wie 2027-02-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>This batch</source>
        <extracomment>StockRecords.outdated</extracomment>
        <translation>Dieser Ansatz</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>What it carries</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Was darin enthalten ist</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Put it in the &amp;jug</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>In den &amp;Kanister geben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Enter as &amp;weighed</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Als ab&amp;gewogen eintragen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Batches of this jug</source>
        <extracomment>StocksSheet._lay_out</extracomment>
        <translation>Ansätze dieses Kanisters</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The jug has no batch.</source>
        <extracomment>StocksSheet._fill</extracomment>
        <translation>Der Kanister hat keinen Ansatz.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The recipe is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Das Rezept ist nicht vollständig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>It is in the jug already</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Er ist schon im Kanister</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The batch is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Der Ansatz ist nicht vollständig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Used for: {used}.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Verwendet für: {used}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No correction uses this jug.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Keine Korrektur verwendet diesen Kanister.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>With this batch in the jug, card {plan_id} becomes void. {why}</source>
        <extracomment>StocksSheet._note</extracomment>
        <translation>Mit diesem Ansatz im Kanister wird Karte {plan_id} ungültig. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source> Take down card {void}: void.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation> Abnehmen, weil ungültig: Karte {void}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is in the jug now.{down} Put its label on, and prime the line before the next dose.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation>Dieser Ansatz ist jetzt im Kanister.{down} Bringen Sie sein Etikett an, und füllen Sie die Leitung vor der nächsten Dosis vor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}, date and time</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}, Datum und Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>today 08:00</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>heute 08:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}: now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}: jetzt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Print timetable</source>
        <translation>Zeitplan &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Save timetable as PDF</source>
        <translation>Zeitplan als PDF &amp;speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Look at timetable</source>
        <translation>Zeitplan &amp;ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable</source>
        <extracomment>TimetableActions.__init__</extracomment>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable {code}.pdf</source>
        <extracomment>TimetableActions.file_name</extracomment>
        <translation>Zeitplan {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours from</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Ruhezeiten von</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>no pump runs then</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>dann läuft keine Pumpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours to</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Ruhezeiten bis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Opposing doses apart</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Abstand gegensätzl. Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>at least, from the end of a dose</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>mindestens, ab Ende einer Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Only &amp;one pump at a time</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Nur eine Pumpe &amp;zur Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>its plan says how many</source>
        <extracomment>TimetableForm.set_usual</extracomment>
        <translation>wie viele, sagt der Plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Open</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open {parameter} on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>{parameter} auf dem Blatt Korrektur öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open it on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>Auf dem Blatt Korrektur öffnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>First dose not before</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Erste Dosis nicht vor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>any time</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>jederzeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Fewest</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Mindestens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Most</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Höchstens</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Doses</source>
        <translation>Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>Doses in order of time</source>
        <extracomment>TimetableList.__init__</extracomment>
        <translation>Dosen in zeitlicher Reihenfolge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>No pump gives anything yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Noch gibt keine Pumpe etwas. Geben Sie auf dem Blatt Korrektur den Tagesverbrauch des Beckens, den Kanister und die Pumpe dafür ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In 24 hours</source>
        <translation>In 24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>The timetable could not be worked out. Please keep this log and report it.</source>
        <extracomment>TimetableSheet._failed</extracomment>
        <translation>Der Zeitplan konnte nicht berechnet werden. Bitte bewahren Sie dieses Protokoll auf, und melden Sie es.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In order of time · timetable {code}</source>
        <extracomment>TimetableSheet._show</extracomment>
        <translation>In zeitlicher Reihenfolge · Zeitplan {code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>No timetable yet.</source>
        <translation>Noch kein Zeitplan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Alkalinity: filled head, upwards.</source>
        <translation>Alkalinität: gefüllter Kopf, nach oben.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Calcium: open head, downwards.</source>
        <translation>Calcium: offener Kopf, nach unten.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Doses of the day</source>
        <extracomment>TimetableStrip.__init__</extracomment>
        <translation>Dosen des Tages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Next at {at}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>Nächste um {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{cursor}.  Then after {wait}&#xa0;min: {pump}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>{cursor}.  Dann nach {wait}&#xa0;min: {pump}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Hatched: no doses.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Schraffiert: keine Dosen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Upright line: now.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Senkrechte Linie: jetzt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{pump}, {additive}: {marks} doses</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{pump}, {additive}: {marks} Dosen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>quiet hours {begin} to {end}</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>Ruhezeiten {begin} bis {end}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{join}. Left and right go from dose to dose, up and down from pump to pump.</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{join}. Links und rechts gehen von Dosis zu Dosis, auf und ab von Pumpe zu Pumpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Print card of all plans</source>
        <translation>Karte aller Pläne drucken</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Save card of all plans as PDF</source>
        <translation>Karte aller Pläne als PDF speichern</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Look at card of all plans</source>
        <translation>Karte aller Pläne ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>together card</source>
        <extracomment>TogetherActions.__init__</extracomment>
        <translation>Karte aller Pläne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>There is no card yet.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>Es gibt noch keine Karte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Not while something must stop: see the card.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>Nicht, solange etwas angehalten werden muss: siehe die Karte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>alle Pläne.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans {code}.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>alle Pläne {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Without a reading there is no course to draw.</source>
        <translation>Ohne Messwert gibt es keinen Verlauf zu zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Chart of all plans together</source>
        <extracomment>TogetherChart.__init__</extracomment>
        <translation>Diagramm aller Pläne zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>All plans together</source>
        <translation>Alle Pläne zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Fold all plans away</source>
        <translation>Alle Pläne einklappen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>What moves it</source>
        <translation>Was ihn bewegt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>per day</source>
        <translation>pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Value to look at</source>
        <extracomment>TogetherPanel.__init__</extracomment>
        <translation>Anzusehender Wert</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Stop: {name}</source>
        <extracomment>_row</extracomment>
        <translation>Stopp: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>What to do first, and how it comes down without harm</source>
        <extracomment>TooHigh.__init__</extracomment>
        <translation>Was zuerst zu tun ist und wie der Wert ohne Schaden sinkt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go &amp;back</source>
        <extracomment>UnsavedQuestion.__init__</extracomment>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>{edits} could not be saved.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>Konnte nicht gespeichert werden: {edits}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go back, make room on the disk or bring the folder back, and they are saved with the next edit. Closed now, they are lost.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>Gehen Sie zurück, schaffen Sie Platz auf der Festplatte, oder bringen Sie den Ordner zurück, dann werden sie mit der nächsten Änderung gespeichert. Wird jetzt geschlossen, sind sie verloren.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>&amp;Close and lose {edits}</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>S&amp;chließen und verlieren: {edits}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Nothing is kept yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Noch wird nichts gehalten. Geben Sie auf dem Blatt Korrektur den Tagesverbrauch des Beckens, den Kanister und die Pumpe dafür ein.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>At which minute each pump doses, and in how many doses, stands on the Timetable sheet.</source>
        <translation>Zu welcher Minute jede Pumpe dosiert und in wie vielen Dosen, steht auf dem Blatt Zeitplan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Set on the pump</source>
        <translation>An der Pumpe einstellen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>The jug is empty</source>
        <translation>Kanister leer am</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In time</source>
        <translation>Mit der Zeit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a week</source>
        <translation>eine Woche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a month</source>
        <translation>ein Monat</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Water exchanged</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>Gewechseltes Wasser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>continuously; leave it empty for none</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>laufend; leer lassen, wenn keines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>New water, {rest}</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>Frisches Salzwasser, {rest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{what}: {message} It stands on the Exchange sheet.</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>{what}: {message} Es steht auf dem Blatt Wasserwechsel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>used: {use}</source>
        <extracomment>UpkeepSheet._used</extracomment>
        <translation>Verbrauch: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{in_24_hours} in 24 hours</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>{in_24_hours} in 24 Stunden</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>after {jug}</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>noch {jug}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>{why} Its pump now gives another flow.</source>
        <extracomment>of_pump</extracomment>
        <translation>{why} Die Pumpe dazu hat jetzt eine andere Förderleistung.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} is void. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ Karte {plan_id} ist ungültig. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} must not be followed. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ Karte {plan_id} darf nicht befolgt werden. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source> And {void} more.</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation> Und {void} weitere.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>It is taken &amp;down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>Sie ist abgeno&amp;mmen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Card {plan_id} is taken down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>Karte {plan_id} ist abgenommen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>Lea&amp;ve (Escape)</source>
        <extracomment>WalkStrip.__init__</extracomment>
        <translation>&amp;Verlassen (Escape)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Next</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Do it for me</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>&amp;Für mich ausfüllen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>No calibration with running hours yet. With two or more, the wear of the head shows here.</source>
        <translation>Noch keine Kalibrierung mit Laufstunden. Ab zwei davon zeigt sich hier der Verschleiß des Pumpenkopfs.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>mL per min against running hours of the head</source>
        <translation>mL pro min über die Laufstunden des Pumpenkopfs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% less</source>
        <translation>5&#xa0;% weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% less</source>
        <translation>10&#xa0;% weniger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% more</source>
        <translation>5&#xa0;% mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% more</source>
        <translation>10&#xa0;% mehr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>flow in use</source>
        <translation>benutzte Förderleistung</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>Chart of the pump's wear</source>
        <extracomment>WearChart.__init__</extracomment>
        <translation>Diagramm des Pumpenverschleißes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>{spoken} The arrow keys read them one by one.</source>
        <extracomment>WearChart.render</extracomment>
        <translation>{spoken} Die Pfeiltasten lesen sie einzeln.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Evenwater reckons how many mL per hour raise a value slowly and safely, draws what the water will do, and prints the card that hangs on the stand. Everything you type is kept on this computer and nowhere else, unless you open a log on a server of your own.</source>
        <translation>Evenwater berechnet, wie viele mL pro Stunde einen Wert langsam und sicher anheben, zeichnet, was das Wasser tun wird, und druckt die Karte, die am Unterschrank hängt. Alles, was Sie eingeben, bleibt auf diesem Computer und nirgends sonst, außer Sie öffnen ein Protokoll auf einem eigenen Server.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>A wrong dose kills animals, and the stocks can hurt people. Read each bag's safety sheet, follow local rules, and when unsure dose less and test again.</source>
        <translation>Eine falsche Dosis tötet Tiere, und die Stammlösungen können Menschen verletzen. Lesen Sie das Sicherheitsdatenblatt jedes Beutels, befolgen Sie örtliche Vorschriften, und wenn Sie unsicher sind, dosieren Sie weniger und testen noch einmal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Your fish room is empty</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Ihr Aquarienraum ist leer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Start with &amp;my own tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Mit meinem &amp;eigenen Becken beginnen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Be &amp;led through it on an invented tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Sich an einem erfundenen Becken &amp;führen lassen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Look round an &amp;invented room of three systems</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Einen erfundenen &amp;Raum mit drei Systemen ansehen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Open the log of a &amp;facility, on its server</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Das Protokoll einer &amp;Anlage öffnen, auf ihrem Server</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>alkalinity</source>
        <extracomment>a name</extracomment>
        <translation>Alkalinität</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>calcium</source>
        <extracomment>a name</extracomment>
        <translation>Calcium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>magnesium</source>
        <extracomment>a name</extracomment>
        <translation>Magnesium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>potassium</source>
        <extracomment>a name</extracomment>
        <translation>Kalium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>strontium</source>
        <extracomment>a name</extracomment>
        <translation>Strontium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>iodide</source>
        <extracomment>a name</extracomment>
        <translation>Iodid</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>nitrate</source>
        <extracomment>a name</extracomment>
        <translation>Nitrat</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>phosphate</source>
        <extracomment>a name</extracomment>
        <translation>Phosphat</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>salinity</source>
        <extracomment>a name</extracomment>
        <translation>Salinität</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>Natriumcarbonat (wasserfrei)</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate anhydrous</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>NatriumCARBONat (wasserfrei)</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Warning</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Achtung</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>WARNING</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>ACHTUNG</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H319 causes serious eye irritation</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>H319 verursacht schwere Augenreizung</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear goggles and gloves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Tragen Sie Schutzbrille und Handschuhe.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it warms as it dissolves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate</extracomment>
        <translation>Geben Sie es langsam ins Wasser, nie Wasser auf das Salz; es erwärmt sich beim Lösen.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes and heats.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Halten Sie Säuren fern: Es schäumt auf und wird heiß.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Mischen Sie es nie mit einem Konzentrat von Calcium.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it takes up water and cakes.</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>Halten Sie den Beutel luftdicht: Es nimmt Wasser auf und verklumpt.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate monohydrate</source>
        <extracomment>a name</extracomment>
        <translation>Natriumcarbonat-Monohydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate monohydrate</source>
        <extracomment>sodium carbonate monohydrate</extracomment>
        <translation>NatriumCARBONat-Monohydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Natriumcarbonat-Decahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate decahydrate</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>NatriumCARBONat-Decahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it cools as it dissolves.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Geben Sie es langsam ins Wasser, nie Wasser auf das Salz; es kühlt beim Lösen ab.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it loses water in dry air and then weighs too strong.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Halten Sie den Beutel luftdicht: Es verliert in trockener Luft Wasser und ist dann beim Abwiegen zu stark.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium bicarbonate</source>
        <extracomment>a name</extracomment>
        <translation>Natriumhydrogencarbonat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium BICARBonate</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>NatriumHYDROGENcarbonat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear spectacles.</source>
        <extracomment>sodium bicarbonate, magnesium chloride hexahydrate, magnesium sulfate heptahydrate</extracomment>
        <translation>Tragen Sie eine Schutzbrille.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>Halten Sie Säuren fern: Es schäumt auf.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not heat it: heat turns it into sodium carbonate, 1.59 times as strong per gram.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>Erhitzen Sie es nicht: Hitze macht Natriumcarbonat daraus, pro Gramm 1,59-mal so stark.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>Natriumhydroxid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium HYDROXide</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>NatriumHYDROXid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>DANGER</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>GEFAHR</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H290 may be corrosive to metals</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>H290 kann gegenüber Metallen korrosiv sein</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H314 causes severe skin burns and eye damage</source>
        <extracomment>sodium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H314 verursacht schwere Verätzungen der Haut und schwere Augenschäden</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Restricted: use a carbonate instead unless you are trained to handle caustics.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Beschränkt: Verwenden Sie stattdessen ein Carbonat, wenn Sie nicht für den Umgang mit Laugen geschult sind.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear a face shield or goggles, chemical-proof gloves and an apron.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Tragen Sie Gesichtsschutz oder Schutzbrille, chemikalienfeste Handschuhe und eine Schürze.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to cold water in small portions, never water onto the solid; it heats strongly and can boil and spit.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Geben Sie es in kleinen Portionen in kaltes Wasser, nie Wasser auf den Feststoff; es wird sehr heiß und kann kochen und spritzen.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a heat-proof plastic vessel, never glass with a stopper and never aluminium.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Verwenden Sie ein hitzefestes Kunststoffgefäß, nie Glas mit Stopfen und nie Aluminium.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let it cool before topping up to the mark.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Lassen Sie es abkühlen, bevor Sie bis zur Marke auffüllen.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it airtight and away from acids.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Halten Sie es luftdicht und von Säuren fern.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>Calciumhydroxid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium HYDROXide</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>CalciumHYDROXid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H315 causes skin irritation</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>H315 verursacht Hautreizungen</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H318 causes serious eye damage</source>
        <extracomment>calcium hydroxide, strontium chloride hexahydrate</extracomment>
        <translation>H318 verursacht schwere Augenschäden</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H335 may cause respiratory irritation</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H335 kann die Atemwege reizen</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Goggles or a face shield are mandatory; wear gloves.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Schutzbrille oder Gesichtsschutz ist Pflicht; tragen Sie Handschuhe.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Raise no dust: the powder burns wet eyes and lungs, and clumps lodge under the lids.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Wirbeln Sie keinen Staub auf: Das Pulver verätzt feuchte Augen und Lungen, und Klumpen setzen sich unter den Lidern fest.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>If swallowed, do not induce vomiting; get medical help.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Bei Verschlucken kein Erbrechen herbeiführen; ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep strong acids away.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Halten Sie starke Säuren fern.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let the slurry settle and dose only the clear water; never stir slurry into the tank.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Lassen Sie die Aufschlämmung absetzen, und dosieren Sie nur das klare Wasser; rühren Sie nie Aufschlämmung ins Becken.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never dose limewater faster than the tank evaporates.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Dosieren Sie Kalkwasser nie schneller, als Wasser aus dem Becken verdunstet.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate or bicarbonate.</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Mischen Sie es nie mit einem Konzentrat von Carbonat oder Hydrogencarbonat.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>Calciumchlorid (wasserfrei)</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide anhydrous</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>CalciumCHLORid (wasserfrei)</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H303 may be harmful if swallowed</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>H303 kann bei Verschlucken gesundheitsschädlich sein</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It heats strongly as it dissolves: add the salt slowly to cold water, never water onto the salt.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Es wird beim Lösen sehr heiß: Geben Sie das Salz langsam in kaltes Wasser, nie Wasser auf das Salz.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a vented, heat-proof vessel and let it cool before topping up to the mark.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Verwenden Sie ein hitzefestes Gefäß mit Entlüftung, und lassen Sie es abkühlen, bevor Sie bis zur Marke auffüllen.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it draws water from the air.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate, magnesium chloride hexahydrate</extracomment>
        <translation>Halten Sie den Beutel luftdicht: Es zieht Wasser aus der Luft.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride dihydrate</source>
        <extracomment>a name</extracomment>
        <translation>Calciumchlorid-Dihydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide dihydrate</source>
        <extracomment>calcium chloride dihydrate</extracomment>
        <translation>CalciumCHLORid-Dihydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Calciumchlorid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide hexahydrate</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>CalciumCHLORid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add the salt slowly to the water, never water onto the salt.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Geben Sie das Salz langsam ins Wasser, nie Wasser auf das Salz.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It cools as it dissolves: top up to the mark only when it is at room temperature again.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Es kühlt beim Lösen ab: Füllen Sie erst bis zur Marke auf, wenn es wieder Raumtemperatur hat.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag cool and airtight: it melts in its own water at about 30 degrees Celsius.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Halten Sie den Beutel kühl und luftdicht: Es schmilzt bei etwa 30 Grad Celsius im eigenen Wasser.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Magnesiumchlorid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium CHLORide hexahydrate</source>
        <extracomment>magnesium chloride hexahydrate</extracomment>
        <translation>MagnesiumCHLORid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium sulfate heptahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Magnesiumsulfat-Heptahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium SULFate heptahydrate</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>MagnesiumSULFat-Heptahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Mop up spills: the floor becomes slippery.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Wischen Sie Verschüttetes auf: Der Boden wird rutschig.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: gypsum falls out.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Mischen Sie es nie mit einem Konzentrat von Calcium: Gips fällt aus.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium chloride</source>
        <extracomment>a name</extracomment>
        <translation>Kaliumchlorid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium CHLORide</source>
        <extracomment>potassium chloride</extracomment>
        <translation>KaliumCHLORid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not swallow.</source>
        <extracomment>potassium chloride</extracomment>
        <translation>Nicht verschlucken.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Strontiumchlorid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium CHLORide hexahydrate</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>StrontiumCHLORid-Hexahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly and raise no dust.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Geben Sie es langsam ins Wasser, und wirbeln Sie keinen Staub auf.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate, bicarbonate or sulfate: strontium falls out.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Mischen Sie es nie mit einem Konzentrat von Carbonat, Hydrogencarbonat oder Sulfat: Strontium fällt aus.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium iodide</source>
        <extracomment>a name</extracomment>
        <translation>Kaliumiodid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium IODide</source>
        <extracomment>potassium iodide</extracomment>
        <translation>KaliumIODid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H372 causes damage to the thyroid through prolonged or repeated exposure</source>
        <extracomment>potassium iodide</extracomment>
        <translation>H372 schädigt die Schilddrüse bei längerer oder wiederholter Exposition</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves, raise no dust, and do not eat or drink at the bench.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Tragen Sie Handschuhe, wirbeln Sie keinen Staub auf, und essen und trinken Sie nicht am Arbeitsplatz.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Make a dilute stock only: the doses are milligrams.</source>
        <extracomment>potassium iodide, potassium dihydrogen phosphate</extracomment>
        <translation>Setzen Sie nur eine verdünnte Stammlösung an: Die Dosen sind Milligramm.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it in a light-tight bottle.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Bewahren Sie es in einer lichtdichten Flasche auf.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>Natriumnitrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium NITRate</source>
        <extracomment>sodium nitrate</extracomment>
        <translation>NatriumNITRat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H272 may intensify fire; oxidiser</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>H272 kann Brand verstärken; Oxidationsmittel</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Oxidiser: keep it from paper, wood dust, sugar, oil and heat.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Oxidationsmittel: Halten Sie es von Papier, Holzstaub, Zucker, Öl und Hitze fern.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a clean scoop and keep only a small pack.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Verwenden Sie einen sauberen Löffel, und bewahren Sie nur eine kleine Packung auf.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Flood a fire with water.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Löschen Sie einen Brand mit viel Wasser.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>Kaliumnitrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium NITRate</source>
        <extracomment>potassium nitrate</extracomment>
        <translation>KaliumNITRat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen phosphate</source>
        <extracomment>a name</extracomment>
        <translation>Kaliumdihydrogenphosphat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen PHOSPHate</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>KaliumdihydrogenPHOSPHat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: calcium phosphate falls out.</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>Mischen Sie es nie mit einem Konzentrat von Calcium: Calciumphosphat fällt aus.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium chloride</source>
        <extracomment>a name</extracomment>
        <translation>Natriumchlorid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CHLORide</source>
        <extracomment>sodium chloride</extracomment>
        <translation>NatriumCHLORid</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use salt without anti-caking agent or added iodine.</source>
        <extracomment>sodium chloride</extracomment>
        <translation>Verwenden Sie Salz ohne Rieselhilfe und ohne Iodzusatz.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>boric acid</source>
        <extracomment>a name</extracomment>
        <translation>Borsäure</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>BORIC acid</source>
        <extracomment>boric acid</extracomment>
        <translation>BORsäure</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H360FD may damage fertility; may damage the unborn child</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>H360FD kann die Fruchtbarkeit beeinträchtigen; kann das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves and goggles and raise no dust.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Tragen Sie Handschuhe und Schutzbrille, und wirbeln Sie keinen Staub auf.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Not to be handled by anyone who is or may become pregnant.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Darf von niemandem gehandhabt werden, der schwanger ist oder werden kann.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wash hands afterwards.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Waschen Sie danach die Hände.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraborate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>Natriumtetraborat-Decahydrat</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraBORate decahydrate</source>
        <extracomment>sodium tetraborate decahydrate</extracomment>
        <translation>NatriumtetraBORat-Decahydrat</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is too low and is to be raised. Each value of a tank has a correction of its own, which keeps its figures.</source>
        <extracomment>correction.parameter</extracomment>
        <translation>Was zu niedrig ist und angehoben werden soll. Jeder Wert eines Beckens hat eine eigene Korrektur, die ihre Zahlen behält.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What your test showed, in the unit printed on the kit: choose that unit rather than converting by head. The plan starts from this figure.</source>
        <extracomment>correction.measured</extracomment>
        <translation>Was Ihr Test ergab, in der Einheit, die auf dem Testset steht: Wählen Sie diese Einheit, statt im Kopf umzurechnen. Der Plan geht von dieser Zahl aus.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the test was made. A reading that is too old is no basis for a correction. Empty: its age is not checked, and the plan says so.</source>
        <extracomment>correction.measured_at</extracomment>
        <translation>Wann getestet wurde. Ein zu alter Messwert ist keine Grundlage für eine Korrektur. Leer: Sein Alter wird nicht geprüft, und der Plan sagt es.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where the value should come to rest. The line below names what is usually kept; aim for the middle of it when in doubt.</source>
        <extracomment>correction.target</extracomment>
        <translation>Wo der Wert zur Ruhe kommen soll. Die Zeile darunter nennt, was üblich gehalten wird; zielen Sie im Zweifel auf dessen Mitte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most the value may rise in any 24 hours. Empty: the recommended rise. Beyond it a reason is asked for, and never more than the hard limit.</source>
        <extracomment>correction.fastest_rise</extracomment>
        <translation>Um wie viel der Wert in beliebigen 24 Stunden höchstens steigen darf. Leer: der empfohlene Anstieg. Darüber wird nach einem Grund gefragt, und nie mehr als die feste Grenze.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the value falls in a day when nothing is dosed: two tests a few days apart show it. Empty: none, so the water rises a little less than planned.</source>
        <extracomment>correction.daily_use</extracomment>
        <translation>Wie weit der Wert an einem Tag sinkt, wenn nichts dosiert wird: Zwei Tests im Abstand von einigen Tagen zeigen es. Leer: keiner, dann steigt der Wert im Wasser etwas weniger als geplant.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Why this once may go faster than recommended. It is printed on the card, for whoever reads it after you.</source>
        <extracomment>correction.reason</extracomment>
        <translation>Warum es dieses eine Mal schneller gehen darf als empfohlen. Es steht auf der Karte, für den, der sie nach Ihnen liest.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this correction is dosed from. What is in it is shared by every plan that uses it.</source>
        <extracomment>correction.stock</extracomment>
        <translation>Der Kanister, aus dem diese Korrektur dosiert wird. Was darin ist, gilt für jeden Plan, der ihn verwendet.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that doses this. Its flow turns millilitres into running time.</source>
        <extracomment>correction.pump</extracomment>
        <translation>Die Pumpe, die dies dosiert. Ihre Förderleistung macht aus Millilitern Laufzeit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call this tank. It stands on every card and label, so that nobody doses the wrong one.</source>
        <extracomment>system.name</extracomment>
        <translation>Wie Sie dieses Becken nennen. Es steht auf jeder Karte und jedem Etikett, damit niemand in das falsche dosiert.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>All the water that moves together: display and sump, without rock, sand and equipment. Not the size of the glass. Every dose is in proportion to it.</source>
        <extracomment>system.net_volume</extracomment>
        <translation>Alles Wasser, das sich gemeinsam bewegt: Schaubecken und Technikbecken, ohne Gestein, Sand und Geräte. Nicht die Größe des Glases. Jede Dosis richtet sich danach.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How you found the net volume. Counted as within {filled}&#xa0;% by filling, {dosed}&#xa0;% by dose and test, {dimensions}&#xa0;% from dimensions. Unknown: its low end is taken, {unknown}&#xa0;% less.</source>
        <extracomment>system.volume_known</extracomment>
        <translation>Wie Sie das Nettovolumen bestimmt haben. Es gilt als genau auf {filled}&#xa0;% durch Füllen, {dosed}&#xa0;% durch Dosis und Test, {dimensions}&#xa0;% aus Maßen. Unbekannt: Sein unteres Ende wird genommen, {unknown}&#xa0;% weniger.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the net volume may be off, either way. Empty: what is usual for how it was found. The band around the ramp comes from it.</source>
        <extracomment>system.volume_uncertainty</extracomment>
        <translation>Wie weit das Nettovolumen abweichen kann, nach oben oder unten. Leer: was für die Art der Bestimmung üblich ist. Das Band um die Rampe kommt daher.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How salty the tank is, from a refractometer, hydrometer or conductivity meter. Figures per kilogram and the pH need it. Empty: {salinity}.</source>
        <extracomment>system.salinity</extracomment>
        <translation>Wie salzig das Becken ist, mit Refraktometer, Aräometer oder Leitfähigkeitsmessgerät gemessen. Angaben pro Kilogramm und der pH brauchen sie. Leer: {salinity}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, from its thermometer. Density and pH depend on it. Empty: {temperature}&#xa0;°C.</source>
        <extracomment>system.temperature</extracomment>
        <translation>Die des Beckens, von seinem Thermometer. Dichte und pH hängen davon ab. Leer: {temperature}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, in the morning, when it is lowest of the day. Empty: {ph} is taken for the rise of a dose, and no highest pH is held.</source>
        <extracomment>system.ph</extracomment>
        <translation>Der des Beckens, am Morgen, wenn er am niedrigsten ist. Leer: Für den Anstieg durch eine Dosis wird {ph} angenommen, und kein höchster pH wird eingehalten.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: it says how far a dose moves the pH. Empty: that of natural seawater.</source>
        <extracomment>system.alkalinity</extracomment>
        <translation>Wird nur verwendet, wenn etwas anderes korrigiert wird: Sie sagt, wie weit eine Dosis den pH bewegt. Leer: die von natürlichem Meerwasser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: with alkalinity it says how near lime is to falling out. Empty: that of natural seawater.</source>
        <extracomment>system.calcium</extracomment>
        <translation>Wird nur verwendet, wenn etwas anderes korrigiert wird: Zusammen mit der Alkalinität sagt es, wie nahe Kalk am Ausfallen ist. Leer: das von natürlichem Meerwasser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much fresh water replaces what evaporates in a day: mark the top-off jug and look a day later. Limewater never goes in faster than this. Empty: not checked, and the plan says so.</source>
        <extracomment>system.evaporation</extracomment>
        <translation>Wie viel Süßwasser an einem Tag ersetzt, was verdunstet: Markieren Sie den Kanister mit Nachfüllwasser, und sehen Sie einen Tag später nach. Kalkwasser kommt nie schneller hinein als dies. Leer: nicht geprüft, und der Plan sagt es.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water goes out, and new water in, in a day. Upkeep, foods and recovery reckon with the same figure. Empty: none.</source>
        <extracomment>system.exchanged</extracomment>
        <translation>Wie viel Wasser an einem Tag hinausgeht und frisches Salzwasser hineinkommt. Versorgung, Futter und Abhilfe rechnen mit derselben Zahl. Leer: keines.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug is called on the shelf, such as its colour and what is in it. It stands on its label and on every card.</source>
        <extracomment>stock.name</extracomment>
        <translation>Wie der Kanister im Regal heißt, etwa nach Farbe und Inhalt. Es steht auf seinem Etikett und auf jeder Karte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug takes when full. Needed to say how long it lasts, and what would happen if all of it ran in.</source>
        <extracomment>stock.holds</extracomment>
        <translation>Was der Kanister fasst, wenn er voll ist. Nötig, um zu sagen, wie lange er reicht und was geschähe, wenn alles einliefe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What stays in the jug below the end of its tube and is never pumped. Empty: none.</source>
        <extracomment>stock.unreachable</extracomment>
        <translation>Was unter dem Ende des Schlauchs im Kanister bleibt und nie gepumpt wird. Leer: nichts.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How closely you can read the level: half a line of its scale. Empty: {level}&#xa0;% of what it holds. The pump check is no finer than this.</source>
        <extracomment>stock.level_accuracy</extracomment>
        <translation>Wie genau Sie den Füllstand ablesen können: ein halber Teilstrich seiner Skala. Leer: {level}&#xa0;% dessen, was er fasst. Die Prüfung der Pumpe ist nicht feiner als dies.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The words on the bag, water of crystallisation included: two salts of nearly the same name differ by a half or more in strength.</source>
        <extracomment>batch.chemical</extracomment>
        <translation>Die Wörter auf dem Beutel, Kristallwasser eingeschlossen: Zwei Salze mit fast gleichem Namen unterscheiden sich in der Stärke um die Hälfte oder mehr.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it was weighed into the jug.</source>
        <extracomment>batch.dissolved</extracomment>
        <translation>Wie viel davon in den Kanister eingewogen wurde.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of the second salt, magnesium sulfate, was weighed into the same jug.</source>
        <extracomment>batch.also_dissolved</extracomment>
        <translation>Wie viel vom zweiten Salz, Magnesiumsulfat, in denselben Kanister eingewogen wurde.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>To what mark the jug was filled in the end, salt included. Not how much water went in.</source>
        <extracomment>batch.made_up_to</extracomment>
        <translation>Bis zu welcher Marke der Kanister am Ende aufgefüllt wurde, Salz eingeschlossen. Nicht, wie viel Wasser hineinkam.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date it was mixed, for its label and card.</source>
        <extracomment>batch.mixed_on</extracomment>
        <translation>Das Datum des Ansetzens, für Etikett und Karte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For a bottle known by its label only: the dose that the label speaks of, as in 'x mL raise y L by z'.</source>
        <extracomment>batch.label_dose</extracomment>
        <translation>Nur für eine Flasche, die durch ihr Etikett bekannt ist: die Dosis, von der das Etikett spricht, wie in „x mL heben y L um z an“.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in that sentence of the label. Not your tank's.</source>
        <extracomment>batch.label_water</extracomment>
        <translation>Das Wasser in diesem Satz des Etiketts. Nicht das Ihres Beckens.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in that sentence of the label, in the unit it uses.</source>
        <extracomment>batch.label_raises</extracomment>
        <translation>Der Anstieg in diesem Satz des Etiketts, in der Einheit, die es verwendet.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bottle raises. One bottle, one value: take the label's sentence about the value you dose it for.</source>
        <extracomment>batch.label_parameter</extracomment>
        <translation>Was die Flasche anhebt. Eine Flasche, ein Wert: Nehmen Sie den Satz des Etiketts über den Wert, für den Sie sie dosieren.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bag says; technical salts are often below 100&#xa0;%. Empty: 100&#xa0;%, so that a weaker salt does less than planned, never more.</source>
        <extracomment>batch.purity</extracomment>
        <translation>Was auf dem Beutel steht; technische Salze liegen oft unter 100&#xa0;%. Leer: 100&#xa0;%, damit ein schwächeres Salz weniger bewirkt als geplant, nie mehr.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the second salt, from its own bag. Empty: 100&#xa0;%.</source>
        <extracomment>batch.also_purity</extracomment>
        <translation>Die des zweiten Salzes, von seinem eigenen Beutel. Leer: 100&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The coldest the jug will stand, as in a garage in winter. What just dissolves in the warm falls out in the cold. Empty: {room}&#xa0;°C.</source>
        <extracomment>batch.temperature</extracomment>
        <translation>Die kälteste Temperatur, bei der der Kanister steht, etwa im Winter in einer Garage. Was sich im Warmen gerade noch löst, fällt in der Kälte aus. Leer: {room}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you know: what you weighed, the strength you want, or the jug it is to match. The other figures are reckoned from it.</source>
        <extracomment>batch.recipe</extracomment>
        <translation>Was Sie wissen: was Sie abgewogen haben, die Stärke, die Sie wollen, oder den Kanister, zu dem es passen soll. Die anderen Zahlen werden daraus berechnet.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this one must match, so that equal millilitres of both keep alkalinity and calcium in step.</source>
        <extracomment>batch.partner</extracomment>
        <translation>Der Kanister, zu dem dieser passen muss, damit gleiche Milliliter von beiden Alkalinität und Calcium im Gleichschritt halten.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose that you want to be enough for the rise beside it.</source>
        <extracomment>batch.wanted_dose</extracomment>
        <translation>Die Dosis, die für den Anstieg daneben reichen soll.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water that this dose goes into, usually your net volume.</source>
        <extracomment>batch.wanted_water</extracomment>
        <translation>Das Wasser, in das diese Dosis kommt, meist Ihr Nettovolumen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far that one dose is to raise it. The amount to weigh out follows.</source>
        <extracomment>batch.wanted_raises</extracomment>
        <translation>Wie weit diese eine Dosis es anheben soll. Die abzuwiegende Menge folgt daraus.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who mixed it, for the label.</source>
        <extracomment>batch.mixed_by</extracomment>
        <translation>Wer es angesetzt hat, für das Etikett.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last day this batch is to be used; it stands on the label. Empty: none is printed.</source>
        <extracomment>batch.use_by</extracomment>
        <translation>Der letzte Tag, an dem dieser Ansatz verwendet werden darf; er steht auf dem Etikett. Leer: Es wird keiner gedruckt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call the pump, such as where it hangs. It stands on every card.</source>
        <extracomment>pump.name</extracomment>
        <translation>Wie Sie die Pumpe nennen, etwa danach, wo sie hängt. Es steht auf jeder Karte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it really delivers while it runs, with its own line and jug: calibrate it on the Pumps sheet. The figure on its box is only a start.</source>
        <extracomment>pump.flow</extracomment>
        <translation>Was sie im Lauf wirklich fördert, mit eigener Leitung und eigenem Kanister: Kalibrieren Sie sie auf dem Blatt Pumpen. Die Zahl auf der Schachtel ist nur ein Anfang.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many times it runs in a day, evenly spread. Many small doses move the water least. Empty: {doses}.</source>
        <extracomment>pump.doses_per_day</extracomment>
        <translation>Wie oft sie am Tag läuft, gleichmäßig verteilt. Viele kleine Dosen bewegen das Wasser am wenigsten. Leer: {doses}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The least it gives reliably in one run, from its manual or your own tests. Empty: not checked.</source>
        <extracomment>pump.smallest_dose</extracomment>
        <translation>Das Wenigste, was sie in einem Lauf zuverlässig fördert, aus ihrer Anleitung oder Ihren eigenen Tests. Leer: nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The steps in which its dose can be set, as 0.1&#xa0;mL. Doses are rounded down to it. Empty: a tenth of a millilitre, finer for small doses.</source>
        <extracomment>pump.step</extracomment>
        <translation>Die Schritte, in denen sich ihre Dosis einstellen lässt, etwa 0,1&#xa0;mL. Dosen werden darauf abgerundet. Leer: ein Zehntel Milliliter, bei kleinen Dosen feiner.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most it may run, as a share of the time: motors and heads need rest. Empty: {share}&#xa0;%.</source>
        <extracomment>pump.largest_share</extracomment>
        <translation>Wie viel sie höchstens laufen darf, als Anteil der Zeit: Motoren und Pumpenköpfe brauchen Ruhe. Leer: {share}&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A brushed motor slows as it ages, a stepper motor keeps its pace. Empty: nothing is said about it.</source>
        <extracomment>pump.motor</extracomment>
        <translation>Ein Bürstenmotor wird mit dem Alter langsamer, ein Schrittmotor behält sein Tempo. Leer: Es wird nichts dazu gesagt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How high the end of the line hangs above the water. Below the water, or with no air gap, the jug can siphon into the tank.</source>
        <extracomment>pump.outlet_height</extracomment>
        <translation>Wie hoch das Ende der Leitung über dem Wasser hängt. Unter Wasser oder ohne Luftabstand kann der Kanister durch Heberwirkung ins Becken laufen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of the line, from the tubing's label. With its length it says how much must be primed after a refill.</source>
        <extracomment>pump.line_bore</extracomment>
        <translation>Innendurchmesser der Leitung, vom Etikett des Schlauchs. Mit der Länge sagt er, wie viel nach dem Nachfüllen vorgefüllt werden muss.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of the line from the jug to the water.</source>
        <extracomment>pump.line_length</extracomment>
        <translation>Länge der Leitung vom Kanister zum Wasser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date its head or tubing was last changed. Wear is counted from it.</source>
        <extracomment>pump.head_fitted</extracomment>
        <translation>Das Datum, an dem Pumpenkopf oder Schlauch zuletzt gewechselt wurde. Der Verschleiß wird von da an gezählt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Hours this head has run by now, where the pump counts them. Wear goes with hours, not with age.</source>
        <extracomment>pump.head_hours</extracomment>
        <translation>Stunden, die dieser Pumpenkopf bis jetzt gelaufen ist, wenn die Pumpe sie zählt. Verschleiß geht nach Stunden, nicht nach Alter.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many running hours a head of this kind lasts. Empty: {life}, which is common practice.</source>
        <extracomment>pump.head_life</extracomment>
        <translation>Wie viele Laufstunden ein Pumpenkopf dieser Art hält. Leer: {life}, das ist übliche Praxis.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Kind and size of the tubing, so that the next one is the same.</source>
        <extracomment>pump.tubing</extracomment>
        <translation>Art und Größe des Schlauchs, damit der nächste der gleiche ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the runs were made. What is calibrated is what the pump gave that day.</source>
        <extracomment>calibration.at</extracomment>
        <translation>Wann die Läufe gemacht wurden. Kalibriert wird, was die Pumpe an diesem Tag förderte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump's hour counter showed, if it has one. A line through several calibrations then shows the wear.</source>
        <extracomment>calibration.hours</extracomment>
        <translation>Was der Stundenzähler der Pumpe zeigte, wenn sie einen hat. Eine Linie durch mehrere Kalibrierungen zeigt dann den Verschleiß.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the water was caught and measured with. A scale is usually closer than a cylinder for small amounts.</source>
        <extracomment>calibration.method</extracomment>
        <translation>Womit das Wasser aufgefangen und gemessen wurde. Bei kleinen Mengen ist eine Waage meist genauer als ein Zylinder.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The smallest step of the cylinder's scale. Empty: the last digit you wrote.</source>
        <extracomment>calibration.graduation</extracomment>
        <translation>Der kleinste Schritt der Skala des Zylinders. Leer: die letzte Stelle, die Sie geschrieben haben.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last digit the scale shows. Empty: the last digit you wrote.</source>
        <extracomment>calibration.readability</extracomment>
        <translation>Die letzte Stelle, die die Waage zeigt. Leer: die letzte Stelle, die Sie geschrieben haben.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the water that was weighed: warm water weighs less. Empty: an ordinary room, which widens the interval a little.</source>
        <extracomment>calibration.water_temperature</extracomment>
        <translation>Die des gewogenen Wassers: Warmes Wasser wiegt weniger. Leer: ein gewöhnlicher Raum, was das Intervall etwas breiter macht.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who made the runs.</source>
        <extracomment>calibration.who</extracomment>
        <translation>Wer die Läufe gemacht hat.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A hand on a stop watch is a little late or early each time; the pump's own clock is not. It counts in the interval.</source>
        <extracomment>calibration.timed</extracomment>
        <translation>Eine Hand an der Stoppuhr ist jedes Mal etwas zu spät oder zu früh; die Uhr der Pumpe nicht. Das zählt im Intervall.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many doses made up one run, where the pump cannot run without stopping. Empty: one.</source>
        <extracomment>calibration.doses</extracomment>
        <translation>Aus wie vielen Dosen ein Lauf bestand, wenn die Pumpe nicht ohne Halt laufen kann. Leer: eine.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Weighing only: air lifts a little. It matters high in the mountains. Empty: that of sea level, within a wide interval.</source>
        <extracomment>calibration.air_pressure</extracomment>
        <translation>Nur beim Wiegen: Luft hebt ein wenig. Hoch in den Bergen ist das von Bedeutung. Leer: der auf Meereshöhe, in einem weiten Intervall.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long this run lasted. Run about as long as a dose in use, and longer for a weak pump. Empty: as the run before.</source>
        <extracomment>calibration.run_seconds</extracomment>
        <translation>Wie lange dieser Lauf dauerte. Lassen Sie sie etwa so lange laufen wie eine benutzte Dosis, und länger bei einer schwachen Pumpe. Leer: wie der Lauf davor.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What came out in this run. {runs} runs show how well the pump repeats itself; prime the line before the first.</source>
        <extracomment>calibration.run_reads</extracomment>
        <translation>Was bei diesem Lauf herauskam. {runs} Läufe zeigen, wie gut sich die Pumpe wiederholt; füllen Sie die Leitung vor dem ersten vor.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call it. It stands on its label and in the plan of the day.</source>
        <extracomment>food.name</extracomment>
        <translation>Wie Sie es nennen. Es steht auf seinem Etikett und im Tagesplan.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it is decides how it is handled and how long it may stand in a line. A liquid food spoils.</source>
        <extracomment>food.sort</extracomment>
        <translation>Was es ist, entscheidet, wie es behandelt wird und wie lange es in einer Leitung stehen darf. Ein flüssiges Futter verdirbt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The day it was opened. With how long it keeps it gives the day to throw it away.</source>
        <extracomment>food.opened_on</extracomment>
        <translation>Der Tag, an dem es geöffnet wurde. Mit der Haltbarkeit ergibt er den Tag zum Wegwerfen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Days it keeps once opened, from its label. Empty: no date is given.</source>
        <extracomment>food.keeps_days</extracomment>
        <translation>Tage, die es geöffnet hält, vom Etikett. Leer: Es wird kein Datum angegeben.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it stands in the cold. A liquid food in the warm keeps {warm} day at most, which is common practice.</source>
        <extracomment>food.cold</extracomment>
        <translation>Ob es in der Kälte steht. Ein flüssiges Futter hält im Warmen höchstens {warm} Tag, das ist übliche Praxis.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was in its jug when it was opened. It says when it runs out, and what is left when it must be thrown away.</source>
        <extracomment>food.jug_volume</extracomment>
        <translation>Wie viel beim Öffnen in seinem Kanister war. Es sagt, wann er leer wird und was übrig ist, wenn es weggeworfen werden muss.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How its label speaks: what a millilitre carries, percent by mass, or what a dose does to so much water.</source>
        <extracomment>food.says</extracomment>
        <translation>Wie das Etikett spricht: was ein Milliliter enthält, Massenprozent, oder was eine Dosis mit so viel Wasser macht.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Nitrogen in a millilitre, from the label or its maker. What the animals do not keep becomes nitrate. It is needed.</source>
        <extracomment>food.nitrogen</extracomment>
        <translation>Stickstoff in einem Milliliter, vom Etikett oder vom Hersteller. Was die Tiere nicht behalten, wird zu Nitrat. Diese Angabe ist nötig.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Phosphorus in a millilitre, as the element: a figure as P2O5 is more than twice as large. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus</extracomment>
        <translation>Phosphor in einem Milliliter, als Element: Eine Angabe als P2O5 ist mehr als doppelt so groß. Leer: Phosphat wird nicht verfolgt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent protein on the label. Divided by {protein} it is nitrogen.</source>
        <extracomment>food.protein</extracomment>
        <translation>Prozent Protein auf dem Etikett. Geteilt durch {protein} ist es Stickstoff.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent nitrogen, where the label says so itself; it goes before the protein.</source>
        <extracomment>food.nitrogen_share</extracomment>
        <translation>Prozent Stickstoff, wenn das Etikett sie selbst nennt; sie haben Vorrang vor dem Protein.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent phosphorus by mass, as the element, not as P2O5. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus_share</extracomment>
        <translation>Massenprozent Phosphor, als Element, nicht als P2O5. Leer: Phosphat wird nicht verfolgt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How heavy a millilitre is, to turn percent by mass into amounts. Empty: as heavy as water.</source>
        <extracomment>food.density</extracomment>
        <translation>Wie schwer ein Milliliter ist, um aus Massenprozent Mengen zu machen. Leer: so schwer wie Wasser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What its label says it raises.</source>
        <extracomment>food.label_parameter</extracomment>
        <translation>Was es laut Etikett anhebt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose in the label's sentence.</source>
        <extracomment>food.label_dose</extracomment>
        <translation>Die Dosis im Satz des Etiketts.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in the label's sentence. Not your tank's.</source>
        <extracomment>food.label_water</extracomment>
        <translation>Das Wasser im Satz des Etiketts. Nicht das Ihres Beckens.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in the label's sentence.</source>
        <extracomment>food.label_raises</extracomment>
        <translation>Der Anstieg im Satz des Etiketts.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it is given in a whole day, all feedings together.</source>
        <extracomment>food.per_day</extracomment>
        <translation>Wie viel davon an einem ganzen Tag gegeben wird, alle Fütterungen zusammen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many portions. Empty: the doses a day of its pump, else one.</source>
        <extracomment>food.feedings</extracomment>
        <translation>In wie vielen Portionen. Leer: die Dosen am Tag seiner Pumpe, sonst eine.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it is being given now. A paused food counts for nothing.</source>
        <extracomment>food.paused</extracomment>
        <translation>Ob es jetzt gegeben wird. Ein pausiertes Futter zählt nicht.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that gives it, if one does. A pump draws from one jug only.</source>
        <extracomment>food.pump</extracomment>
        <translation>Die Pumpe, die es gibt, falls eine es gibt. Eine Pumpe zieht nur aus einem Kanister.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of its line. Food that stands in a warm line spoils. Empty: that of its pump.</source>
        <extracomment>food.line_bore</extracomment>
        <translation>Innendurchmesser seiner Leitung. Futter, das in einer warmen Leitung steht, verdirbt. Leer: der seiner Pumpe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of its line. Empty: that of its pump.</source>
        <extracomment>food.line_length</extracomment>
        <translation>Länge seiner Leitung. Leer: die seiner Pumpe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>One figure for both pumps, what the exchange equals as a batch change, or each pump by itself where they differ.</source>
        <extracomment>water.way</extracomment>
        <translation>Eine Zahl für beide Pumpen, der Einzelwechsel, dem der Wasserwechsel entspricht, oder jede Pumpe für sich, wenn sie sich unterscheiden.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The share of the water you used to change at once. The continuous exchange is made as strong as that.</source>
        <extracomment>water.as_much_as</extracomment>
        <translation>Der Anteil des Wassers, den Sie bisher auf einmal gewechselt haben. Der laufende Wasserwechsel wird so stark gemacht wie dieser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How often you changed that much. Empty: every {week} days.</source>
        <extracomment>water.every_days</extracomment>
        <translation>Wie oft Sie so viel gewechselt haben. Leer: alle {week} Tage.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of old water takes out in a day, as calibrated. Top-off fills what is missing.</source>
        <extracomment>water.out</extracomment>
        <translation>Was die Pumpe für altes Wasser am Tag entnimmt, wie kalibriert. Nachfüllwasser füllt auf, was fehlt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of new water brings in a day. If it differs from the other, salinity drifts.</source>
        <extracomment>water.in</extracomment>
        <translation>Was die Pumpe für frisches Salzwasser am Tag bringt. Weicht es von der anderen ab, verschiebt sich die Salinität.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of old water takes before it overflows. It says when to empty it.</source>
        <extracomment>water.old_jug</extracomment>
        <translation>Was der Kanister für altes Wasser fasst, bevor er überläuft. Es sagt, wann er zu leeren ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of new water holds. It says when to fill it, and whether it could flood the tank.</source>
        <extracomment>water.new_jug</extracomment>
        <translation>Was der Kanister für frisches Salzwasser fasst. Es sagt, wann er zu füllen ist und ob er das Becken überfluten könnte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far ahead the values are followed. Empty: {ahead} days.</source>
        <extracomment>water.days</extracomment>
        <translation>Wie weit im Voraus die Werte verfolgt werden. Leer: {ahead} Tage.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water, tested when all salt is clear. Empty: that of the tank.</source>
        <extracomment>water.salinity</extracomment>
        <translation>Die des frischen Salzwassers, getestet, wenn alles Salz klar gelöst ist. Leer: die des Beckens.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water as it goes in. Far from the tank's, and you are warned. Empty: not checked.</source>
        <extracomment>water.temperature</extracomment>
        <translation>Die des frischen Salzwassers, wie es hineinkommt. Liegt sie weit von der des Beckens, werden Sie gewarnt. Leer: nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the new water holds of this, from a test of it. Empty: that of natural seawater at the same salinity, which a salt mix may miss.</source>
        <extracomment>water.value</extracomment>
        <translation>Was das frische Salzwasser davon enthält, nach einem Test. Leer: so viel wie natürliches Meerwasser gleicher Salinität, was eine Salzmischung verfehlen kann.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much new water you mix at a time.</source>
        <extracomment>water.mix_volume</extracomment>
        <translation>Wie viel frisches Salzwasser Sie auf einmal mischen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag of salt mix: how much of it the bag says to take.</source>
        <extracomment>water.label_mass</extracomment>
        <translation>Vom Beutel der Salzmischung: wie viel davon laut Beutel zu nehmen ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: for how much water that is.</source>
        <extracomment>water.label_water</extracomment>
        <translation>Vom Beutel: für wie viel Wasser das ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: the salinity that it is said to give.</source>
        <extracomment>water.label_salinity</extracomment>
        <translation>Vom Beutel: die Salinität, die es ergeben soll.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you measured in the bucket when all was clear. What to add, salt or water, follows from it.</source>
        <extracomment>water.mix_measured</extracomment>
        <translation>Was Sie im Eimer gemessen haben, als alles klar war. Was zuzugeben ist, Salz oder Wasser, folgt daraus.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What skimmer, algae and media take out in a day, as a share. Empty: nothing leaves but by exchange.</source>
        <extracomment>water.nitrate_loss, water.phosphate_loss</extracomment>
        <translation>Was Abschäumer, Algen und Filtermedien am Tag entziehen, als Anteil. Leer: Nichts geht hinaus außer durch Wasserwechsel.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is in the jug now. Two levels show what the pump really took out of it.</source>
        <extracomment>level.level</extracomment>
        <translation>Was jetzt im Kanister ist. Zwei Füllstände zeigen, was die Pumpe wirklich entnommen hat.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was left before you filled it up. Empty: nobody looked, and the time before is not checked.</source>
        <extracomment>level.before</extracomment>
        <translation>Was noch da war, bevor Sie ihn nachgefüllt haben. Leer: Niemand hat nachgesehen, und die Zeit davor wird nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the level was read. Empty: now.</source>
        <extracomment>level.at</extracomment>
        <translation>Wann der Füllstand abgelesen wurde. Leer: jetzt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who read it.</source>
        <extracomment>level.who</extracomment>
        <translation>Wer ihn abgelesen hat.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When somebody is back at the tank. What must be filled before, and what falls due meanwhile, follows.</source>
        <extracomment>absence.until</extracomment>
        <translation>Wann wieder jemand am Becken ist. Was vorher gefüllt werden muss und was inzwischen fällig wird, folgt daraus.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What happened: a test, a dose by hand, a water change, or only a note.</source>
        <extracomment>entry.kind</extracomment>
        <translation>Was geschah: ein Test, eine Dosis von Hand, ein Wasserwechsel oder nur eine Notiz.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was tested.</source>
        <extracomment>entry.parameter</extracomment>
        <translation>Was getestet wurde.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the test showed, in the unit of the kit. Note every test, good ones too: the use per day is learned from them.</source>
        <extracomment>entry.value</extracomment>
        <translation>Was der Test ergab, in der Einheit des Testsets. Notieren Sie jeden Test, auch die guten: Der Verbrauch pro Tag wird daraus gelernt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug the dose came from. What its batch carried is kept with the dose.</source>
        <extracomment>entry.stock</extracomment>
        <translation>Der Kanister, aus dem die Dosis kam. Was sein Ansatz enthielt, wird mit der Dosis aufbewahrt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was given, all of it at this one time.</source>
        <extracomment>entry.amount</extracomment>
        <translation>Wie viel gegeben wurde, alles zu diesem einen Zeitpunkt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water was changed at once.</source>
        <extracomment>entry.litres</extracomment>
        <translation>Wie viel Wasser auf einmal gewechselt wurde.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Anything worth finding again: a lost coral, a new lamp, a cleaned pump.</source>
        <extracomment>entry.text</extracomment>
        <translation>Alles, was wiederzufinden sich lohnt: eine verlorene Koralle, eine neue Lampe, eine gereinigte Pumpe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When it was. Empty: now.</source>
        <extracomment>entry.at</extracomment>
        <translation>Wann es war. Leer: jetzt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which kit or meter, so that a jump can be laid at a new kit's door.</source>
        <extracomment>entry.kit</extracomment>
        <translation>Welches Testset oder Messgerät, damit sich ein Sprung einem neuen Testset zuschreiben lässt.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who did it, so that two people do not dose twice.</source>
        <extracomment>entry.who</extracomment>
        <translation>Wer es getan hat, damit nicht zwei Personen doppelt dosieren.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From when nobody wants to hear a pump. Empty: pumps may run at any time.</source>
        <extracomment>timetable.quiet_from</extracomment>
        <translation>Ab wann niemand eine Pumpe hören will. Leer: Pumpen dürfen jederzeit laufen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Until when it is to be quiet. Over midnight is fine.</source>
        <extracomment>timetable.quiet_to</extracomment>
        <translation>Bis wann es ruhig sein soll. Über Mitternacht ist möglich.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long doses of alkalinity and of calcium stay apart, so that they do not meet undiluted. Empty: {apart} minutes; never less than {least_apart}. Common practice.</source>
        <extracomment>timetable.apart</extracomment>
        <translation>Wie lange Dosen von Alkalinität und von Calcium auseinanderliegen, damit sie sich nicht unverdünnt treffen. Leer: {apart} Minuten; nie weniger als {least_apart}. Übliche Praxis.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For pumps on one supply or outlet: no two run at once.</source>
        <extracomment>timetable.one_at_a_time</extracomment>
        <translation>Für Pumpen an einem gemeinsamen Netzteil oder Auslass: Nie laufen zwei zugleich.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many doses the day's amount is given. Empty: as the pump is set, or fewer where the quiet hours leave less room.</source>
        <extracomment>timetable.doses_wanted</extracomment>
        <translation>In wie vielen Dosen die Tagesmenge gegeben wird. Leer: wie die Pumpe eingestellt ist, oder weniger, wo die Ruhezeiten weniger Platz lassen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>No dose of this pump before that time of day. Empty: any time.</source>
        <extracomment>timetable.first_at</extracomment>
        <translation>Keine Dosis dieser Pumpe vor dieser Uhrzeit. Leer: jederzeit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The fewest doses you would accept where the wanted number does not fit. Empty: no bound.</source>
        <extracomment>timetable.doses_fewest</extracomment>
        <translation>Die wenigsten Dosen, die Sie hinnehmen würden, wenn die gewünschte Zahl nicht passt. Leer: keine Grenze.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most doses you would accept. Empty: no bound.</source>
        <extracomment>timetable.doses_most</extracomment>
        <translation>Die meisten Dosen, die Sie hinnehmen würden. Leer: keine Grenze.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that ran in. None, if a test alone shows that a value is too high.</source>
        <extracomment>recovery.stock</extracomment>
        <translation>Der Kanister, der eingelaufen ist. Keiner, wenn allein ein Test zeigt, dass ein Wert zu hoch ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much ran in: what is missing from the jug. If unsure, take the most it can have been.</source>
        <extracomment>recovery.ran_in</extracomment>
        <translation>Wie viel eingelaufen ist: was im Kanister fehlt. Wenn Sie unsicher sind, nehmen Sie das Höchste, was es gewesen sein kann.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The value that is too high. What ran in may raise several; take the worst.</source>
        <extracomment>recovery.parameter</extracomment>
        <translation>Der Wert, der zu hoch ist. Was eingelaufen ist, kann mehrere anheben; nehmen Sie den schlimmsten.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What a test showed since. Empty: what ran in, on top of the last test before.</source>
        <extracomment>recovery.measured</extracomment>
        <translation>Was ein Test seitdem ergab. Leer: was eingelaufen ist, zusätzlich zum letzten Test davor.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where it is to come down to. Empty: the top of what is usually kept.</source>
        <extracomment>recovery.target</extracomment>
        <translation>Worauf er sinken soll. Leer: das obere Ende dessen, was üblich gehalten wird.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Milky water means that lime is falling out: what was dosed is leaving the water by itself, and a test is needed before anything else.</source>
        <extracomment>recovery.cloudy</extracomment>
        <translation>Milchiges Wasser bedeutet, dass Kalk ausfällt: Was dosiert wurde, verlässt das Wasser von selbst, und vor allem anderen ist ein Test nötig.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>White film on glass or heaters is lime that has fallen out.</source>
        <extracomment>recovery.white_film</extracomment>
        <translation>Weißer Belag auf Glas oder Heizern ist ausgefallener Kalk.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most new water you can mix and bring in, in a day. Empty: {largest}&#xa0;% of the tank, which is the most in any case.</source>
        <extracomment>recovery.most_per_day</extracomment>
        <translation>Das meiste frische Salzwasser, das Sie an einem Tag mischen und einbringen können. Leer: {largest}&#xa0;% des Beckens, was in jedem Fall das Höchste ist.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether doses of this one stop as well while the other value comes down. It then falls by what the animals use.</source>
        <extracomment>recovery.hold</extracomment>
        <translation>Ob auch die Dosen von diesem Wert ausgesetzt werden, während der andere Wert sinkt. Er sinkt dann um das, was die Tiere verbrauchen.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which value the chart below shows. It changes nothing in the plan.</source>
        <extracomment>shown.parameter</extracomment>
        <translation>Welchen Wert das Diagramm unten zeigt. Am Plan ändert es nichts.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The paper in your printer. The letters keep their size; smaller paper takes more sheets.</source>
        <extracomment>printed.paper</extracomment>
        <translation>Das Papier in Ihrem Drucker. Die Schrift behält ihre Größe; kleineres Papier braucht mehr Blätter.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Alkalinity</source>
        <extracomment>alkalinity</extracomment>
        <translation>Alkalinität</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much acid the water can take up before its pH falls for good. Corals build skeleton from it: two equivalents for every calcium. Counted in dKH, meq per L or ppm as CaCO3.</source>
        <extracomment>alkalinity</extracomment>
        <translation>Wie viel Säure das Wasser aufnehmen kann, bevor sein pH endgültig sinkt. Korallen bauen daraus Skelett: zwei Äquivalente für jedes Calcium. Gezählt in dKH, meq pro L oder ppm als CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far the water is above the point at which lime dissolves. Corals need it above 1; where it is very high, lime falls out by itself.</source>
        <extracomment>aragonite saturation</extracomment>
        <translation>Wie weit das Wasser über dem Punkt liegt, an dem sich Kalk löst. Korallen brauchen sie über 1; wo sie sehr hoch ist, fällt Kalk von selbst aus.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What was mixed in a jug at one time. A new batch of another strength makes the cards of the old one void.</source>
        <extracomment>batch</extracomment>
        <translation>Was auf einmal in einem Kanister angesetzt wurde. Ein neuer Ansatz anderer Stärke macht die Karten des alten ungültig.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Calcium</source>
        <extracomment>calcium</extracomment>
        <translation>Calcium</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>With alkalinity the material of coral skeleton. One meq of alkalinity used goes with 20.04 mg of calcium.</source>
        <extracomment>calcium</extracomment>
        <translation>Mit der Alkalinität der Stoff, aus dem das Korallenskelett besteht. Zu einem verbrauchten meq Alkalinität gehören 20,04 mg Calcium.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Finding out what a pump really gives: let it run for a known time, measure what came out, three times or more.</source>
        <extracomment>calibration</extracomment>
        <translation>Herausfinden, was eine Pumpe wirklich fördert: eine bekannte Zeit laufen lassen und messen, was herauskam, dreimal oder öfter.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Correction</source>
        <extracomment>correction</extracomment>
        <translation>Korrektur</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing back a value that has fallen, slowly, over days. A fast rise harms animals more than the low value did.</source>
        <extracomment>correction</extracomment>
        <translation>Einen gesunkenen Wert zurückbringen, langsam, über Tage. Ein schneller Anstieg schadet Tieren mehr, als der niedrige Wert es tat.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>dKH (degrees of carbonate hardness)</source>
        <extracomment>dKH</extracomment>
        <translation>dKH (Grad Karbonathärte)</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A unit of alkalinity. 2.8 dKH are 1 meq per L, or 50 ppm as CaCO3.</source>
        <extracomment>dKH</extracomment>
        <translation>Eine Einheit der Alkalinität. 2,8 dKH sind 1 meq pro L oder 50 ppm als CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Dose and test</source>
        <extracomment>dose and test</extracomment>
        <translation>Dosis und Test</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A way to find the net volume: give a known dose, test the rise, and see how much water it was spread through.</source>
        <extracomment>dose and test</extracomment>
        <translation>Ein Weg, das Nettovolumen zu bestimmen: eine bekannte Dosis geben, den Anstieg testen und sehen, auf wie viel Wasser sie sich verteilt hat.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The paper that hangs on the stand: how much of what, when, until which date, and when to stop.</source>
        <extracomment>dose card</extracomment>
        <translation>Das Papier, das am Unterschrank hängt: wie viel wovon, wann, bis zu welchem Datum und wann zu stoppen ist.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hard limit</source>
        <extracomment>hard limit</extracomment>
        <translation>Feste Grenze</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A bound that no plan passes, whatever the reason. Inside it lies the recommended one, which may be passed with a written reason.</source>
        <extracomment>hard limit</extracomment>
        <translation>Eine Grenze, die kein Plan überschreitet, aus welchem Grund auch immer. Innerhalb von ihr liegt die empfohlene, die mit einem geschriebenen Grund überschritten werden darf.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hydrate</source>
        <extracomment>hydrate</extracomment>
        <translation>Hydrat</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt with water built into its crystals. A gram of it holds less of what you want: calcium chloride dihydrate is a quarter water.</source>
        <extracomment>hydrate</extracomment>
        <translation>Ein Salz mit Wasser, das in seine Kristalle eingebaut ist. Ein Gramm davon enthält weniger von dem, was Sie wollen: Calciumchlorid-Dihydrat ist zu einem Viertel Wasser.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Limewater</source>
        <extracomment>limewater</extracomment>
        <translation>Kalkwasser</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Water saturated with calcium hydroxide. It brings calcium and alkalinity in step and lifts the pH, so never more of it than evaporates.</source>
        <extracomment>limewater</extracomment>
        <translation>Mit Calciumhydroxid gesättigtes Wasser. Es bringt Calcium und Alkalinität im Gleichschritt und hebt den pH an, deshalb nie mehr davon, als verdunstet.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Filled with water until salt and water together reach the mark. A litre of water poured on the salt makes more than a litre.</source>
        <extracomment>made up to</extracomment>
        <translation>Mit Wasser gefüllt, bis Salz und Wasser zusammen die Marke erreichen. Ein Liter Wasser, auf das Salz gegossen, ergibt mehr als einen Liter.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Magnesium</source>
        <extracomment>magnesium</extracomment>
        <translation>Magnesium</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Keeps lime from falling out too readily. Set it right first, then calcium and alkalinity.</source>
        <extracomment>magnesium</extracomment>
        <translation>Verhindert, dass Kalk zu leicht ausfällt. Bringen Sie es zuerst in Ordnung, dann Calcium und Alkalinität.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Metering pump</source>
        <extracomment>metering pump</extracomment>
        <translation>Dosierpumpe</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A pump that gives small known amounts. In most, rollers squeeze a soft tube, so that the jug's water touches nothing else.</source>
        <extracomment>metering pump</extracomment>
        <translation>Eine Pumpe, die kleine bekannte Mengen fördert. In den meisten drücken Rollen einen weichen Schlauch zusammen, sodass das Wasser des Kanisters nichts anderes berührt.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Natural seawater</source>
        <extracomment>natural seawater</extracomment>
        <translation>Natürliches Meerwasser</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The open sea at salinity 35. What is not known of new water is taken to be so.</source>
        <extracomment>natural seawater</extracomment>
        <translation>Das offene Meer mit Salinität 35. Was vom frischen Salzwasser nicht bekannt ist, wird so angenommen.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>All the water that moves together, without rock, sand and equipment. Often a quarter less than the glass would hold.</source>
        <extracomment>net volume</extracomment>
        <translation>Alles Wasser, das sich gemeinsam bewegt, ohne Gestein, Sand und Geräte. Oft ein Viertel weniger, als das Glas fassen würde.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Nitrate</source>
        <extracomment>nitrate</extracomment>
        <translation>Nitrat</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the nitrogen in food. A little feeds corals and algae; much of it comes from feeding too much.</source>
        <extracomment>nitrate</extracomment>
        <translation>Was aus dem Stickstoff im Futter wird. Ein wenig nährt Korallen und Algen; viel davon kommt von zu viel Füttern.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>pH</source>
        <extracomment>pH</extracomment>
        <translation>pH</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How acid or alkaline the water is. It swings with light and air; no dose should lift it by more than about 0.2 in an hour.</source>
        <extracomment>pH</extracomment>
        <translation>Wie sauer oder alkalisch das Wasser ist. Er schwankt mit Licht und Luft; keine Dosis sollte ihn in einer Stunde um mehr als etwa 0,2 anheben.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Phosphate</source>
        <extracomment>phosphate</extracomment>
        <translation>Phosphat</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the phosphorus in food. Corals need a trace of it; a label in P2O5 or P must not be read as phosphate.</source>
        <extracomment>phosphate</extracomment>
        <translation>Was aus dem Phosphor im Futter wird. Korallen brauchen eine Spur davon; ein Etikett in P2O5 oder P darf nicht als Phosphat gelesen werden.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Precipitation</source>
        <extracomment>precipitation</extracomment>
        <translation>Ausfällung</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Lime falling out of the water: milky clouds, white films, crust on pumps. It takes calcium and alkalinity with it, so no figure holds any longer.</source>
        <extracomment>precipitation</extracomment>
        <translation>Kalk, der aus dem Wasser ausfällt: milchige Wolken, weiße Beläge, Kruste an Pumpen. Er nimmt Calcium und Alkalinität mit, deshalb gilt keine Zahl mehr.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Prime</source>
        <extracomment>prime</extracomment>
        <translation>Vorfüllen</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Run the pump until liquid stands at the end of the line. Without it the first doses are air.</source>
        <extracomment>prime</extracomment>
        <translation>Die Pumpe laufen lassen, bis Flüssigkeit am Ende der Leitung steht. Ohne das sind die ersten Dosen Luft.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Pump head</source>
        <extracomment>pump head</extracomment>
        <translation>Pumpenkopf</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The part with rollers and tube that wears. A worn head turns as before and gives less.</source>
        <extracomment>pump head</extracomment>
        <translation>Das Teil mit Rollen und Schlauch, das verschleißt. Ein verschlissener Pumpenkopf dreht sich wie zuvor und fördert weniger.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Ramp</source>
        <extracomment>ramp</extracomment>
        <translation>Rampe</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The line on the chart that a value is to follow during a correction, with a band for what is not known exactly.</source>
        <extracomment>ramp</extracomment>
        <translation>Die Linie im Diagramm, der ein Wert während einer Korrektur folgen soll, mit einem Band für das, was nicht genau bekannt ist.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What a test showed, with the time of the test. It is never exact: every kit has its plus and minus.</source>
        <extracomment>reading</extracomment>
        <translation>Was ein Test ergab, mit der Zeit des Tests. Er ist nie exakt: Jedes Testset hat sein Plus und Minus.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing down a value that is too high: stop the doses, change water, or both. Never by dosing something against it.</source>
        <extracomment>recovery</extracomment>
        <translation>Einen zu hohen Wert senken: die Dosen stoppen, Wasser wechseln oder beides. Nie, indem etwas dagegen dosiert wird.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How salty the water is; open sea has about 35. Shown as ppt, practical salinity or specific gravity.</source>
        <extracomment>salinity</extracomment>
        <translation>Wie salzig das Wasser ist; das offene Meer hat etwa 35. Angezeigt als ppt, praktische Salinität oder relative Dichte.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Siphon</source>
        <extracomment>siphon</extracomment>
        <translation>Heber</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A jug emptying itself into the tank through its line. End the line above the water with an air gap, and stand the jug low.</source>
        <extracomment>siphon</extracomment>
        <translation>Ein Kanister, der sich durch seine Leitung ins Becken entleert. Lassen Sie die Leitung über dem Wasser enden, mit Luftabstand, und stellen Sie den Kanister tief.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Solubility</source>
        <extracomment>solubility</extracomment>
        <translation>Löslichkeit</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much of a salt will dissolve. In the cold most dissolve less; lime dissolves less in the warm.</source>
        <extracomment>solubility</extracomment>
        <translation>Wie viel von einem Salz sich löst. In der Kälte lösen sich die meisten weniger; Kalk löst sich im Warmen weniger.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Specific gravity</source>
        <extracomment>specific gravity</extracomment>
        <translation>Relative Dichte</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much heavier than fresh water the tank's water is, as a hydrometer shows it. It depends on temperature, so say at which.</source>
        <extracomment>specific gravity</extracomment>
        <translation>Wie viel schwerer als Süßwasser das Wasser des Beckens ist, wie ein Aräometer es zeigt. Sie hängt von der Temperatur ab, geben Sie also an, bei welcher.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stale reading</source>
        <extracomment>stale reading</extracomment>
        <translation>Veralteter Messwert</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A reading too old to dose from: alkalinity after 3 days, calcium after 7, magnesium after 14. Test again first.</source>
        <extracomment>stale reading</extracomment>
        <translation>Ein Messwert, der zu alt ist, um danach zu dosieren: Alkalinität nach 3 Tagen, Calcium nach 7, Magnesium nach 14. Testen Sie zuerst neu.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stock solution</source>
        <extracomment>stock solution</extracomment>
        <translation>Stammlösung</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt dissolved in water, strong enough to be dosed by the millilitre.</source>
        <extracomment>stock solution</extracomment>
        <translation>Ein in Wasser gelöstes Salz, stark genug, um nach Millilitern dosiert zu werden.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Top-off</source>
        <extracomment>top-off</extracomment>
        <translation>Nachfüllwasser</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Fresh water that replaces what evaporates, so that salinity stays.</source>
        <extracomment>top-off</extracomment>
        <translation>Süßwasser, das ersetzt, was verdunstet, damit die Salinität bleibt.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two-part</source>
        <extracomment>two-part</extracomment>
        <translation>Zwei Lösungen</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two jugs, one for alkalinity and one for calcium, so strong that equal millilitres keep both in step. They must never meet undiluted.</source>
        <extracomment>two-part</extracomment>
        <translation>Zwei Kanister, einer für Alkalinität und einer für Calcium, so stark, dass gleiche Milliliter beide im Gleichschritt halten. Sie dürfen sich nie unverdünnt treffen.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Uncertainty</source>
        <extracomment>uncertainty</extracomment>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far a figure may be off, either way. Nineteen in twenty true values lie within the ± that is shown.</source>
        <extracomment>uncertainty</extracomment>
        <translation>Wie weit eine Zahl abweichen kann, nach oben oder unten. Neunzehn von zwanzig wahren Werten liegen innerhalb des angezeigten ±.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Giving back every day what the animals use in a day, so that values stay where they are.</source>
        <extracomment>upkeep</extracomment>
        <translation>Jeden Tag zurückgeben, was die Tiere an einem Tag verbrauchen, damit die Werte bleiben, wo sie sind.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Use per day</source>
        <extracomment>use per day</extracomment>
        <translation>Verbrauch pro Tag</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What the animals take out of the water in a day. It grows with the corals and falls when they suffer.</source>
        <extracomment>use per day</extracomment>
        <translation>Was die Tiere an einem Tag aus dem Wasser nehmen. Er wächst mit den Korallen und sinkt, wenn sie leiden.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Void card</source>
        <extracomment>void card</extracomment>
        <translation>Ungültige Karte</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A card that must not be followed any more, since its plan or its jug has changed. Take it off the stand and say so in the window.</source>
        <extracomment>void card</extracomment>
        <translation>Eine Karte, die nicht mehr befolgt werden darf, weil sich ihr Plan oder ihr Kanister geändert hat. Nehmen Sie sie vom Unterschrank, und bestätigen Sie es im Fenster.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Old water out, new water in, at once or slowly all day. A slow exchange of the whole volume leaves a little over a third of the old water.</source>
        <extracomment>water exchange</extracomment>
        <translation>Altes Wasser hinaus, frisches Salzwasser hinein, auf einmal oder langsam den ganzen Tag. Ein langsamer Wechsel des ganzen Volumens lässt etwas mehr als ein Drittel des alten Wassers übrig.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>imperial gal</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>imperial gal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>L pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>US gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>US gal pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>imperial gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>imperial gal pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>uatm</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>uatm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mL per cm</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mL pro cm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per m3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>kg pro m3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per 100 mL</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>g pro 100 mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq pro L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm als CaCO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als P</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq pro L pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>dKH per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>dKH pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mmol pro L pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm als CaCO3 pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro kg pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als NO3 pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als N pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als PO4 pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg pro L als P pro Tag</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppt per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppt pro Tag</translation>
    </message>
</context>
</TS>
