<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>evenwater</name>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is not a date. Write it like 2026-12-20 or 2026-12-20 18:00.</source>
        <extracomment>read_return</extracomment>
        <translation>«{text}» no es una fecha. Escríbala como 2026-12-20 o 2026-12-20 18:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is more than a year away. Correct its year.</source>
        <extracomment>read_return</extracomment>
        <translation>«{text}» está a más de un año. Corrija el año.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>until {back} {clock}, {timestamp} from now</source>
        <extracomment>view</extracomment>
        <translation>hasta el {back} {clock}, dentro de {timestamp}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: say what it holds, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}: diga qué contiene; entonces se puede calcular con él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: read its level, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}: lea su nivel; entonces se puede calcular con él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Every jug lasts until you are back.</source>
        <extracomment>_headline</extracomment>
        <translation>Todos los bidones duran hasta su regreso.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Nothing is known to be taken from any jug.</source>
        <extracomment>_headline</extracomment>
        <translation>No consta que se tome nada de ningún bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> {count} more run out too.</source>
        <extracomment>_headline</extracomment>
        <translation> {count} más también se acaban.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jugs} runs out first, on {out}.{more}</source>
        <extracomment>_headline</extracomment>
        <translation>{jugs} se acaba primero, el {out}.{more}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{needed} are needed until you are back, {level} are in it.</source>
        <extracomment>_row</extracomment>
        <translation>Hacen falta {needed} hasta su regreso, hay {level}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Left as it is, it runs out on {left_alone_until}.</source>
        <extracomment>_row</extracomment>
        <translation> Si se deja como está, se acaba el {left_alone_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Read its level first: far less is logged than the daily rate takes.</source>
        <extracomment>_row</extracomment>
        <translation> Lea antes su nivel: está anotado mucho menos de lo que toma el ritmo diario.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Even full it lasts only until {lasts_until}; after that {n} doses are left out. Ask somebody to refill it.</source>
        <extracomment>for 1:  Even full it lasts only until {lasts_until}; after that 1 dose is left out. Ask somebody to refill it.; _row</extracomment>
        <translation>
            <numerusform> Incluso lleno solo dura hasta el {lasts_until}; después queda 1 dosis sin dar. Pida a alguien que lo rellene.</numerusform>
            <numerusform> Incluso lleno solo dura hasta el {lasts_until}; después quedan {n} dosis sin dar. Pida a alguien que lo rellene.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Add {add}</source>
        <extracomment>_row</extracomment>
        <translation>Añada {add}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Lasts</source>
        <extracomment>_row</extracomment>
        <translation>Dura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Full, and too small</source>
        <extracomment>_row</extracomment>
        <translation>Lleno, y demasiado pequeño</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>test {parameter}, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>medir {parameter}, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>card {plan_id} for {parameter} is valid no longer, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>la tarjeta {plan_id} para {parameter} ya no vale, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>the batch in {jug} is to be used up</source>
        <extracomment>_dues</extracomment>
        <translation>la preparación de {jug} debe gastarse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} asks to test {parameter}, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>el plan {plan_id} pide medir {parameter}, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} for {parameter} ends with its card, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>el plan {plan_id} para {parameter} termina con su tarjeta, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>and {found} more</source>
        <extracomment>_listed</extracomment>
        <translation>y {found} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Daily rise</source>
        <translation>Subida diaria</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>With what was given</source>
        <translation>Con lo que se dio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Single dose</source>
        <translation>Una dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Pump running</source>
        <translation>Marcha de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Smallest dose</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Dosis mínima</translation>
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
        <translation>Bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Dissolved</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Disuelto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Target</source>
        <translation>Valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Evaporation</source>
        <translation>Evaporación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Rise of pH in an hour</source>
        <translation>Subida del pH en una hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Highest pH</source>
        <translation>pH más alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../glossary.toml"/>
        <source>Aragonite saturation</source>
        <extracomment>_way, aragonite saturation</extracomment>
        <translation>Saturación de aragonito</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>It was {number}</source>
        <extracomment>_offers</extracomment>
        <translation>Era {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>mL per hour</source>
        <extracomment>per_hour, _answered, working</extracomment>
        <translation>mL por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>L (litres) per hour</source>
        <extracomment>per_hour</extracomment>
        <translation>L (litros) por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>{dose} {per_day} ({run_time}) · {in_24_hours} in 24 hours · {total} in all</source>
        <extracomment>_answered</extracomment>
        <translation>{dose} {per_day} ({run_time}) · {in_24_hours} en 24 horas · {total} en total</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>for {lasts_days}, until {ends}</source>
        <extracomment>_answered</extracomment>
        <translation>durante {lasts_days}, hasta el {ends}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>millilitres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>mililitros por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>litres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>litros por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Read the bottle's own safety sheet first; it wins over this page.</source>
        <translation>Lea primero la ficha de datos de seguridad del frasco; prevalece sobre esta página.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../chemicals.toml"/>
        <source>If it gets in the eyes, rinse for at least 15 minutes and get medical help.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Si entra en los ojos, enjuague al menos 15 minutos y busque atención médica.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>More doses a day would make it faster.</source>
        <translation>Con más dosis al día iría más rápido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A faster pump or a stronger stock would make it faster.</source>
        <translation>Con una bomba más rápida o una solución más fuerte iría más rápido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Sodium bicarbonate, which does not lift pH at once, would make it faster.</source>
        <translation>Con bicarbonato de sodio, que no sube el pH de inmediato, iría más rápido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A stronger additive than limewater would make it faster.</source>
        <translation>Con un aditivo más fuerte que el agua de cal iría más rápido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>What it does to {set_by} sets the pace</source>
        <extracomment>_set_by</extracomment>
        <translation>Lo que hace a otro valor ({set_by}) marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source> too</source>
        <extracomment>_bar, _checked</extracomment>
        <translation> también</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per L</source>
        <extracomment>_bar, _bars, a unit beside a figure</extracomment>
        <translation>g por L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value}, at least {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value}, al menos {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value} of {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value} de {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now</source>
        <translation>El registro tal como está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before the first edit of the day</source>
        <translation>Antes del primer cambio del día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before an update of the program</source>
        <translation>Antes de actualizar el programa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before a copy was restored</source>
        <translation>Antes de restaurar una copia</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;readings</source>
        <extracomment>for 1: {n}&#xa0;reading</extracomment>
        <translation>
            <numerusform>{n}&#xa0;lectura</numerusform>
            <numerusform>{n}&#xa0;lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;doses</source>
        <extracomment>for 1: {n}&#xa0;dose</extracomment>
        <translation>
            <numerusform>{n}&#xa0;dosis</numerusform>
            <numerusform>{n}&#xa0;dosis</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;water exchanges</source>
        <extracomment>for 1: {n}&#xa0;water exchange</extracomment>
        <translation>
            <numerusform>{n}&#xa0;cambio de agua</numerusform>
            <numerusform>{n}&#xa0;cambios de agua</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;notes</source>
        <extracomment>for 1: {n}&#xa0;note</extracomment>
        <translation>
            <numerusform>{n}&#xa0;nota</numerusform>
            <numerusform>{n}&#xa0;notas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;calibrations</source>
        <extracomment>for 1: {n}&#xa0;calibration</extracomment>
        <translation>
            <numerusform>{n}&#xa0;calibración</numerusform>
            <numerusform>{n}&#xa0;calibraciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;batches</source>
        <extracomment>for 1: {n}&#xa0;batch</extracomment>
        <translation>
            <numerusform>{n}&#xa0;preparación</numerusform>
            <numerusform>{n}&#xa0;preparaciones</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder is read-only</source>
        <translation>su carpeta es de solo lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder cannot be written to</source>
        <translation>no se puede escribir en su carpeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk does not answer</source>
        <translation>el disco no responde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log is busy in another window or program</source>
        <translation>el registro está ocupado en otra ventana o programa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log does not pass its check. Restore an older copy</source>
        <translation>el registro no pasa su control. Restaure una copia más antigua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now is copied first. That copy can be restored in the same way.</source>
        <translation>El registro tal como está se copia antes. Esa copia puede restaurarse del mismo modo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restoring cannot be undone with Undo. Undo then takes back what was done before the copy was made.</source>
        <translation>Restaurar no se deshace con Deshacer. Deshacer retira entonces lo hecho antes de la copia.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;systems</source>
        <extracomment>for 1: {n}&#xa0;system; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;sistema</numerusform>
            <numerusform>{n}&#xa0;sistemas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;entries</source>
        <extracomment>for 1: {n}&#xa0;entry; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;entrada</numerusform>
            <numerusform>{n}&#xa0;entradas</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> up to {newest}</source>
        <extracomment>_holds</extracomment>
        <translation> hasta el {newest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;changes</source>
        <extracomment>for 1: {n}&#xa0;change; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;cambio</numerusform>
            <numerusform>{n}&#xa0;cambios</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> of systems, jugs, pumps or corrections</source>
        <extracomment>lost</extracomment>
        <translation> de sistemas, bidones, bombas o correcciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>From the log would go: {parts}.</source>
        <extracomment>lost</extracomment>
        <translation>Del registro se irían: {parts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Nothing that the log holds now would go.</source>
        <extracomment>lost</extracomment>
        <translation>No se iría nada de lo que contiene ahora el registro.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> {cards} in use would be void: take them down.</source>
        <extracomment>for 1:  {cards} in use would be void: take it down.; lost</extracomment>
        <translation>
            <numerusform> {cards} en uso quedaría anulada: descuélguela.</numerusform>
            <numerusform> {cards} en uso quedarían anuladas: descuélguelas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;cards</source>
        <extracomment>for 1: {n}&#xa0;card; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;tarjeta</numerusform>
            <numerusform>{n}&#xa0;tarjetas</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restore the copy of {made}?</source>
        <extracomment>asked</extracomment>
        <translation>¿Restaurar la copia del {made}?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>&amp;Restore the copy of {made}</source>
        <extracomment>offered</extracomment>
        <translation>&amp;Restaurar la copia del {made}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} holds {newest}. What was noted after that is lost. The damaged file is kept beside the copies. Close every other window of this log first.</source>
        <extracomment>damaged</extracomment>
        <translation>La copia del {made} contiene {newest}. Lo anotado después se pierde. El archivo dañado se guarda junto a las copias. Cierre antes toda otra ventana de este registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} is restored. The log as it was is kept as {kept}.</source>
        <extracomment>restored</extracomment>
        <translation>La copia del {made} está restaurada. El registro como estaba se guarda como {kept}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Saved as {place}.</source>
        <extracomment>carried</extracomment>
        <translation>Guardado como {place}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Copies lie in {folder}. One is made before the first edit of a day, and the last ten of these are kept; besides, one before each update and before each restoration, which stay. A disk can fail: save a copy elsewhere now and then.</source>
        <extracomment>where</extracomment>
        <translation>Las copias están en {folder}. Se hace una antes del primer cambio de un día, y se guardan las diez últimas; además, una antes de cada actualización y de cada restauración, que permanecen. Un disco puede fallar: guarde de vez en cuando una copia en otro sitio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>it could not be written</source>
        <extracomment>no_copy</extracomment>
        <translation>no se pudo escribir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>No copy of the log could be made today: {cause}.</source>
        <extracomment>no_copy</extracomment>
        <translation>Hoy no se pudo hacer ninguna copia del registro: {cause}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source> by {who}</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation> por {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{words}, was given at {when}{by}. Is this another one?</source>
        <extracomment>_again</extracomment>
        <translation>{words}, ya se dio: {when}{by}. ¿Es esta otra?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Yes, log it too</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation>Sí, anotarla también</translation>
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
        <translation> y </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{before}, was read on {when} as well. Was it tested again, with fresh reagent?</source>
        <extracomment>_flat</extracomment>
        <translation>{before}, se leyó también el {when}. ¿Se midió de nuevo, con reactivo fresco?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>Yes, it was tested again</source>
        <extracomment>_flat</extracomment>
        <translation>Sí, se midió de nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>, the plan that is followed included</source>
        <extracomment>_too_much</extracomment>
        <translation>, incluido el plan que se sigue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>With this, {name} rises by {given} within 24 hours{with_plan}; the most is {hard}. If it was really given: log it, stop the pump, and test {name}.</source>
        <extracomment>_too_much</extracomment>
        <translation>Con esto, {name} sube {given} en 24 horas{with_plan}; el máximo es {hard}. Si de verdad se dio: anótelo, pare la bomba y mida {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>It was given, log it</source>
        <extracomment>_too_much</extracomment>
        <translation>Se dio, anotarlo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Good enough to dose by</source>
        <extracomment>_lines</extracomment>
        <translation>Suficiente para dosificar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat the calibration</source>
        <extracomment>_lines</extracomment>
        <translation>Repita la calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{verdict}: the pump gives {best}.</source>
        <extracomment>_lines</extracomment>
        <translation>{verdict}: la bomba da {best}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Repetir: {reason}</translation>
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
        <translation>Nota: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Against the {setting} it is set to: {bias_value} {more_or_less}.</source>
        <extracomment>_lines</extracomment>
        <translation>Frente a los {setting} ajustados: {bias_value} {more_or_less}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Z factor: {z_ml_per_g}.</source>
        <extracomment>_lines</extracomment>
        <translation>Factor Z: {z_ml_per_g}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>mL per g</source>
        <extracomment>_lines</extracomment>
        <translation>mL por g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>A dose of {dose} takes {dose_seconds} at this flow.</source>
        <extracomment>_lines</extracomment>
        <translation>Una dosis de {dose} tarda {dose_seconds} con este caudal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The line holds {dead_volume}: after a refill run {at_most_seconds}, and see the liquid at its end.</source>
        <extracomment>_lines</extracomment>
        <translation>El tubo contiene {dead_volume}: después de rellenar haga funcionar la bomba {at_most_seconds} y vea el líquido en su extremo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Over {window} it gave at worst from {low} {more_or_less} to {high} {more_or_less_2} than set.</source>
        <extracomment>_lines</extracomment>
        <translation>En {window} dio en el peor caso de {low} {more_or_less} a {high} {more_or_less_2} de lo ajustado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The head has {left} of its {life} left{at}.</source>
        <extracomment>_lines</extracomment>
        <translation>Al cabezal le quedan {left} de sus {life}{at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{mean} (from {mean_2} to {mean_3})</source>
        <extracomment>_interval</extracomment>
        <translation>{mean} (de {mean_2} a {mean_3})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{n} runs</source>
        <extracomment>for 1: 1 run; _group, _runs</extracomment>
        <translation>
            <numerusform>1 medición</numerusform>
            <numerusform>{n} mediciones</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>, scattering by {cv}</source>
        <extracomment>_group</extracomment>
        <translation>, dispersión {cv}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{runs} of {seconds}: {timed}{scatter}.</source>
        <extracomment>_group</extracomment>
        <translation>{runs} de {seconds}: {timed}{scatter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scale</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>cylinder</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>No run is long enough for this {with_what} to be off by {wanted} at most: the water's temperature is not known well enough.</source>
        <extracomment>_needed</extracomment>
        <translation>Ninguna medición es lo bastante larga para no errar más de {wanted} con este instrumento ({with_what}): la temperatura del agua no se conoce bastante bien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>For this {with_what} and watch to be off by {wanted} at most, a run takes {seconds} or longer and brings {volume}.</source>
        <extracomment>_needed</extracomment>
        <translation>Para no errar más de {wanted} con este instrumento ({with_what}) y este cronómetro, una medición dura {seconds} o más y da {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>In {per_hours} the flow {rises} by {drift} (give or take {drift_half_width}). Expected now: {expected} (give or take {expected_half_width}).</source>
        <extracomment>_wear</extracomment>
        <translation>En {per_hours} el caudal {rises} {drift} (más o menos {drift_half_width}). Se espera ahora: {expected} (más o menos {expected_half_width}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>rises</source>
        <extracomment>_wear, _pace</extracomment>
        <translation>sube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>falls</source>
        <extracomment>_wear, _trend, _pace</extracomment>
        <translation>baja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It is {limit} or more off already.</source>
        <extracomment>_leaves</extracomment>
        <translation>Ya se desvía {limit} o más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It will be {limit} off after {hours}{at}, at the earliest after {earliest_hours}{earliest_at}.</source>
        <extracomment>_leaves</extracomment>
        <translation>Se desviará {limit} después de {hours}{at}, como pronto después de {earliest_hours}{earliest_at}.</translation>
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
        <translation>mL por min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>more</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>less</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Run {runs}</source>
        <extracomment>_numbers</extracomment>
        <translation>Medición {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Runs {first} and {last}</source>
        <extracomment>_numbers</extracomment>
        <translation>Mediciones {first} y {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> each</source>
        <extracomment>_each</extracomment>
        <translation> cada una</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This scale</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Esta báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This cylinder</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Esta probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{with_what} tells the flow of such a run to {share} only, and {most} is the least that is of use.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{with_what} solo da el caudal de una medición así con {share} de error, y {most} es lo mínimo que sirve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Measure the temperature of the water, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Mida la temperatura del agua, o tome algo más fino.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Let the pump run for {seconds} or longer, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Deje funcionar la bomba {seconds} o más, o tome algo más fino.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>There is no run yet. Let the pump run into a cylinder or onto a scale {fewest} times.</source>
        <translation>Aún no hay ninguna medición. Deje funcionar la bomba {fewest} veces en una probeta o sobre una báscula.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump ran and nothing came out. Look for air in the line, crust at its end, a split tube or an empty jug, prime the line and calibrate again.</source>
        <translation>La bomba funcionó y no salió nada. Busque aire en el tubo, costra en su extremo, un tubo partido o un bidón vacío, cebe el tubo y calibre de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These figures are no flow of a pump. Write them again.</source>
        <translation>Estas cifras no son el caudal de una bomba. Escríbalas de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} brought nothing. Look for air in the line, prime it and repeat.</source>
        <translation>{runs}: no salió nada. Busque aire en el tubo, cébelo y repita.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{n} runs tell</source>
        <extracomment>for 1: A single run tells</extracomment>
        <translation>
            <numerusform>Una sola medición dice</numerusform>
            <numerusform>{n} mediciones dicen</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> too little. Repeat until there are {fewest} of {seconds} each.</source>
        <translation> demasiado poco. Repita hasta tener {fewest} de {seconds} cada una.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The runs scatter by {spread}, and {most} is the most. Look for air in the line and a worn tube, prime it and repeat.</source>
        <translation>La dispersión de las mediciones es {spread}, y el máximo es {most}. Busque aire en el tubo y un tubo gastado, cébelo y repita.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These runs tell the flow to within {share} only; within {good} would be good. Find out what scatters, or make more runs.</source>
        <translation>Estas mediciones solo dan el caudal con {share} de error; con {good} sería bueno. Averigüe qué lo dispersa, o haga más mediciones.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} lasted {seconds}{runs_2}, the others {others}: a short run gives another flow than a long one, so they do not count together. Make {fewest} of one length.</source>
        <translation>{runs}: duración {seconds}{runs_2}, las demás {others}. Una medición corta da otro caudal que una larga, así que no cuentan juntas. Haga {fewest} de la misma duración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Enter {flow} as its flow, and look at the tube.</source>
        <translation>La bomba da {bias} {more_or_less} que los {setting} ajustados. Escriba {flow} como su caudal y mire el tubo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Do not dose on with that figure: look for a worn tube, air and crust, then calibrate again. Now it gives {flow}.</source>
        <translation>La bomba da {bias} {more_or_less} que los {setting} ajustados. No siga dosificando con esa cifra: busque un tubo gastado, aire y costra, y calibre de nuevo. Ahora da {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>A dose of {dose} takes {dose_seconds}, but these runs lasted {seconds}. </source>
        <translation>Una dosis de {dose} tarda {dose_seconds}, pero estas mediciones duraron {seconds}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Short doses are less accurate: collect several doses of that size and calibrate with them.</source>
        <translation>Las dosis cortas son menos exactas: recoja varias dosis de ese tamaño y calibre con ellas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Calibrate with runs as long as a dose.</source>
        <translation>Calibre con mediciones tan largas como una dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>In {seconds} the pump gives {difference} {more_or_less} per minute than in {than}. Dose by the runs that are nearest to the dose in use.</source>
        <translation>En {seconds} la bomba da {difference} {more_or_less} por minuto que en {than}. Dosifique según las mediciones más cercanas a la dosis en uso.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The cylinder's graduation is not said, so {graduation} is taken, the last digit that was read.</source>
        <translation>No se dice la división de la probeta: se toma {graduation}, la última cifra leída.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The scale's last digit is not said, so {grams} is taken, the last digit that was written.</source>
        <translation>No se dice la última cifra de la báscula: se toma {grams}, la última cifra escrita.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The water's temperature is not said, so {degc} is taken, give or take {off}.</source>
        <translation>No se dice la temperatura del agua: se toma {degc}, más o menos {off}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibration of {at} is still to come. Correct the date, or leave it out.</source>
        <translation>La calibración del {at} está por venir. Corrija la fecha, u omítala.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The running hours go back from {before} to {after}. After a new head or a new tube the hours begin again: leave out what was measured before.</source>
        <translation>Las horas de marcha retroceden de {before} a {after}. Con un cabezal o un tubo nuevos las horas empiezan otra vez: omita lo medido antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head ran from {before} to {after} while only {passed} went by. Correct the hours or the date.</source>
        <translation>El cabezal funcionó de {before} a {after} cuando solo pasaron {passed}. Corrija las horas o la fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>How the flow changes cannot be told from a single calibration.</source>
        <translation>Con una sola calibración no se puede decir cómo cambia el caudal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>All calibrations were made at {hours}, so nothing can be said of how the flow changes with running hours.</source>
        <translation>Todas las calibraciones se hicieron a {hours}, así que nada se puede decir de cómo cambia el caudal con las horas de marcha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The line through the calibrations gives no flow at all. Look at the figures of the earlier ones again.</source>
        <translation>La recta por las calibraciones no da caudal alguno. Mire de nuevo las cifras de las más antiguas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>It is not clear yet that the flow changes: from {low} {more_or_less} to {high} {more_or_less_2} in {hours}, so no date is said. More calibrations will tell.</source>
        <translation>Aún no está claro que el caudal cambie: de {low} {more_or_less} a {high} {more_or_less_2} en {hours}, así que no se da fecha. Más calibraciones lo dirán.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibrations lie {factor} times further off the line than they should. Was the tube or the head changed between them, or air in the line?</source>
        <translation>Las calibraciones se apartan de la recta {factor} veces más de lo que deberían. ¿Se cambió entre ellas el tubo o el cabezal, o había aire en el tubo?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head has run {hours} of the {life} that one lasts. Change the head or its tube, then calibrate again.</source>
        <translation>El cabezal ha funcionado {hours} de las {life} que dura uno. Cambie el cabezal o su tubo, y calibre de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Date and time</source>
        <translation>Fecha y hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Days from now</source>
        <translation>Días desde ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Running hours (h)</source>
        <translation>Horas de marcha (h)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, low end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, extremo bajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, high end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, extremo alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>dose</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>reading</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH before a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH antes de una dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH right after a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH justo después de una dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>aragonite saturation</source>
        <extracomment>of_ramp</extracomment>
        <translation>saturación de aragonito</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>new water</source>
        <extracomment>of_history, of_exchange</extracomment>
        <translation>agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected by plan {number}</source>
        <extracomment>of_history</extracomment>
        <translation>esperado por el plan {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>all together</source>
        <extracomment>of_together</extracomment>
        <translation>todo junto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>low end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>extremo bajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>high end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>extremo alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>without exchange</source>
        <extracomment>of_together, _spans</extracomment>
        <translation>sin cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>flow</source>
        <extracomment>of_wear</extracomment>
        <translation>caudal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>counts</source>
        <extracomment>of_wear</extracomment>
        <translation>cuenta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected today</source>
        <extracomment>of_wear</extracomment>
        <translation>esperado hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>value</source>
        <extracomment>of_exchange</extracomment>
        <translation>valor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Foods</source>
        <extracomment>of_foods</extracomment>
        <translation>Alimentos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Caution</source>
        <extracomment>_lines, _hazards, Given.hazards</extracomment>
        <translation>Precaución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Caution: {caution}</source>
        <extracomment>_lines, _hazards</extracomment>
        <translation>Precaución: {caution}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>Before: {before}</source>
        <extracomment>_lines</extracomment>
        <translation>Antes: {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>At once: {at_once}</source>
        <extracomment>_lines</extracomment>
        <translation>De inmediato: {at_once}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>After gas exchange: {after_gas_exchange}</source>
        <extracomment>_lines</extracomment>
        <translation>Tras el intercambio con el aire: {after_gas_exchange}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>pH {ph} ({scale} scale), aragonite saturation {saturation}, alkalinity {alkalinity}, dissolved inorganic carbon {dic}.</source>
        <extracomment>_moment</extracomment>
        <translation>pH {ph} (escala {scale}), saturación de aragonito {saturation}, alcalinidad {alkalinity}, carbono inorgánico disuelto {dic}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L</source>
        <extracomment>_moment, _way, a unit beside a figure</extracomment>
        <translation>mmol por L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go on</source>
        <extracomment>clock_words</extracomment>
        <translation>se adelantan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>later</source>
        <extracomment>clock_words</extracomment>
        <translation>más tarde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go back</source>
        <extracomment>clock_words</extracomment>
        <translation>se atrasan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>earlier</source>
        <extracomment>clock_words</extracomment>
        <translation>más temprano</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>On {at} the clocks on the wall {how} by {by}; those of the pumps do not. </source>
        <extracomment>clock_words</extracomment>
        <translation>El {at} los relojes de la pared {how} {by}; los de las bombas no. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>No dose is left out and none comes twice, but each comes {by} {comes} by the wall, and so do the quiet hours. </source>
        <extracomment>clock_words</extracomment>
        <translation>Ninguna dosis falta y ninguna viene dos veces, pero cada una viene {by} {comes} según la pared, y también las horas de silencio. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>Set the pumps' clocks by the wall the next day</source>
        <extracomment>clock_words</extracomment>
        <translation>Ponga los relojes de las bombas a la hora de la pared al día siguiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>{begin}{then}{again}: stop the pumps for the {by} that they then show twice.</source>
        <extracomment>clock_words</extracomment>
        <translation>{begin}{then}{again}: pare las bombas durante el tiempo ({by}) que entonces muestran dos veces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{parameter} used now: {use}.</source>
        <extracomment>_lines</extracomment>
        <translation>{parameter}, consumo ahora: {use}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>It should now be at {value_value} ({low} to {high}).</source>
        <extracomment>_lines</extracomment>
        <translation>Ahora debería estar en {value_value} ({low} a {high}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>just now</source>
        <extracomment>_lines, age_words</extracomment>
        <translation>ahora mismo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{since_days} ago</source>
        <extracomment>_lines</extracomment>
        <translation>hace {since_days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>From {readings} readings, the last one {age}.</source>
        <extracomment>_lines</extracomment>
        <translation>De {readings} lecturas, la última {age}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>Not believed: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>No creído: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{use_value} (from {low} to {high})</source>
        <extracomment>per_day</extracomment>
        <translation>{use_value} (de {low} a {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In the last weeks use has been steady.</source>
        <extracomment>_trend</extracomment>
        <translation>En las últimas semanas el consumo ha sido constante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In a week use {grows} by {per_week} per day.</source>
        <extracomment>_trend</extracomment>
        <translation>En una semana el consumo {grows} {per_week} al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>grows</source>
        <extracomment>_trend</extracomment>
        <translation>crece</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{start} to {end}: {use}</source>
        <extracomment>_period</extracomment>
        <translation>{start} a {end}: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>mg per meq</source>
        <extracomment>_per_meq, _ratio</extracomment>
        <translation>mg por meq</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is no reading yet.</source>
        <translation>Aún no hay ninguna lectura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is only one reading.</source>
        <translation>Solo hay una lectura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source> To know what is used takes two at least, and more are better. Test again tomorrow.</source>
        <translation> Para saber lo que se consume hacen falta al menos dos, y más es mejor. Mida de nuevo mañana.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>These are {count} readings; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Son {count} lecturas; {most} pueden mirarse juntas. Omita las más antiguas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>All readings lie within {hours}. What is used in a day cannot be told from that. Test again tomorrow.</source>
        <translation>Todas las lecturas caen en {hours}. De eso no se puede saber lo que se consume en un día. Mida de nuevo mañana.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>In {what} {number} a figure is no number or cannot be. Write it again.</source>
        <translation>Una cifra no es un número o es imposible ({what} {number}). Escríbala de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last reading is {age_days} days old, and use may have changed in more than {stale_days} days. Test again.</source>
        <translation>La última lectura tiene {age_days} días, y el consumo puede haber cambiado en más de {stale_days} días. Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The rise cannot be told from the scatter of the two tests, so it says nothing of the volume. Test more often, or after a larger correction.</source>
        <translation>La subida no se distingue de la dispersión de las dos pruebas, así que no dice nada del volumen. Mida más a menudo, o tras una corrección mayor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>For each meq of alkalinity {ratio} of calcium are used ({low} to {high}); skeletons take {expected}. Something is not as it seems.</source>
        <translation>Por cada meq de alcalinidad se consumen {ratio} de calcio ({low} a {high}); los esqueletos toman {expected}. Algo no es como parece.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>How much alkalinity is used is not known well enough to hold calcium against it.</source>
        <translation>El consumo de alcalinidad no se conoce bastante bien para compararlo con el calcio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>One of the two tests may be wrong: check both with a standard, or with another kit.</source>
        <translation>Una de las dos pruebas puede estar mal: compruebe ambas con un patrón, o con otro kit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may fall out without calcium, as magnesium hydroxide where a strong dose enters: look for white crust there.</source>
        <translation>La alcalinidad puede precipitar sin calcio, como hidróxido de magnesio donde entra una dosis fuerte: busque allí costra blanca.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may go elsewhere: much food that turns into nitrate takes it, and skeletons that hold magnesium.</source>
        <translation>La alcalinidad puede irse a otra parte: mucho alimento que se vuelve nitrato la toma, y esqueletos que contienen magnesio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may come from elsewhere: where nitrate is used up, or from a dose or an exchange that is not in the log.</source>
        <translation>La alcalinidad puede venir de otra parte: donde se consume nitrato, o de una dosis o un cambio de agua que no está en el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>A reading of {at} is more than {years} years old. Leave it out, or correct the year.</source>
        <translation>Una lectura del {at} tiene más de {years} años. Omítala, o corrija el año.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The {what} of {at} is still to come. Correct the time, or leave it out until it is done.</source>
        <translation>Está por venir ({what}, {at}). Corrija la hora, u omítalo hasta que esté hecho.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{value} on {at} is {off} {above} what the others say, so it is not counted.</source>
        <translation>{value} el {at} está {off} {above} de lo que dicen las demás, así que no cuenta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>above</source>
        <extracomment>_leaving</extracomment>
        <translation>por encima</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>below</source>
        <extracomment>_leaving</extracomment>
        <translation>por debajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Before {at} the value {rose} at once by {by}, which nothing in the log explains. Was a dose or an exchange not written down?</source>
        <translation>Antes del {at} el valor {rose} de golpe {by}, lo que nada en el registro explica. ¿No se anotó una dosis o un cambio de agua?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>rose</source>
        <translation>subió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>fell</source>
        <translation>bajó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Use changed about {at}, from {before} to {after}. What was planned on the old use needs planning again.</source>
        <translation>El consumo cambió hacia el {at}, de {before} a {after}. Lo planificado con el consumo anterior debe planificarse de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last {count} readings all say {value}. Were they really tested, each with fresh reagent?</source>
        <translation>Las últimas {count} lecturas dicen todas {value}. ¿Se midieron de verdad, cada una con reactivo fresco?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>More {parameter} is made in the tank than is used up: {per_day}.</source>
        <translation>En el acuario se forma más de lo que se consume ({parameter}): {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{parameter} rises by {per_day} more than the log explains. A dose is missing from the log, or is stronger than written.</source>
        <translation>{parameter} sube {per_day} más de lo que explica el registro. Falta una dosis en el registro, o es más fuerte de lo escrito.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>It is not clear yet that anything is used: {low} to {high}. More readings will tell.</source>
        <translation>Aún no está claro que se consuma algo: {low} a {high}. Más lecturas lo dirán.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The test reads high</source>
        <translation>La prueba sale alta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Two days were missed</source>
        <translation>Dos días sin dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The pump failed</source>
        <translation>Falló la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the tests read</source>
        <translation>Lo que dicen las pruebas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../glossary.toml"/>
        <source>Reading</source>
        <extracomment>_headings, card, reading</extracomment>
        <translation>Lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Initials</source>
        <extracomment>card</extracomment>
        <translation>Iniciales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the test read and what was set</source>
        <translation>Lo que dijo la prueba y lo que se ajustó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reading or dose</source>
        <translation>Lectura o dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>What was really given</source>
        <translation>Lo que de verdad se dio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Amount given</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Cantidad dada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {stop}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Use esta tarjeta cuando {name} pase de {stop}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {early} before {by}, or above {stop} at any time.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Use esta tarjeta cuando {name} pase de {early} antes del {by}, o de {stop} en cualquier momento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>At once</source>
        <extracomment>_reads_high, _days_missed, _pump_failed</extracomment>
        <translation>De inmediato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump.</source>
        <extracomment>_reads_high, _days_missed, _bottle</extracomment>
        <translation>Pare la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing else that raises {name}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>No dé nada más que suba {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test again with a fresh kit. Let a second person do it, if there is one.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Mida de nuevo con un kit nuevo. Que lo haga otra persona, si la hay.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test not high</source>
        <extracomment>_reads_high</extracomment>
        <translation>Segunda prueba no alta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Start the pump as it was set. The plan goes on. Make nothing up.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Ponga en marcha la bomba como estaba ajustada. El plan sigue. No compense nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test high too</source>
        <extracomment>_reads_high</extracomment>
        <translation>Segunda prueba también alta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Deje la bomba parada. Llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads above {hard}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Por encima de {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Call the keeper at once. Exchange water only when the keeper says so.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Llame enseguida al cuidador. Cambie agua solo si el cuidador lo dice.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every day</source>
        <extracomment>_reads_high, _days_missed, _steps</extracomment>
        <translation>Cada día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} at the same hour. Write it down.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Mida {name} a la misma hora. Anótelo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>It has fallen</source>
        <extracomment>_reads_high</extracomment>
        <translation>Ha bajado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>When it reads {target} or less, and less than the day before: </source>
        <extracomment>_reads_high</extracomment>
        <translation>Cuando la prueba diga {target} o menos, y menos que el día anterior: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>set the pump to the upkeep below.</source>
        <extracomment>_reads_high</extracomment>
        <translation>ajuste la bomba al mantenimiento de abajo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>call the keeper. Leave the pump off.</source>
        <extracomment>_reads_high</extracomment>
        <translation>llame al cuidador. Deje la bomba parada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No lower after a day</source>
        <extracomment>_reads_high</extracomment>
        <translation>No ha bajado tras un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off: the animals use nothing. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Deje la bomba parada: los animales no consumen nada. Llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Only when it has fallen: {per_day}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Solo cuando haya bajado: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing that lowers {name}: no acid, no second chemical against the first.</source>
        <extracomment>_reads_high</extracomment>
        <translation>No dé nada que baje {name}: ni ácido, ni un segundo producto contra el primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never make up missed doses.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Nunca compense dosis perdidas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>How long</source>
        <extracomment>_falls, _facts</extracomment>
        <translation>Duración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>How fast it falls is not known: no use per day was entered. Test every day.</source>
        <extracomment>_falls</extracomment>
        <translation>No se sabe con qué rapidez baja: no se indicó consumo diario. Mida cada día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>From {value}</source>
        <extracomment>_falls</extracomment>
        <translation>Desde {value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>about {hours} without a dose, down to {target}</source>
        <extracomment>_falls</extracomment>
        <translation>unas {hours} sin dosis, hasta {target}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reckoned with {use} used.</source>
        <extracomment>_falls</extracomment>
        <translation>Calculado con {use} de consumo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Then</source>
        <extracomment>_days_missed, _pump_failed, _mixing</extracomment>
        <translation>Después</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below: the dose, and how many at most.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Busque esa lectura abajo: la dosis, y cuántas como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Not found below</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>No está abajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper. Test again the next day.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Deje la bomba parada. Llame al cuidador. Mida de nuevo al día siguiente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Look at the jug, the line and the outlet.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Mida {name}. Mire el bidón, el tubo y la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last dose</source>
        <extracomment>_days_missed</extracomment>
        <translation>Tras la última dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Set the pump to the upkeep.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Ajuste la bomba al mantenimiento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Switch the pump off.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Apague la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off and call the keeper: a new plan is needed.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Deje la bomba parada y llame al cuidador: hace falta un plan nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Write it down.</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>Mida {name}. Anótelo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last of them: {per_day}</source>
        <extracomment>_days_missed</extracomment>
        <translation>Tras la última de ellas: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when nothing was dosed for about two days.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Use esta tarjeta cuando no se dosificó nada durante unos dos días.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Do not give the missed doses, neither now nor later.</source>
        <extracomment>_days_missed</extracomment>
        <translation>No dé las dosis perdidas, ni ahora ni después.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find out why: no current, an empty jug, air in the line.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Averigüe por qué: sin corriente, un bidón vacío, aire en el tubo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} twice. Take the higher reading. Write it down.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Mida {name} dos veces. Tome la lectura más alta. Anótela.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{per_day}, no more than:</source>
        <extracomment>_band_rows</extracomment>
        <translation>{per_day}, no más de:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{n} doses</source>
        <extracomment>for 1: {n} dose; _band_rows</extracomment>
        <translation>
            <numerusform>{n} dosis</numerusform>
            <numerusform>{n} dosis</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads {low} to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>La prueba dice {low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Above {low}, up to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>Más de {low}, hasta {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Dry your hands. Pull the pump's plug.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Séquese las manos. Desenchufe la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Take the line out of the jug: nothing may siphon.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Saque el tubo del bidón: nada debe pasar por sifón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call the keeper.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Every morning</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Cada mañana</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>This additive is for trained people only: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Este aditivo es solo para personas formadas: no dé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No dose by hand is safe here: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Aquí ninguna dosis a mano es segura: no dé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Until the pump runs</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Hasta que la bomba funcione</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{why} nothing.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{why} nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The rest of this day</source>
        <extracomment>_pump_failed</extracomment>
        <translation>El resto de este día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing. Begin tomorrow, when the pump was off for {pump_off} or longer.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>No dé nada. Empiece mañana, cuando la bomba haya estado parada {pump_off} o más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below. Its row is for this day only.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Busque esa lectura abajo. Su fila vale solo para este día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing on this day.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Este día no dé nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At each hour</source>
        <extracomment>_pump_failed</extracomment>
        <translation>A cada hora indicada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Draw clear stock, exactly to the mark that the row names.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Tome solución clara, exactamente hasta la marca que nombra la fila.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Pour it slowly into strong flow, away from the animals.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Viértala despacio en corriente fuerte, lejos de los animales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Write it down at once, before anything else is done.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Anótelo enseguida, antes de hacer otra cosa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>An hour was missed</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Se saltó una hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave that dose out.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Deje esa dosis sin dar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After each dose</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Tras cada dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Rinse what it was measured with. Use it for nothing else.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Enjuague aquello con que se midió. No lo use para nada más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{maximum}, the pump's with them.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{maximum}, incluidas las de la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when the pump does not run, or runs and nothing comes.</source>
        <translation>Use esta tarjeta cuando la bomba no funciona, o funciona y no sale nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At {first} and {last}</source>
        <extracomment>_hand_rows</extracomment>
        <translation>A las {first} y {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{holds} {tool}, to the mark of {dose}</source>
        <extracomment>_mark</extracomment>
        <translation>{tool} de {holds}, hasta la marca de {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>A new batch goes into the jug</source>
        <translation>Una preparación nueva va al bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>this plan is void. Leave the pump off. Take this card and the dose card down. Call the keeper.</source>
        <translation>este plan queda anulado. Deje la bomba parada. Descuelgue esta tarjeta y la tarjeta de dosis. Llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>three quarters</source>
        <translation>hasta tres cuartos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>half</source>
        <translation>hasta la mitad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>What was mixed</source>
        <translation>Lo que se preparó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Made up to</source>
        <extracomment>CorrectForm._additive, StockForm._contents, made up to</extracomment>
        <translation>Completado a</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Bottles that were opened</source>
        <translation>Frascos abiertos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Use by</source>
        <extracomment>_entries, StockForm._label</extracomment>
        <translation>Usar hasta el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Words compared</source>
        <translation>Palabras comparadas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Run the pump into a cup until liquid comes without air. Do not pour the cup into the tank.</source>
        <translation>Haga funcionar la bomba sobre un vaso hasta que el líquido salga sin aire. No vierta el vaso en el acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>At the end</source>
        <translation>Al final</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Start the pump as it was set. The doses stay the same; those in between are not made up.</source>
        <translation>Ponga en marcha la bomba como estaba ajustada. Las dosis siguen iguales; las de entretanto no se compensan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when the jug is filled again, to exactly this strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>Use esta tarjeta cuando el bidón se llena de nuevo, exactamente con esta concentración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another salt, another hydrate, another purity or other grams: {void}</source>
        <extracomment>new_batch</extracomment>
        <translation>Otra sal, otro hidrato, otra pureza u otros gramos: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Never add the rest of an old batch of another strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>Nunca añada el resto de una preparación vieja de otra concentración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Strength</source>
        <extracomment>new_batch</extracomment>
        <translation>Concentración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Before</source>
        <extracomment>_mixing, _limewater, _trained</extracomment>
        <translation>Antes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug. Rinse the jug with fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Pare la bomba. Saque el tubo del bidón. Enjuague el bidón con agua dulce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bags with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Compare las palabras de las bolsas con los nombres de arriba, también el agua del hidrato.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Compare las palabras de la bolsa con los nombres de arriba, también el agua del hidrato.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>First</source>
        <extracomment>_mixing, _limewater, _bottle</extracomment>
        <translation>Primero</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug {batch} full with cool, purified fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Llene el bidón {batch} con agua dulce purificada y fría.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the rows for {litres} say. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Pese lo que dicen las filas para {litres}. No mida con la cuchara.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the row for {litres} says. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Pese lo que dice la fila para {litres}. No mida con la cuchara.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salts into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Eche las sales al agua despacio, removiendo. Nunca vierta agua sobre la sal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salt into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Eche la sal al agua despacio, removiendo. Nunca vierta agua sobre la sal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it come to the warmth of the room.</source>
        <extracomment>_mixing</extracomment>
        <translation>Deje que tome la temperatura de la habitación.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill up to {litres} with the same water. Stir.</source>
        <extracomment>_mixing</extracomment>
        <translation>Complete a {litres} con la misma agua. Remueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look</source>
        <extracomment>_mixing, _limewater</extracomment>
        <translation>Mire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Nothing may lie on the ground, nothing may float, it must be clear. If not: stir longer, do not heat.</source>
        <extracomment>_mixing</extracomment>
        <translation>No debe haber nada en el fondo, nada flotando, y debe estar claro. Si no: remueva más tiempo, no caliente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Still not clear after an hour: do not use it. Call the keeper.</source>
        <extracomment>_mixing</extracomment>
        <translation>Sigue sin estar claro tras una hora: no lo use. Llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Pare la bomba. Saque el tubo del bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the name above.</source>
        <extracomment>_limewater</extracomment>
        <translation>Compare las palabras de la bolsa con el nombre de arriba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug with {litres} of purified fresh water.</source>
        <extracomment>_limewater</extracomment>
        <translation>Llene el bidón con {litres} de agua dulce purificada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put in what the row says, without raising dust. Stir for a minute. Close the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Eche lo que dice la fila, sin levantar polvo. Remueva un minuto. Cierre el bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it settle over night. Some must lie on the ground: it is more than can dissolve.</source>
        <extracomment>_limewater</extracomment>
        <translation>Deje que se asiente toda la noche. Algo debe quedar en el fondo: es más de lo que puede disolverse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>The water above must be clear. Put the line into the clear water, well above the ground.</source>
        <extracomment>_limewater</extracomment>
        <translation>El agua de encima debe estar clara. Ponga el tubo en el agua clara, bien por encima del fondo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Go on only if you are trained for this chemical. If not: stop the pump, call the keeper.</source>
        <extracomment>_trained</extracomment>
        <translation>Siga solo si está formado para este producto. Si no: pare la bomba, llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>a third</source>
        <extracomment>_share</extracomment>
        <translation>hasta un tercio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>, the word {signal_word}</source>
        <extracomment>_finish</extracomment>
        <translation>, la palabra {signal_word}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Label</source>
        <extracomment>_finish, _bottle</extracomment>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, strength, the date of today{word}.</source>
        <extracomment>_finish</extracomment>
        <translation>Escriba en el bidón: nombre, concentración, fecha de hoy{word}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when a new bottle is opened, with exactly these words on its label.</source>
        <extracomment>_bottle</extracomment>
        <translation>Use esta tarjeta cuando se abre un frasco nuevo, con exactamente estas palabras en su etiqueta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the label, word for word and number for number. It must say: {said}.</source>
        <extracomment>_bottle</extracomment>
        <translation>Compare la etiqueta, palabra por palabra y número por número. Debe decir: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look at the date on the bottle. Look that nothing lies on the ground of it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Mire la fecha del frasco. Vea que no haya nada en su fondo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill it in as it is. Do not thin it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Viértalo tal como está. No lo diluya.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, the words above, the date of today.</source>
        <extracomment>_bottle</extracomment>
        <translation>Escriba en el bidón: nombre, las palabras de arriba, fecha de hoy.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another name, another number or another unit on the label: {void}</source>
        <extracomment>_bottle</extracomment>
        <translation>Otro nombre, otro número u otra unidad en la etiqueta: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>, {purity} pure</source>
        <extracomment>_row, strength_words, _portion_words</extracomment>
        <translation>, pureza {purity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>For {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Para {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>To make {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Para hacer {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>More than dissolves, so that some stays on the ground</source>
        <extracomment>_row</extracomment>
        <translation>Más de lo que se disuelve, para que quede algo en el fondo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Made up to {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Completado a {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>syringe</source>
        <translation>jeringa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>measuring cylinder</source>
        <translation>probeta graduada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>by hand</source>
        <extracomment>_with</extracomment>
        <translation>a mano</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>The keeper's&#xa0;telephone:</source>
        <translation>Teléfono del&#xa0;cuidador:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>Goes with the dose card of this plan. After its last day: give nothing, test daily, call the keeper.</source>
        <extracomment>identity</extracomment>
        <translation>Va con la tarjeta de dosis de este plan. Después de su último día: no dé nada, mida a diario, llame al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Keep apart</source>
        <extracomment>apart</extracomment>
        <translation>Mantener separados</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{parameter} from {measured} to {target}, {number}</source>
        <extracomment>Plan.in_words</extracomment>
        <translation>{parameter} de {measured} a {target}, {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{low} to {high}</source>
        <extracomment>hints, _band, _answer</extracomment>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>half of a 95 % range</source>
        <extracomment>hints</extracomment>
        <translation>mitad de un intervalo del 95 %</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual kit within {kit_accuracy}</source>
        <extracomment>hints</extracomment>
        <translation>kit usual: margen {kit_accuracy}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usually kept: {kept}</source>
        <extracomment>hints</extracomment>
        <translation>se suele mantener: {kept}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual {recommended}, most {hard}</source>
        <extracomment>hints</extracomment>
        <translation>usual {recommended}, máximo {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>what the animals take in a day</source>
        <extracomment>hints</extracomment>
        <translation>lo que toman los animales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>100 % when the bag does not say</source>
        <extracomment>hints</extracomment>
        <translation>100 % si la bolsa no lo dice</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Net volume {volume}.</source>
        <extracomment>volume_sentence</extracomment>
        <translation>Volumen neto {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>net volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>volumen neto aún desconocido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>volumen aún desconocido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words} net{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words} netos{said}, más o menos {share}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words}{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words}{said}, más o menos {share}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Danger.</source>
        <extracomment>cautions</extracomment>
        <translation>Peligro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>water only: no rock, no sand</source>
        <extracomment>_volume_hint</extracomment>
        <translation>solo agua: sin roca ni arena</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>Importar a {system}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import {number} into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>Importar {number} a {system}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>{n} readings</source>
        <extracomment>for 1: {n} reading; button_words, _said, write</extracomment>
        <translation>
            <numerusform>{n} lectura</numerusform>
            <numerusform>{n} lecturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Every reading is in the log already.</source>
        <extracomment>for 1: The reading is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>La lectura ya está en el registro.</numerusform>
            <numerusform>Todas las lecturas ya están en el registro.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} are in the log already.</source>
        <extracomment>for 1: {n} is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>{n} ya está en el registro.</numerusform>
            <numerusform>{n} ya están en el registro.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Nothing was imported. {of}</source>
        <extracomment>done_words</extracomment>
        <translation>No se importó nada. {of}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Undo takes them out again.</source>
        <extracomment>for 1: Undo takes it out again.; done_words</extracomment>
        <translation>
            <numerusform>Deshacer la retira.</numerusform>
            <numerusform>Deshacer las retira.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Imported {n} readings.</source>
        <extracomment>for 1: Imported {n} reading.; done_words</extracomment>
        <translation>
            <numerusform>{n} lectura importada.</numerusform>
            <numerusform>{n} lecturas importadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} were in the log already.</source>
        <extracomment>for 1: {n} was in the log already.; _were</extracomment>
        <translation>
            <numerusform>{n} ya estaba en el registro.</numerusform>
            <numerusform>{n} ya estaban en el registro.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>At {hour}</source>
        <translation>A las {hour}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Western European, code page 1252</source>
        <translation>Europa occidental, página de códigos 1252</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Semicolon</source>
        <translation>Punto y coma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Comma</source>
        <translation>Coma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Tab</source>
        <translation>Tabulador</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Either, as typed by hand</source>
        <translation>Cualquiera, como escrito a mano</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Year, month, day</source>
        <translation>Año, mes, día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Day, month, year</source>
        <translation>Día, mes, año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Month, day, year</source>
        <translation>Mes, día, año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>24 hours</source>
        <translation>24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>12 hours with am and pm</source>
        <translation>12 horas con am y pm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave them out</source>
        <translation>Omitirlas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The first</source>
        <translation>La primera</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The second</source>
        <translation>La segunda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave out</source>
        <extracomment>_series_points</extracomment>
        <translation>Omitir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Time of day</source>
        <translation>Hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Name of the parameter</source>
        <translation>Nombre del parámetro</translation>
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
        <translation>Valor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Unit</source>
        <extracomment>_long</extracomment>
        <translation>Unidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Test kit</source>
        <translation>Kit de prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Who tested</source>
        <translation>Quién midió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note</source>
        <extracomment>row, LogForm._make_fields</extracomment>
        <translation>Nota</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Encoding</source>
        <extracomment>sniff</extracomment>
        <translation>Codificación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Separator</source>
        <extracomment>sniff</extracomment>
        <translation>Separador</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Decimal mark</source>
        <extracomment>sniff</extracomment>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some readings are from the hour that came twice when the clocks went back.</source>
        <extracomment>twice_point</extracomment>
        <translation>Algunas lecturas son de la hora que vino dos veces al atrasar los relojes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Hour that came twice</source>
        <extracomment>twice_point</extracomment>
        <translation>Hora que vino dos veces</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Order of the date</source>
        <translation>Orden de la fecha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Clock</source>
        <translation>Reloj</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Readings without a time of day</source>
        <translation>Lecturas sin hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The file is not in UTF-8. See whether names and signs look right.</source>
        <extracomment>_encoding</extracomment>
        <translation>El archivo no está en UTF-8. Vea si los nombres y signos están bien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>See whether the columns look right.</source>
        <extracomment>_separator</extracomment>
        <translation>Vea si las columnas están bien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>None</source>
        <extracomment>_heading</extracomment>
        <translation>Ninguno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Row {row}</source>
        <extracomment>_heading</extracomment>
        <translation>Fila {row}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No headings were found.</source>
        <extracomment>_heading</extracomment>
        <translation>No se encontraron títulos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>What stands above is left out.</source>
        <extracomment>_heading</extracomment>
        <translation>Lo que está por encima se omite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Headings</source>
        <extracomment>_heading</extracomment>
        <translation>Títulos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates have</source>
        <extracomment>_times</extracomment>
        <translation>Las fechas no tienen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates have</source>
        <extracomment>_times</extracomment>
        <translation>Algunas fechas no tienen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{part} no time of day. Choose what they are taken as.</source>
        <extracomment>_times</extracomment>
        <translation>{part} hora. Elija cómo se toman.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No date was found. Choose the column and the order of its dates.</source>
        <extracomment>_order</extracomment>
        <translation>No se encontró ninguna fecha. Elija la columna y el orden de sus fechas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates fit only with the day first, and some only with the month first.</source>
        <extracomment>_order</extracomment>
        <translation>Algunas fechas solo encajan con el día primero, y otras solo con el mes primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Dates with points begin with the day.</source>
        <extracomment>_order</extracomment>
        <translation>Las fechas con puntos empiezan por el día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Not every date would be one in another order.</source>
        <extracomment>_order</extracomment>
        <translation>En otro orden no todas serían fechas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>“{unclear}”: which is the day and which the month?</source>
        <extracomment>_order</extracomment>
        <translation>«{unclear}»: ¿cuál es el día y cuál el mes?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates begin with the year.</source>
        <extracomment>_order</extracomment>
        <translation>Las fechas empiezan por el año.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some times say am or pm and some do not. Of those, are the hours counted to 24?</source>
        <extracomment>_clock</extracomment>
        <translation>Algunas horas dicen am o pm y otras no. En estas, ¿se cuentan hasta 24?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the heading is not known.</source>
        <extracomment>_column_points</extracomment>
        <translation>Omitido: el título no se conoce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out.</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>Omitido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{name}: unit</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>{name}: unidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the name is not known.</source>
        <extracomment>_series_points</extracomment>
        <translation>Omitido: el nombre no se conoce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Column {number}</source>
        <extracomment>_name</extracomment>
        <translation>Columna {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Line {line}: </source>
        <extracomment>preview, ImportPage._show</extracomment>
        <translation>Línea {line}: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>unit not chosen</source>
        <extracomment>_headings</extracomment>
        <translation>unidad sin elegir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which column holds the date, and which hold readings.</source>
        <extracomment>_hinders</extracomment>
        <translation>Elija qué columna contiene la fecha, y cuáles contienen lecturas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose what is still asked. Nothing is imported before.</source>
        <extracomment>_hinders</extracomment>
        <translation>Elija lo que aún se pregunta. Antes no se importa nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which is meant of the hour that came twice.</source>
        <extracomment>_hinders</extracomment>
        <translation>Elija cuál se quiere de la hora que vino dos veces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Not one reading can be taken.</source>
        <extracomment>_hinders</extracomment>
        <translation>No se puede tomar ni una lectura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{readings} in {rows}.</source>
        <extracomment>_said</extracomment>
        <translation>{readings} en {rows}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} rows</source>
        <extracomment>for 1: {n} row; _said</extracomment>
        <translation>
            <numerusform>{n} fila</numerusform>
            <numerusform>{n} filas</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{refused} not taken.</source>
        <extracomment>_said</extracomment>
        <translation>No tomado: {refused}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} cells are</source>
        <extracomment>for 1: {n} cell is; _said</extracomment>
        <translation>
            <numerusform>{n} celda</numerusform>
            <numerusform>{n} celdas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings stand</source>
        <extracomment>for 1: {n} reading stands; _said</extracomment>
        <translation>
            <numerusform>{n} lectura está</numerusform>
            <numerusform>{n} lecturas están</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{stand} in the file twice, and are taken once.</source>
        <extracomment>for 1: {stand} in the file twice, and is taken once.; _said</extracomment>
        <translation>
            <numerusform>{stand} dos veces en el archivo, y se toma una vez.</numerusform>
            <numerusform>{stand} dos veces en el archivo, y se toman una vez.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings are</source>
        <extracomment>for 1: {n} reading is; _said</extracomment>
        <translation>
            <numerusform>{n} lectura es</numerusform>
            <numerusform>{n} lecturas son</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{are} not likely, and taken as they stand.</source>
        <extracomment>for 1: {are} not likely, and taken as it stands.; _said</extracomment>
        <translation>
            <numerusform>{are} poco probable, y se toma como está.</numerusform>
            <numerusform>{are} poco probables, y se toman como están.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Of {faulty} rows with a fault the first {faulty_rows} are shown.</source>
        <extracomment>_said</extracomment>
        <translation>De {faulty} filas con un fallo se muestran las primeras {faulty_rows}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The order of the date is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Falta elegir el orden de la fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The clock is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Falta elegir el reloj.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The decimal mark is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>Falta elegir el signo decimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure is without a unit of its own.</source>
        <extracomment>unit_of</extracomment>
        <translation>Ninguna cifra carece de unidad propia.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}.</source>
        <extracomment>unit_of</extracomment>
        <translation>El archivo dice {unit}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}, but the figures are likely as {better}.</source>
        <extracomment>unit_of</extracomment>
        <translation>El archivo dice {unit}, pero las cifras son probables en {better}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>“{heading_said}” does not name one unit.</source>
        <extracomment>unit_of</extracomment>
        <translation>«{heading_said}» no nombra una sola unidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No unit is said.</source>
        <extracomment>unit_of</extracomment>
        <translation>No se dice ninguna unidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures are likely only as {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Las cifras solo son probables en {likely}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures may be in {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Las cifras pueden estar en {likely}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} In none of the likely units are the figures likely.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Las cifras no son probables en ninguna de las unidades.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>This file was written by Evenwater, with a decimal point.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Este archivo lo escribió Evenwater, con punto decimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Some figures have a decimal point and some a decimal comma.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Algunas cifras tienen punto decimal y otras coma decimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure has a decimal mark.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Ninguna cifra tiene signo decimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The figures have a decimal {name}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Signo decimal de las cifras: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Most figures have a decimal {name}, but {example} would be unlikely so.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Signo decimal de casi todas las cifras: {name}, pero {example} sería así poco probable.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} are likely only with a decimal {only}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Cifras como {example} solo son probables con este signo decimal: {only}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} can be read in two ways.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Cifras como {example} se pueden leer de dos maneras.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>point</source>
        <extracomment>_name</extracomment>
        <translation>punto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>comma</source>
        <extracomment>_name</extracomment>
        <translation>coma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is empty.</source>
        <translation>El archivo está vacío.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is larger than {megabytes}. Split it by years.</source>
        <translation>El archivo supera {megabytes}. Divídalo por años.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>This is no text file. Save the sheet as CSV, in UTF-8.</source>
        <translation>Esto no es un archivo de texto. Guarde la hoja como CSV, en UTF-8.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is not written in this encoding. Choose another one.</source>
        <translation>El archivo no está escrito en esta codificación. Elija otra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A quotation mark is opened here and never closed.</source>
        <translation>Aquí se abre una comilla que no se cierra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Text stands behind a closing quotation mark. Put a separator between them, or double the mark.</source>
        <translation>Hay texto tras una comilla de cierre. Ponga un separador entre ambos, o duplique la comilla.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A cell is longer than any note. Look for a quotation mark that is not closed.</source>
        <translation>Una celda es más larga que cualquier nota. Busque una comilla sin cerrar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The line is longer than any row of readings.</source>
        <translation>La línea es más larga que cualquier fila de lecturas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file has more than {most} lines, more than a sheet has rows. Split it by years.</source>
        <translation>El archivo tiene más de {most} líneas, más que filas tiene una hoja. Divídalo por años.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A row has more than {most} cells. Delete what is no reading, and save the sheet again.</source>
        <translation>Una fila tiene más de {most} celdas. Borre lo que no es lectura y guarde la hoja de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>No columns were found. Save the sheet as CSV with a semicolon, a comma, a tab or a bar between the cells.</source>
        <translation>No se encontraron columnas. Guarde la hoja como CSV con punto y coma, coma, tabulador o barra entre las celdas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>There is nothing below the headings.</source>
        <translation>No hay nada bajo los títulos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has {cells} cells, more than the {columns} of the headings. A comma inside a number needs quotation marks around it.</source>
        <translation>La fila tiene {cells} celdas, más que las {columns} de los títulos. Una coma dentro de un número necesita comillas alrededor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has no date.</source>
        <translation>La fila no tiene fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25 08:00.</source>
        <translation>«{text}» no es una fecha. Escríbala como 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is no date in the order chosen for day, month and year.</source>
        <translation>«{text}» no es una fecha en el orden elegido para día, mes y año.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not in the calendar.</source>
        <translation>«{text}» no está en el calendario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has no time of day.</source>
        <translation>«{text}» no tiene hora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a time of day. Write it like 18:30.</source>
        <translation>«{text}» no es una hora. Escríbala como 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}”: morning or evening? Write am or pm after it.</source>
        <translation>«{text}»: ¿mañana o tarde? Escriba am o pm detrás.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has a time of day, and the row has another one.</source>
        <translation>«{text}» tiene una hora, y la fila tiene otra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is too long ago. Correct the year.</source>
        <translation>{at} es demasiado antiguo. Corrija el año.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is still to come. Correct the date.</source>
        <translation>{at} está por venir. Corrija la fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} never was: the clocks went forward over it.</source>
        <translation>{at} nunca existió: los relojes se adelantaron por encima.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} came twice, when the clocks went back.</source>
        <translation>{at} vino dos veces, al atrasarse los relojes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is left out: no parameter is chosen for it.</source>
        <translation>«{text}» se omite: no se ha elegido parámetro para ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The unit is still to be chosen.</source>
        <translation>Falta elegir la unidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has another decimal mark than this file.</source>
        <translation>«{text}» tiene otro signo decimal que este archivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The same reading stands in line {line}.</source>
        <translation>La misma lectura está en la línea {line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Taken as it stands, but not a likely reading of {parameter}. Look at it again.</source>
        <translation>Tomado como está, pero no es una lectura probable ({parameter}). Mírelo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Parameter</source>
        <extracomment>_long</extracomment>
        <translation>Parámetro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>measured by filling</source>
        <translation>medido al llenar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>found by dose and test</source>
        <translation>hallado dosificando y midiendo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>reckoned from dimensions</source>
        <translation>calculado por las dimensiones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>not known, low end used</source>
        <translation>desconocido, extremo bajo usado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, measured {measured_at}</source>
        <extracomment>card</extracomment>
        <translation>, medido el {measured_at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Reason given for the limits set: {reason}</source>
        <extracomment>card</extracomment>
        <translation>Razón dada para los límites fijados: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Raise {name} from {measured} to {target}</source>
        <extracomment>card</extracomment>
        <translation>Subir {name} de {measured} a {target}</translation>
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
        <translation>Sistema sin nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Net volume {volume}{known}, within {percent}. Reading {measured}{reading}.</source>
        <extracomment>card</extracomment>
        <translation>Volumen neto {volume}{known}, más o menos {percent}. Lectura {measured}{reading}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Issued {date_words} {clock}</source>
        <extracomment>card, page</extracomment>
        <translation>Emitida el {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Replace this card when the plan id changes.</source>
        <extracomment>card</extracomment>
        <translation>Sustituya esta tarjeta cuando cambie el código del plan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Valid until {valid_until}</source>
        <extracomment>card</extracomment>
        <translation>Válida hasta el {valid_until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>Bottle, by its label</source>
        <extracomment>card, _rows, _contents</extracomment>
        <translation>Frasco, según su etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Never more than {never_more} in 24 hours, all doses together.</source>
        <extracomment>card</extracomment>
        <translation>Nunca más de {never_more} en 24 horas, todas las dosis juntas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Stop and test again if {name} reads above {stop_above}. Never make up missed doses.</source>
        <extracomment>card</extracomment>
        <translation>Pare y mida de nuevo si {name} pasa de {stop_above}. Nunca compense dosis perdidas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Test {name} on {answer} at the latest, then once more at the end.</source>
        <extracomment>card</extracomment>
        <translation>Mida {name} el {answer} como muy tarde, y otra vez al final.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{in_24_hours} in 24 hours, {total} in all.</source>
        <extracomment>card</extracomment>
        <translation>{in_24_hours} en 24 horas, {total} en total.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>If the whole jug ran in, {name} would reach {whole_jug}: keep the outlet above the water.</source>
        <extracomment>card</extracomment>
        <translation>Si todo el bidón se vaciara, {name} llegaría a {whole_jug}: mantenga la salida por encima del agua.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:</source>
        <extracomment>card</extracomment>
        <translation>En los ojos: enjuague al menos 15 minutos y busque atención médica. Centro de toxicología:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {first} {per_day}, {n} doses, last {last}</source>
        <extracomment>for 1: From {first} {per_day}, {n} dose, last {last}; _rows</extracomment>
        <translation>
            <numerusform>Desde el {first} {per_day}, {n} dosis, última el {last}</numerusform>
            <numerusform>Desde el {first} {per_day}, {n} dosis, última el {last}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {after} {per_day}, to keep it there</source>
        <extracomment>_rows</extracomment>
        <translation>Desde el {after} {per_day}, para mantener ahí el valor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Pump runs {run_time} at {flow_ml_per}</source>
        <extracomment>pump_setting</extracomment>
        <translation>La bomba funciona {run_time} a {flow_ml_per}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source> The jug's label says batch {batch_id}.</source>
        <extracomment>_strength</extracomment>
        <translation> La etiqueta del bidón dice preparación {batch_id}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, mixed {mixed_on}</source>
        <extracomment>_strength</extracomment>
        <translation>, preparado el {mixed_on}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, date mixed: see the jug</source>
        <extracomment>_strength</extracomment>
        <translation>, fecha de preparación: vea el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength: {additive}{mixed}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Concentración: {additive}{mixed}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength by its label: {label}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Concentración según su etiqueta: {label}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{dose} raise {water} by {raises}</source>
        <extracomment>label_words</extracomment>
        <translation>{dose} suben {water} en {raises}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>saturated, {most} per {litre} at {coolest}</source>
        <extracomment>strength_words</extracomment>
        <translation>saturado, {most} por {litre} a {coolest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>dissolved {parts} per {litre}{pure}</source>
        <extracomment>strength_words</extracomment>
        <translation>disuelto {parts} por {litre}{pure}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Look at the jug every day.</source>
        <extracomment>_refill</extracomment>
        <translation>Mire el bidón cada día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>A full jug is empty on {runs_out_at}: refill before then.</source>
        <extracomment>_refill</extracomment>
        <translation>Un bidón lleno se vacía el {runs_out_at}: rellénelo antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>calcium or magnesium</source>
        <extracomment>_separation</extracomment>
        <translation>calcio o magnesio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Keep 30 minutes and another outlet between this and any {opposite} dose. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Deje 30 minutos entre esto y cualquier dosis de {opposite}, y use otra salida. Nunca mezcle los concentrados.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The bag's own safety sheet and local rules come first.</source>
        <extracomment>_cautions</extracomment>
        <translation>La ficha de datos de seguridad de la bolsa y las normas locales van primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Dry your hands before you touch a plug. Unplug before you reach into the water.</source>
        <translation>Séquese las manos antes de tocar un enchufe. Desenchufe antes de meter la mano en el agua.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Water on a plug or a power strip: touch nothing, switch the circuit off at the board first.</source>
        <translation>Agua en un enchufe o regleta: no toque nada, corte antes el circuito en el cuadro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every circuit here needs residual-current protection that trips at 30&#xa0;mA or less.</source>
        <translation>Cada circuito aquí necesita un diferencial que salte con 30&#xa0;mA o menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Give nothing that lowers it: no acid, no second chemical against the first.</source>
        <translation>No dé nada que lo baje: ni ácido, ni un segundo producto contra el primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Do not start the pump again before the keeper says so.</source>
        <translation>No vuelva a poner en marcha la bomba hasta que el cuidador lo diga.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>No way down was chosen. Hold all doses, test every day, and wait for the keeper.</source>
        <translation>No se eligió ninguna bajada. Suspenda todas las dosis, mida cada día y espere al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{banner}: {name} too high</source>
        <extracomment>card</extracomment>
        <translation>{banner}: {name}, valor demasiado alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Valid until {date_time}</source>
        <extracomment>card</extracomment>
        <translation>Válida hasta el {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Replace this card after the next test.</source>
        <extracomment>card</extracomment>
        <translation>Sustituya esta tarjeta tras la próxima prueba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Readings</source>
        <extracomment>card</extracomment>
        <translation>Lecturas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Date, time</source>
        <extracomment>card</extracomment>
        <translation>Fecha, hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>What was tested</source>
        <extracomment>card</extracomment>
        <translation>Lo que se midió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>About {dose} ran in. </source>
        <extracomment>_happened</extracomment>
        <translation>Entraron unos {dose}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{ran_in}{name} {now}, to come to {target}.</source>
        <extracomment>_happened</extracomment>
        <translation>{ran_in}{name} {now}, debe llegar a {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>After a new test, on the first day</source>
        <extracomment>_rows</extracomment>
        <translation>Tras una nueva prueba, el primer día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>On the first day</source>
        <extracomment>_rows</extracomment>
        <translation>El primer día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>new water in, as much old water out</source>
        <extracomment>_rows</extracomment>
        <translation>de agua nueva entran, otro tanto de agua vieja sale</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>That is {first} an hour, far from the animals.</source>
        <extracomment>_rows</extracomment>
        <translation>Eso es {first} por hora, lejos de los animales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name} and everything else. Write it down.</source>
        <extracomment>_steps</extracomment>
        <translation>Mida {name} y todo lo demás. Anótelo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Give nothing.</source>
        <extracomment>_steps</extracomment>
        <translation>Mida {name}. No dé nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Cloudy or white film</source>
        <extracomment>_steps</extracomment>
        <translation>Turbia o película blanca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Wait. Tell the keeper the new tests: this card may not hold any more.</source>
        <extracomment>_steps</extracomment>
        <translation>Espere. Diga al cuidador las nuevas pruebas: esta tarjeta puede no valer ya.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Still give nothing above {target}.</source>
        <extracomment>_steps</extracomment>
        <translation>Mida {name}. Siga sin dar nada por encima de {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>At {target} or below</source>
        <extracomment>_steps</extracomment>
        <translation>En {target} o menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Tell the keeper. The doses begin again only as the keeper says.</source>
        <extracomment>_steps</extracomment>
        <translation>Dígaselo al cuidador. Las dosis solo empiezan otra vez como diga el cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test and ask the keeper for a new card.</source>
        <extracomment>_steps</extracomment>
        <translation>Mida y pida al cuidador una tarjeta nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>From {begins}</source>
        <extracomment>_steps</extracomment>
        <translation>Desde el {begins}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test first. Then {much} of water in {days}: {stage} an hour. About {reached} after it.</source>
        <extracomment>_steps</extracomment>
        <translation>Mida primero. Luego {much} de agua en {days}: {stage} por hora. Después, unos {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Still above</source>
        <extracomment>_steps</extracomment>
        <translation>Aún por encima</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Go on with no more than {stages} an hour, test every day.</source>
        <extracomment>_steps</extracomment>
        <translation>Siga con no más de {stages} por hora, mida cada día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop. Tell the keeper.</source>
        <extracomment>_steps</extracomment>
        <translation>Pare. Dígaselo al cuidador.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never exchange more than {most} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Nunca cambie más de {most} en 24 horas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop and call if {name} falls by more than {said} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Pare y llame si {name} baja más de {said} en 24 horas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Held</source>
        <extracomment>_facts</extracomment>
        <translation>Suspendido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>: no doses.</source>
        <extracomment>_facts</extracomment>
        <translation>: sin dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{how_long} to {how_long_2}</source>
        <extracomment>_facts</extracomment>
        <translation>{how_long} a {how_long_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{now} now, {end} at the end; moves {moves} in 24 hours, {most} at most.</source>
        <extracomment>_facts</extracomment>
        <translation>{now} ahora, {end} al final; se mueve {moves} en 24 horas, {most} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>New water</source>
        <extracomment>_facts, _pair</extracomment>
        <translation>Agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Bring it to the tank's temperature and salinity first.</source>
        <extracomment>_facts</extracomment>
        <translation>Llévela antes a la temperatura y la salinidad del acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Typed as {was}, shown as {shown}.</source>
        <extracomment>conversion_words</extracomment>
        <translation>Escrito {was}, mostrado {shown}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Relabel: {was} becomes {number}</source>
        <extracomment>relabels</extracomment>
        <translation>Cambiar la unidad: {was} pasa a {number}</translation>
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
        <translation>ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>after {day}</source>
        <extracomment>CourseChart.words_at</extracomment>
        <translation>tras {day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source> ({low} to {high})</source>
        <extracomment>CourseChart.words_at, TogetherChart.reading_words</extracomment>
        <translation> ({low} a {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>new water{assumed} {new_water}</source>
        <extracomment>_chart</extracomment>
        <translation>agua nueva{assumed} {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <source>, assumed</source>
        <extracomment>_chart, _water</extracomment>
        <translation>, supuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source> It settles at {settles}.</source>
        <extracomment>_chart</extracomment>
        <translation> Se estabiliza en {settles}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} in {unit} against days</source>
        <extracomment>_chart</extracomment>
        <translation>{name} en {unit} según los días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} goes from {first} to {last} in {days}, {new}.{goes}</source>
        <extracomment>_chart</extracomment>
        <translation>{name} va de {first} a {last} en {days}, {new}.{goes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both pumps alike</source>
        <translation>Ambas bombas iguales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>As a batch change</source>
        <translation>Como un cambio de golpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Each pump by itself</source>
        <translation>Cada bomba por sí misma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both outlets end above the water with an air gap: else a whole jug can siphon across.</source>
        <translation>Ambas salidas terminan por encima del agua con un espacio de aire: si no, un bidón entero puede pasar por sifón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>A jug of 20&#xa0;L weighs 20&#xa0;kg: fill it where it stands, or lift it with two.</source>
        <translation>Un bidón de 20&#xa0;L pesa 20&#xa0;kg: llénelo en su sitio, o levántelo entre dos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>The bag's own sheet comes first.</source>
        <translation>La ficha de la propia bolsa va primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Salt into water, slowly, never water onto salt.</source>
        <translation>La sal al agua, despacio, nunca el agua sobre la sal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Stir and aerate until all of it is clear; a day is best, and only then test.</source>
        <translation>Remueva y airee hasta que todo esté claro; un día es lo mejor, y mida solo entonces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Bring it to the tank's temperature before it goes in.</source>
        <translation>Llévela a la temperatura del acuario antes de que entre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Nothing for drinks or food is used for mixing.</source>
        <translation>Para mezclar no se usa nada de lo que sirve para beber o comer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water exchanged in a day</source>
        <translation>el agua cambiada en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how the exchange is said</source>
        <translation>cómo se dice el cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the batch change that the exchange equals</source>
        <translation>el cambio de golpe al que equivale</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the days between two batch changes</source>
        <translation>los días entre dos cambios de golpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water taken out in a day</source>
        <translation>el agua sacada en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in a day</source>
        <translation>el agua nueva en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how many days to look ahead</source>
        <translation>los días que se miran por delante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of old water holds</source>
        <translation>lo que cabe en el bidón de agua vieja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of new water holds</source>
        <translation>lo que cabe en el bidón de agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in the bucket</source>
        <translation>el agua nueva del cubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salt mix on the bag's label</source>
        <translation>la mezcla de sales en la etiqueta de la bolsa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water on the bag's label</source>
        <translation>el agua en la etiqueta de la bolsa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity on the bag's label</source>
        <translation>la salinidad en la etiqueta de la bolsa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity found in the bucket</source>
        <translation>la salinidad hallada en el cubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of nitrate lost in a day</source>
        <translation>la parte de nitrato perdida en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of phosphate lost in a day</source>
        <translation>la parte de fosfato perdida en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the {name} of the new water</source>
        <translation>este valor en el agua nueva: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Danger: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Peligro: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Caution: {line}</source>
        <extracomment>_lines</extracomment>
        <translation>Precaución: {line}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{out} a day go out, {in_} a day come in.</source>
        <extracomment>_lines</extracomment>
        <translation>Salen {out} al día, entran {in_} al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}, {left} of the old water are left ({low} to {high} by how well the volume is known). A batch change of {batch_whole} leaves as much.</source>
        <extracomment>_lines</extracomment>
        <translation>Tras {days} queda {left} del agua vieja ({low} a {high} según lo bien que se conoce el volumen). Un cambio de golpe de {batch_whole} deja otro tanto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The exchange of a week equals a batch change of {batch_weekly}.</source>
        <extracomment>_lines</extracomment>
        <translation>El cambio de una semana equivale a un cambio de golpe de {batch_weekly}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{name}: {points} at the start, new water {new_water}</source>
        <extracomment>_course</extracomment>
        <translation>{name}: {points} al principio, agua nueva {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}: {end} ({low} to {high})</source>
        <extracomment>_course</extracomment>
        <translation>Tras {days}: {end} ({low} a {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>Settles at {settles}; half of the way takes {half_way}</source>
        <extracomment>_course</extracomment>
        <translation>Se estabiliza en {settles}; la mitad del camino tarda {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>In is {ratio} of out; {low} hold salinity within 0.5. With the level held by top-off it settles at {settles}.</source>
        <extracomment>_pair</extracomment>
        <translation>Lo que entra es {ratio} de lo que sale; {low} mantienen la salinidad dentro de 0,5. Con el nivel mantenido por el relleno se estabiliza en {settles}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of old water.</source>
        <extracomment>_pair</extracomment>
        <translation>Una semana mueve {weekly} de agua vieja.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug is full after {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> El bidón se llena en {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of new water.</source>
        <extracomment>_pair</extracomment>
        <translation>Una semana mueve {weekly} de agua nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug lasts {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> El bidón dura {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{more} a day {less}</source>
        <extracomment>_dosing</extracomment>
        <translation>{more} al día {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>To keep {name} where it is takes {with_exchange} of its stock a day with the exchange, {without} without: {how}.</source>
        <extracomment>_dosing</extracomment>
        <translation>Para mantener {name} donde está hacen falta {with_exchange} de su solución al día con el cambio de agua, {without} sin él: {how}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{volume} of new water take {mix_g} of salt mix.</source>
        <extracomment>_bucket</extracomment>
        <translation>{volume} de agua nueva llevan {mix_g} de mezcla de sales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket lacks {salt_g} of sodium chloride.</source>
        <extracomment>_bucket</extracomment>
        <translation>Al cubo le faltan {salt_g} de cloruro de sodio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket takes {water} of fresh water.</source>
        <extracomment>_bucket</extracomment>
        <translation>Al cubo le faltan {water} de agua dulce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>from the system's own fields</source>
        <translation>de los campos del propio sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>not said when</source>
        <translation>sin fecha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{age}: old</source>
        <extracomment>_value</extracomment>
        <translation>{age}: antiguo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{new}
assumed</source>
        <extracomment>_value</extracomment>
        <translation>{new}
supuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>used {use} a day{from_}</source>
        <extracomment>_moved_by</extracomment>
        <translation>consumido {use} al día{from_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>, from the log</source>
        <extracomment>_moved_by</extracomment>
        <translation>, según el registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>added {added} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>añadido {added} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>taken {loss} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>retirado {loss} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>nothing left</source>
        <extracomment>_ends</extracomment>
        <translation>no queda nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{end}
{low} to {high}</source>
        <extracomment>_ends</extracomment>
        <translation>{end}
{low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never: nothing left after {runs_out}</source>
        <extracomment>_settles</extracomment>
        <translation>nunca: no queda nada tras {runs_out}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>stays</source>
        <extracomment>_settles</extracomment>
        <translation>se queda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never</source>
        <extracomment>_settles</extracomment>
        <translation>nunca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
where it is</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
donde está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
half way after {half_way}</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
a mitad de camino tras {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} by {change}</source>
        <extracomment>_pace</extracomment>
        <translation>{way} en {change}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>no change</source>
        <extracomment>_pace, _change</extracomment>
        <translation>sin cambio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Rise</source>
        <extracomment>_bars</extracomment>
        <translation>Subida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fall</source>
        <extracomment>_bars</extracomment>
        <translation>Bajada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{change} of {hard}</source>
        <extracomment>_bars</extracomment>
        <translation>{change} de {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} of {name} in a day</source>
        <extracomment>_bars</extracomment>
        <translation>{way} en un día: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water apart in {name}</source>
        <extracomment>_apart</extracomment>
        <translation>Diferencia del agua nueva: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{said} of {said_most}</source>
        <extracomment>_apart</extracomment>
        <translation>{said} de {said_most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{low} hold salinity within 0.5</source>
        <extracomment>_pair</extracomment>
        <translation>{low} mantienen la salinidad dentro de 0,5</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water to old water</source>
        <extracomment>_pair</extracomment>
        <translation>Agua nueva frente a agua vieja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>with the level held by top-off: {new_salinity} times {ratio}</source>
        <extracomment>_pair</extracomment>
        <translation>con el nivel mantenido por el relleno: {new_salinity} por {ratio}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salinity settles, by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>La salinidad se estabiliza, solo por el par</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more in than out</source>
        <extracomment>_pair</extracomment>
        <translation>entra más de lo que sale</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more out than in</source>
        <extracomment>_pair</extracomment>
        <translation>sale más de lo que entra</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Level by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>Nivel, solo por el par</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day evaporate</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} al día se evaporan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Top-off that holds the level</source>
        <extracomment>_pair</extracomment>
        <translation>Relleno que mantiene el nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Old water</source>
        <extracomment>_pair</extracomment>
        <translation>Agua vieja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>is full after</source>
        <extracomment>_pair</extracomment>
        <translation>se llena en</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>lasts</source>
        <extracomment>_pair</extracomment>
        <translation>dura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>a jug of {kilo} {does} {lasts}</source>
        <extracomment>_pair</extracomment>
        <translation>un bidón de {kilo} {does} {lasts}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{what}, jug for a week</source>
        <extracomment>_pair</extracomment>
        <translation>{what}, bidón para una semana</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} less</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} more</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>by the label: {label_g} in {kilo} give {label_salinity}. {label_only}</source>
        <extracomment>_bucket</extracomment>
        <translation>según la etiqueta: {label_g} en {kilo} dan {label_salinity}. {label_only}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix for {kilo} at {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>Mezcla de sales para {kilo} a {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Temperature</source>
        <extracomment>_bucket, CorrectForm._water, ExchangeForm._new_water</extracomment>
        <translation>Temperatura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>found {measured}, wanted {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>hallado {measured}, deseado {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Mezcla de sales por añadir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Or sodium chloride</source>
        <extracomment>_bucket</extracomment>
        <translation>O cloruro de sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>within 1 of what is wanted, since it shifts the balance</source>
        <extracomment>_bucket</extracomment>
        <translation>dentro de 1 de lo deseado, pues desplaza el equilibrio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fresh water still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Agua dulce por añadir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Salinity</source>
        <extracomment>_bucket, CorrectForm._water, salinity</extracomment>
        <translation>Salinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as wanted</source>
        <extracomment>_bucket</extracomment>
        <translation>como se desea</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; bring the bucket to it</source>
        <extracomment>_warm</extracomment>
        <translation>como tiene el acuario; lleve el cubo a ella</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; the new water has {new_temperature}</source>
        <extracomment>_warm</extracomment>
        <translation>como tiene el acuario; el agua nueva tiene {new_temperature}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{name} ({read_at}, {stale_days} at most)</source>
        <extracomment>old_readings</extracomment>
        <translation>{name} ({read_at}, {stale_days} como máximo)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Readings too old to go by: {old}. Test again.</source>
        <extracomment>old_readings</extracomment>
        <translation>Lecturas demasiado antiguas para fiarse: {old}. Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Nobody said when this was measured: {undated}. Test again, or say when.</source>
        <extracomment>old_readings</extracomment>
        <translation>Nadie dijo cuándo se midió esto: {undated}. Mida de nuevo, o diga cuándo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Stands on the Correct sheet.</source>
        <translation>Está en la hoja Corrección.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>of the old water are left after {days}</source>
        <extracomment>view</extracomment>
        <translation>del agua vieja queda tras {days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>{out} a day go out, {in_} come in: as much as a batch change of {batch_weekly} every week, or of {batch_whole} once in {days}. By how well the volume is known, {low} to {high} are left.</source>
        <extracomment>view</extracomment>
        <translation>Salen {out} al día, entran {in_}: tanto como un cambio de golpe de {batch_weekly} cada semana, o de {batch_whole} una vez en {days}. Según lo bien que se conoce el volumen, queda de {low} a {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Nobody said how much {assumed} the new water has: natural seawater is assumed. Test it, or read the bag.</source>
        <extracomment>_remarks</extracomment>
        <translation>Nadie dijo cuánto tiene el agua nueva ({assumed}): se supone agua de mar natural. Mídala, o lea la bolsa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Should the jug of new water siphon across, {jug} run in: the system must hold that.</source>
        <extracomment>_remarks</extracomment>
        <translation>Si el bidón de agua nueva pasara por sifón, entrarían {jug}: el sistema debe poder con ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>under {with_unit}</source>
        <extracomment>percent</extracomment>
        <translation>menos de {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{inside} to {inside_2}</source>
        <extracomment>between</extracomment>
        <translation>{inside} a {inside_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Two ways to reckon this exchange differ for {what}, so nothing is said. Please report this question.</source>
        <translation>Dos maneras de calcular este cambio de agua difieren en {what}, así que no se dice nada. Comunique esta pregunta, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>What is fed ({names}) counts as if all of it became nitrate and phosphate: the most it can bring. Growth and skimmer make it less.</source>
        <translation>Lo que se da de comer ({names}) cuenta como si todo se volviera nitrato y fosfato: lo máximo que puede aportar. El crecimiento y el espumador lo reducen.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>without a name</source>
        <translation>sin nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} stands here twice. Leave one of them out.</source>
        <translation>{parameter} está aquí dos veces. Quite una de las dos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} is not among the values looked at. Add it to them, or leave out the dose.</source>
        <translation>{parameter} no está entre los valores que se miran. Añádalo, u omita la dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>This dose comes after the {days} days looked at. Look further, or leave it out.</source>
        <translation>Esta dosis viene después de los {days} días que se miran. Mire más lejos, u omítala.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>More comes in than goes out and evaporates: {per_day} a day, until the tank runs over. Set the pump for new water lower.</source>
        <translation>Entra más de lo que sale y se evapora: {per_day} al día, hasta que el acuario rebose. Ajuste más baja la bomba de agua nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Fresh water needs no salt mix. Write the salinity that the new water should have.</source>
        <translation>El agua dulce no necesita mezcla de sales. Escriba la salinidad que debe tener el agua nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>No old water is taken out, so nothing that gathers leaves the tank.</source>
        <translation>No se saca agua vieja, así que nada de lo que se acumula deja el acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The pumps are not matched: with the level held by top-off, salinity settles at {settles}, new water having {new}. To hold it within 0.5, the new water must be {low} of the old; it is {ratio}. Calibrate both pumps.</source>
        <translation>Las bombas no están igualadas: con el nivel mantenido por el relleno, la salinidad se estabiliza en {settles}, con agua nueva de {new}. Para mantenerla dentro de 0,5, el agua nueva debe ser {low} de la vieja; es {ratio}. Calibre ambas bombas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more come in than go out. Unless as much evaporates, the tank runs over. Measure the evaporation.</source>
        <translation>Entran {per_day} al día más de los que salen. Si no se evapora otro tanto, el acuario rebosa. Mida la evaporación.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more go out than come in. Top-off makes that good with fresh water; without it the level falls.</source>
        <translation>Salen {per_day} al día más de los que entran. El relleno lo compensa con agua dulce; sin él baja el nivel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has a salinity of {new}, the tank {tank}. Common practice: bring it within {most} of the tank before the exchange is started.</source>
        <translation>El agua nueva tiene una salinidad de {new}, el acuario {tank}. Práctica común: llévela a {most} o menos de diferencia con el acuario antes de empezar el cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has {new}, the tank {tank}. Common practice: bring it within {most}, or make sure that the heater keeps up.</source>
        <translation>El agua nueva tiene {new}, el acuario {tank}. Práctica común: llévela a {most} o menos de diferencia con el acuario, o asegúrese de que el calentador lo compensa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours, more than the {most} that no plan may pass. Exchange less, or bring the new water nearer.</source>
        <translation>{parameter} subiría {rise} en 24 horas, más de los {most} que ningún plan puede pasar. Cambie menos, o acerque el agua nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} subiría {rise} en 24 horas; se recomienda {most} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours, more than the {most} that no plan may pass. Exchange less, bring the new water nearer, or dose what is used.</source>
        <translation>{parameter} bajaría {fall} en 24 horas, más de los {most} que ningún plan puede pasar. Cambie menos, acerque el agua nueva, o dosifique lo que se consume.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} bajaría {fall} en 24 horas; se recomienda {most} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has an alkalinity of {new}, the tank {tank}. Common practice: bring it within {most}, or keep the exchange slow and test often.</source>
        <translation>El agua nueva tiene una alcalinidad de {new}, el acuario {tank}. Práctica común: llévela a {most} o menos de diferencia con el acuario, o cambie despacio y mida a menudo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>With this use nothing of {parameter} would be left after {days}. Dose it, or look whether the use is right.</source>
        <translation>Con este consumo no quedaría nada ({parameter}) tras {days}. Dosifíquelo, o vea si el consumo es correcto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} never settles: nothing that gathers leaves the tank.</source>
        <translation>{parameter} no se estabiliza nunca: nada de lo que se acumula deja el acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} settles at {settles}, outside the {low} to {high} usually kept.</source>
        <translation>{parameter} se estabiliza en {settles}, fuera de los {low} a {high} que se suelen mantener.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Nobody said how much {parameter} the new water has: natural seawater is assumed, {value}. Test it.</source>
        <translation>Nadie dijo cuánto tiene el agua nueva ({parameter}): se supone agua de mar natural, {value}. Mídala.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water brings more {parameter} than is used, so that the value rises without any dose.</source>
        <translation>El agua nueva aporta más de lo que se consume ({parameter}): el valor sube sin ninguna dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Test the bucket's salinity when all is dissolved and at the tank's temperature, before it is used.</source>
        <translation>Mida la salinidad del cubo cuando todo esté disuelto y a la temperatura del acuario, antes de usarlo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The bucket is {short} short. Common practice: sodium chloride makes good {most} at most, since it shifts the balance of the salts. Add salt mix instead.</source>
        <translation>Al cubo le faltan {short}. Práctica común: el cloruro de sodio compensa {most} como máximo, pues desplaza el equilibrio de las sales. Añada mejor mezcla de sales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Salt mix is reckoned from the bag's own label only. Weigh it, and let all of it dissolve before testing.</source>
        <translation>La mezcla de sales se calcula solo por la etiqueta de la propia bolsa. Pésela, y deje que todo se disuelva antes de medir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what to raise</source>
        <translation>qué subir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the reading</source>
        <extracomment>_largest_source</extracomment>
        <translation>la lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>when it was measured</source>
        <translation>cuándo se midió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the net volume</source>
        <translation>el volumen neto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how the volume is known</source>
        <translation>cómo se conoce el volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the volume is known</source>
        <translation>lo bien que se conoce el volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity</source>
        <translation>la salinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature</source>
        <translation>la temperatura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pH</source>
        <translation>el pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the alkalinity</source>
        <translation>la alcalinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the partial pressure of carbon dioxide</source>
        <translation>la presión parcial de dióxido de carbono</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale of the pH</source>
        <translation>la escala del pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the calcium</source>
        <translation>el calcio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the evaporation</source>
        <translation>la evaporación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical</source>
        <translation>el producto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the amount</source>
        <translation>la cantidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the system's name</source>
        <translation>el nombre del sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the target</source>
        <translation>el valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the fastest rise</source>
        <translation>la subida más rápida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the use per day</source>
        <extracomment>_largest_source</extracomment>
        <translation>el consumo diario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the reason</source>
        <translation>la razón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved</source>
        <translation>cuánto se disolvió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume</source>
        <translation>el volumen completado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity</source>
        <translation>la pureza</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the second chemical</source>
        <translation>el segundo producto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how much of the second chemical was dissolved</source>
        <translation>cuánto se disolvió del segundo producto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the purity of the second chemical</source>
        <translation>la pureza del segundo producto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the coolest the jug gets</source>
        <translation>lo más frío que llega a estar el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>whether the jug is saturated</source>
        <translation>si el bidón está saturado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what the bottle raises</source>
        <translation>qué sube el frasco</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the dose on the label</source>
        <translation>la dosis de la etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water on the label</source>
        <translation>el agua de la etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise on the label</source>
        <translation>la subida de la etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the stock</source>
        <translation>la temperatura de la solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the stock is to raise</source>
        <translation>qué debe subir la solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the wanted strength</source>
        <translation>la concentración deseada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the wanted dose</source>
        <translation>la dosis deseada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water that the dose goes into</source>
        <translation>el agua a la que va la dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise that the dose makes</source>
        <translation>la subida que hace la dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical of the other stock</source>
        <translation>el producto de la otra solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved in the other stock</source>
        <translation>cuánto se disolvió en la otra solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume of the other stock</source>
        <translation>el volumen completado de la otra solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity of the other chemical</source>
        <translation>la pureza del otro producto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's flow</source>
        <translation>el caudal de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's smallest dose</source>
        <translation>la dosis mínima de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's step</source>
        <translation>el paso de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's largest share of the time</source>
        <translation>la parte máxima del tiempo de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the doses per day</source>
        <translation>las dosis al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the flow that the pump is set to</source>
        <translation>el caudal ajustado en la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the dose in use</source>
        <translation>la dosis en uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours of the pump head</source>
        <translation>las horas de marcha del cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours in a day</source>
        <translation>las horas de marcha en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the hours that a pump head lasts</source>
        <translation>las horas que dura un cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the cylinder's graduation</source>
        <translation>la división de la probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the cylinder's tolerance</source>
        <translation>la tolerancia de la probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the cylinder is made of</source>
        <translation>el material de la probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the scale's last digit</source>
        <translation>la última cifra de la báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale's tolerance</source>
        <translation>la tolerancia de la báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the temperature of the water</source>
        <translation>la temperatura del agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity of the water</source>
        <translation>la salinidad del agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the air</source>
        <translation>la temperatura del aire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the air pressure</source>
        <translation>la presión del aire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the humidity</source>
        <translation>la humedad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the density of the scale's weights</source>
        <translation>la densidad de las pesas de la báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how far the time may be off</source>
        <translation>cuánto puede fallar el tiempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the inside diameter of the line</source>
        <translation>el diámetro interior del tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the length of the line</source>
        <translation>la longitud del tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>how much ran in</source>
        <translation>cuánto entró</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what the jug holds</source>
        <translation>lo que cabe en el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much a centimetre of the jug holds</source>
        <translation>lo que cabe en un centímetro del bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was expected</source>
        <translation>el valor esperado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was measured</source>
        <translation>el valor medido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the time between two amounts</source>
        <translation>el tiempo entre dos cantidades</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the flow is to be known</source>
        <translation>lo bien que debe conocerse el caudal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Action</source>
        <translation>Acción</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Word of the trade</source>
        <translation>Palabra del oficio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>due today, tests, chores, reminders, calendar, round sheet</source>
        <translation>pendiente hoy, pruebas, tareas, recordatorios, calendario, hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise, ramp, plan, dose, dose card, contingency cards, alk, KH</source>
        <translation>subir, rampa, plan, dosis, tarjeta de dosis, tarjetas de contingencia, alca, KH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>daily dose, maintenance, consumption, use per day, two-part, balance</source>
        <translation>dosis diaria, mantener, consumo, consumo diario, dos bidones, equilibrio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>water change, new water, old water, salt mix, continuous exchange, bucket</source>
        <translation>cambio de agua, agua nueva, agua vieja, mezcla de sales, cambio continuo, cubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>feeding, nutrients, amino acids, protein, phosphorus, nitrogen</source>
        <translation>alimentar, tomas, nutrientes, aminoácidos, proteína, fósforo, nitrógeno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>schedule, quiet hours, clock, times of day, minutes, day</source>
        <translation>programa, horas de silencio, reloj, horas del día, minutos, día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>calibration, doser, dosing head, tubing, flow, wear, peristaltic</source>
        <translation>calibración, dosificadora, cabezal, tubo, caudal, desgaste, peristáltica</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>level, refill, container, reservoir, siphon, absence, holiday, days left</source>
        <translation>nivel, rellenar, recipiente, depósito, sifón, ausencia, vacaciones, días restantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>batch, recipe, solution, concentrate, mixing, limewater, kalk, kalkwasser, label, hydroxide</source>
        <translation>preparación, receta, solución, concentrado, mezclar, agua de cal, kalk, kalkwasser, etiqueta, hidróxido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>reading, test, note, history, import, spreadsheet, CSV, entries, chart</source>
        <translation>lectura, prueba, nota, historial, importar, hoja de cálculo, CSV, entradas, gráfico</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high, emergency, accident, ran in, cloudy</source>
        <translation>sobredosis, demasiado alto, emergencia, accidente, entró, turbia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>kalk, kalkwasser, calcium hydroxide</source>
        <translation>kalk, kalkwasser, hidróxido de calcio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>alk, KH, carbonate hardness</source>
        <translation>alca, KH, dureza de carbonatos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>doser, dosing pump, peristaltic</source>
        <translation>dosificadora, bomba dosificadora, peristáltica</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>SG, hydrometer</source>
        <translation>SG, densímetro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>salt, ppt, refractometer</source>
        <translation>sal, ppt, refractómetro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high</source>
        <translation>sobredosis, demasiado alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise slowly, course</source>
        <translation>subir despacio, curso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print round sheet</source>
        <translation>Imprimir hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save round sheet as PDF</source>
        <translation>Guardar hoja de ronda en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at round sheet</source>
        <translation>Ver hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save reminders</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Guardar recordatorios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Start this correction</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Empezar esta corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save card as PDF</source>
        <extracomment>CardActions.__init__, Dialogs.save_pdf</extracomment>
        <translation>Guardar tarjeta en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print card</source>
        <translation>Imprimir tarjeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at card</source>
        <translation>Ver tarjeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards</source>
        <extracomment>ContingencyActions._look</extracomment>
        <translation>Tarjetas de contingencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New jug</source>
        <translation>Bidón nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New pump</source>
        <translation>Bomba nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Add a food</source>
        <translation>Añadir un alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print timetable</source>
        <translation>Imprimir horario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save timetable as PDF</source>
        <translation>Guardar horario en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at timetable</source>
        <translation>Ver horario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New calibration</source>
        <translation>Calibración nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add pump</source>
        <translation>Añadir bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Note this level</source>
        <translation>Anotar este nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Jug refilled</source>
        <translation>Bidón rellenado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Plan an absence</source>
        <translation>Planificar una ausencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New batch</source>
        <translation>Preparación nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print label</source>
        <translation>Imprimir etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Save label as PDF</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>Guardar etiqueta en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at label</source>
        <translation>Ver etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add jug</source>
        <translation>Añadir bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Log it</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import from a spreadsheet</source>
        <extracomment>ImportPage.__init__</extracomment>
        <translation>Importar de una hoja de cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save as spreadsheet</source>
        <extracomment>Dialogs.save_csv</extracomment>
        <translation>Guardar como hoja de cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Print emergency card</source>
        <translation>Imprimir tarjeta de emergencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>The whole jug ran in</source>
        <translation>Se vació todo el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>inside the band</source>
        <translation>dentro de la banda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>above the band</source>
        <translation>por encima de la banda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>below the band</source>
        <translation>por debajo de la banda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Plan {plan_id} is followed since {since}. {said}</source>
        <extracomment>view</extracomment>
        <translation>El plan {plan_id} se sigue desde el {since}. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Its card was valid until {valid_until}. Test {name}, then end it or plan again.</source>
        <extracomment>verdict</extracomment>
        <translation>Su tarjeta valía hasta el {valid_until}. Mida {name}, y termínelo o planifique de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The test of {name} is due now.</source>
        <extracomment>verdict</extracomment>
        <translation>La prueba de {name} está pendiente ahora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>No reading since then. Test {name} by {due}.</source>
        <extracomment>verdict</extracomment>
        <translation>Ninguna lectura desde entonces. Mida {name} antes del {due}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is {place_words} of {last}</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} está {place_words} de {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is above {stop_above}, where the card says stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} está por encima de {stop_above}, donde la tarjeta dice parar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{in_a_row} readings in a row lie above the band, the last {last_value} above {last}.</source>
        <extracomment>verdict</extracomment>
        <translation>{in_a_row} lecturas seguidas están por encima de la banda, la última, {last_value}, por encima de {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Stop dosing {name} now. {why} The animals may use less than before.</source>
        <extracomment>verdict</extracomment>
        <translation>Pare ahora de dosificar {name}. {why} Puede que los animales consuman menos que antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. Test again with a fresh kit before the next doses; a second reading above it means stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. Mida de nuevo con un kit nuevo antes de las próximas dosis; una segunda lectura por encima significa parar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug</source>
        <extracomment>verdict</extracomment>
        <translation>Mire tubo, bomba y bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug now</source>
        <extracomment>verdict</extracomment>
        <translation>Mire ahora tubo, bomba y bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. {more}; the animals may use more than before. Never make up what is missing.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. {more}; puede que los animales consuman más que antes. Nunca compense lo que falta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source> Test {name} now.</source>
        <extracomment>verdict</extracomment>
        <translation> Mida {name} ahora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Two</source>
        <extracomment>_times</extracomment>
        <translation>Dos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Three</source>
        <extracomment>_times</extracomment>
        <translation>Tres</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/progress.py"/>
        <source>Stop</source>
        <extracomment>_answer, ProgressRow.__init__</extracomment>
        <translation>Pare</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>dosing now</source>
        <extracomment>_answer</extracomment>
        <translation>de dosificar ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The ramp is over, and nothing is dosed to keep the value.</source>
        <extracomment>_answer</extracomment>
        <translation>La rampa ha terminado, y no se dosifica nada para mantener el valor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>until </source>
        <extracomment>_answer</extracomment>
        <translation>hasta el </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>to keep it there</source>
        <extracomment>_answer</extracomment>
        <translation>para mantener ahí el valor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>By now {found}, {given}. The water should hold {expected} ({expected_2}).</source>
        <extracomment>_answer</extracomment>
        <translation>Hasta ahora {found}, {given}. El agua debería tener {expected} ({expected_2}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{doses_given} of {count} doses are due</source>
        <extracomment>_doses</extracomment>
        <translation>tocaban {doses_given} de {count} dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>all {count} doses and {doses_given} of the upkeep are due</source>
        <extracomment>_doses</extracomment>
        <translation>tocaban las {count} dosis y {doses_given} del mantenimiento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{retest_value}, expected {retest}</source>
        <extracomment>_line</extracomment>
        <translation>{retest_value}, esperado {retest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if all doses arrived and the use is right; {used} was reckoned with</source>
        <extracomment>_volume</extracomment>
        <translation>si llegaron todas las dosis y el consumo es correcto; se contó con {used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Net volume by this rise</source>
        <extracomment>_volume</extracomment>
        <translation>Volumen neto según esta subida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{said} ({low} to {high})</source>
        <extracomment>_volume</extracomment>
        <translation>{said} ({low} a {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>plan</source>
        <extracomment>chart</extracomment>
        <translation>plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>if uptake stops now</source>
        <extracomment>chart</extracomment>
        <translation>si el consumo para ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if dosing stops now</source>
        <extracomment>chart</extracomment>
        <translation>si la dosificación para ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>target</source>
        <extracomment>chart</extracomment>
        <translation>objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown. It is counted: the ramp starts at {start}. A new test would make it surer.</source>
        <translation>Desde la lectura se dosificaron {untested} que ninguna prueba ha mostrado. Se cuenta: la rampa parte de {start}. Una nueva prueba la haría más segura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown, which may reach {target} already. Test {parameter} again before more is planned.</source>
        <translation>Desde la lectura se dosificaron {untested} que ninguna prueba ha mostrado, con lo que puede haberse llegado ya a {target}. Mida {parameter} de nuevo antes de planificar más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>The net volume is not known, so nobody can say what was raised since the reading. Test {parameter} again before more is planned.</source>
        <translation>El volumen neto no se conoce, así que nadie puede decir qué se subió desde la lectura. Mida {parameter} de nuevo antes de planificar más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>{given} was given already that counts in the same 24 hours, of {hard} at the most. Wait a day, then test again.</source>
        <translation>Ya se dieron {given} que cuentan en las mismas 24 horas, de {hard} como máximo. Espere un día y mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>with food</source>
        <translation>con alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>without</source>
        <translation>sin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>usual, at most</source>
        <translation>usual, como máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>{name} goes from {points} to {end} with these foods, to {end_2} without.</source>
        <extracomment>_panel</extracomment>
        <translation>{name} va de {points} a {end} con estos alimentos, a {end_2} sin ellos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>Unnamed food</source>
        <translation>Alimento sin nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>nitrification of {each}</source>
        <extracomment>_additions</extracomment>
        <translation>nitrificación de {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25.</source>
        <extracomment>messages, date_messages</extracomment>
        <translation>«{text}» no es una fecha. Escríbala como 2026-11-25.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>That day is still to come.</source>
        <extracomment>messages</extracomment>
        <translation>Ese día está por venir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it stood warm</source>
        <extracomment>stop</extracomment>
        <translation>estuvo al calor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it keeps no longer</source>
        <extracomment>stop</extracomment>
        <translation>no se conserva más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The last day of {found} was {last_day}: {why}. Stop its pump, throw it away, rinse jug and line, and open a new one.</source>
        <extracomment>stop</extracomment>
        <translation>El último día de {found} fue el {last_day}: {why}. Pare su bomba, tírelo, enjuague bidón y tubo, y abra uno nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>A feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Una toma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{times} in a day</source>
        <extracomment>_lines</extracomment>
        <translation>{times} en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened {opened}, keeps {keeps_days}{in_}</source>
        <extracomment>_lines</extracomment>
        <translation>abierto el {opened}, se conserva {keeps_days}{in_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> in the warm</source>
        <extracomment>_lines</extracomment>
        <translation> al calor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> (today)</source>
        <extracomment>_lines</extracomment>
        <translation> (hoy)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> ({left} left)</source>
        <extracomment>_lines</extracomment>
        <translation> (queda {left})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Last day to use it</source>
        <extracomment>_lines</extracomment>
        <translation>Último día de uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts</source>
        <extracomment>_lines</extracomment>
        <translation>El bidón dura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{jug} at {per_day} a day</source>
        <extracomment>_lines</extracomment>
        <translation>{jug} a {per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Empty on</source>
        <extracomment>_lines</extracomment>
        <translation>Vacío el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened full, as much given every day</source>
        <extracomment>_lines</extracomment>
        <translation>abierto lleno, lo mismo cada día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The line holds</source>
        <extracomment>_lines, _line</extracomment>
        <translation>En el tubo caben</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>π ÷ 4 × inside diameter × inside diameter × length</source>
        <extracomment>_lines</extracomment>
        <translation>π ÷ 4 × diámetro interior × diámetro interior × longitud</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Food stands in it</source>
        <extracomment>_lines</extracomment>
        <translation>El alimento queda en él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>what it holds ÷ what is given in a day</source>
        <extracomment>_lines</extracomment>
        <translation>lo que cabe ÷ lo que se da en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{rinses} × what it holds, fresh or salt water</source>
        <extracomment>_lines</extracomment>
        <translation>{rinses} × lo que cabe, agua dulce o salada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush after a feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Enjuague tras una toma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush in a day</source>
        <extracomment>_lines</extracomment>
        <translation>Enjuague en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>of fresh water it is a part of the top-off</source>
        <extracomment>_lines</extracomment>
        <translation>de agua dulce, es parte del relleno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>It is not kept cold: raw food in the warm keeps a day at most (common practice, no source).</source>
        <extracomment>_remarks</extracomment>
        <translation>No se guarda en frío: el alimento crudo al calor se conserva un día como máximo (práctica común, sin fuente).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts {lasts} and keeps {keeps_days}: {thrown} would be thrown away. Open {largest} at a time, or less.</source>
        <extracomment>_remarks</extracomment>
        <translation>El bidón dura {lasts} y se conserva {keeps_days}: se tirarían {thrown}. Abra {largest} cada vez, o menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Without flushing, food stands in the line for {stands_days}. In a warm line it spoils within hours (common practice, no source): flush {flush} after each feeding, or bring the jug nearer.</source>
        <extracomment>_remarks</extracomment>
        <translation>Sin enjuague, el alimento queda {stands_days} en el tubo. En un tubo caliente se estropea en horas (práctica común, sin fuente): enjuague con {flush} tras cada toma, o acerque el bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>day</source>
        <extracomment>_days</extracomment>
        <translation>día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>days</source>
        <extracomment>_days, ExchangeChart._paint_axes</extracomment>
        <translation>días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a week</source>
        <extracomment>_spoken</extracomment>
        <translation>en una semana</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 4 weeks</source>
        <translation>en 4 semanas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 8 weeks</source>
        <translation>en 8 semanas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>settles at</source>
        <translation>se estabiliza en</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>In a day</source>
        <extracomment>table_heads</extracomment>
        <translation>En un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>given</source>
        <extracomment>table_heads</extracomment>
        <translation>se da</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>paused</source>
        <extracomment>row</extracomment>
        <translation>en pausa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no amount yet</source>
        <extracomment>row</extracomment>
        <translation>aún sin cantidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{per_day} a day</source>
        <extracomment>row</extracomment>
        <translation>{per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>STOP: its last day is over</source>
        <extracomment>row</extracomment>
        <translation>PARAR: su último día ha pasado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>use until {last_day}</source>
        <extracomment>row</extracomment>
        <translation>usar hasta el {last_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{each} cannot be read yet, so nothing of it is counted.</source>
        <extracomment>view</extracomment>
        <translation>{each} aún no se puede leer, así que nada de ello cuenta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mL per day</source>
        <extracomment>_answer, a unit beside a figure</extracomment>
        <translation>mL por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Paused: nothing of it is counted.</source>
        <extracomment>_answer</extracomment>
        <translation>En pausa: nada de ello cuenta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>feeding now</source>
        <extracomment>_answer</extracomment>
        <translation>alimentando ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>At most {dose} a day of it beside the other foods, by the rise of {parameter}.</source>
        <extracomment>_answer</extracomment>
        <translation>Como máximo {dose} al día junto a los demás alimentos, por la subida: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in {food_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Rellene: {food_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Exchange</source>
        <extracomment>_elsewhere, UpkeepSheet._placed</extracomment>
        <translation>Cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Correct</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in the net volume.</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Rellene el volumen neto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>On the {where} sheet: {said}</source>
        <extracomment>_elsewhere</extracomment>
        <translation>En la hoja {where}: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{unit} per day</source>
        <extracomment>_figure</extracomment>
        <translation>{unit} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>A day of it brings at most {said}.</source>
        <extracomment>_brings</extracomment>
        <translation>Un día aporta como máximo {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Nothing of it is counted.</source>
        <extracomment>_brings</extracomment>
        <translation>Nada de ello cuenta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{near_value} of {bound}</source>
        <extracomment>_bars</extracomment>
        <translation>{near_value} de {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{name} in a day</source>
        <extracomment>_bars, _working</extracomment>
        <translation>{name} en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{dose} × {carried} in a mL × {per} ÷ {litres}</source>
        <extracomment>_working</extracomment>
        <translation>{dose} × {carried} en un mL × {per} ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>All together</source>
        <extracomment>_rows</extracomment>
        <translation>Todos juntos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>none</source>
        <extracomment>_rise, _salt, TimetableForm.__init__</extracomment>
        <translation>ninguno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>takes {said}</source>
        <extracomment>_rise</extracomment>
        <translation>toma {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>with these foods</source>
        <extracomment>_course</extracomment>
        <translation>con estos alimentos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>without food</source>
        <extracomment>_course</extracomment>
        <translation>sin alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>climbs on</source>
        <extracomment>_points</extracomment>
        <translation>sigue subiendo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no reading</source>
        <extracomment>_points</extracomment>
        <translation>sin lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source> Turning their nitrogen into nitrate alone takes {oxygen} in a day.</source>
        <extracomment>_notes</extracomment>
        <translation> Solo convertir su nitrógeno en nitrato toma {oxygen} en un día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L</source>
        <extracomment>_notes, _pair, _figure</extracomment>
        <translation>mg por L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A liquid food</source>
        <translation>Un alimento líquido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Amino acids</source>
        <translation>Aminoácidos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A trace mix</source>
        <translation>Una mezcla de trazas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What a mL carries</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Lo que lleva un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Percent by mass</source>
        <translation>Porcentaje en masa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>So many mL raise so much water</source>
        <translation>Tantos mL suben tanta agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Yes, kept cold</source>
        <translation>Sí, en frío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>No, it stands in the room</source>
        <translation>No, está en la habitación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Given</source>
        <translation>Se da</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Paused</source>
        <translation>En pausa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the name of the food</source>
        <translation>el nombre del alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the food is</source>
        <translation>qué es el alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how much is given in a day</source>
        <translation>cuánto se da en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the feedings in a day</source>
        <translation>las tomas en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether the food is given</source>
        <translation>si se da el alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how the label says what it carries</source>
        <translation>cómo dice la etiqueta lo que lleva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen in a mL</source>
        <translation>el nitrógeno en un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus in a mL</source>
        <translation>el fósforo en un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the protein</source>
        <translation>la proteína</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen</source>
        <translation>el nitrógeno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus</source>
        <translation>el fósforo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the density</source>
        <translation>la densidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the label says it raises</source>
        <translation>qué dice la etiqueta que sube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the date it was opened</source>
        <translation>la fecha en que se abrió</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how long it keeps</source>
        <translation>cuánto se conserva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether it is kept cold</source>
        <translation>si se guarda en frío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump</source>
        <extracomment>_primed, _flow, field_words</extracomment>
        <translation>la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Raw food: wash your hands before and after, and clean what it touched.</source>
        <translation>Alimento crudo: lávese las manos antes y después, y limpie lo que haya tocado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>In the fridge keep it closed and apart from people's food, labelled with its name and the date it was opened.</source>
        <translation>En la nevera guárdelo cerrado y aparte de la comida de las personas, etiquetado con su nombre y la fecha en que se abrió.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>What smells off or was warm for a day is thrown away.</source>
        <translation>Lo que huele mal o estuvo un día al calor se tira.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Read the bottle's own label first; it wins over this page.</source>
        <translation>Lea primero la etiqueta del frasco; prevalece sobre esta página.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Write the date it was opened on it. Nothing in drink bottles; keep it away from children.</source>
        <translation>Escriba en él la fecha en que se abrió. Nada en botellas de bebida; manténgalo fuera del alcance de los niños.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>As if all of it became nitrate and phosphate: the most it can bring. Skimmer and growth make it less; a test tells.</source>
        <translation>Como si todo se volviera nitrato y fosfato: lo máximo que puede aportar. El espumador y el crecimiento lo reducen; una prueba lo dice.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Food, exchange and export alone are reckoned above: what is dosed besides, and what the animals use, is left out. All plans together follow below.</source>
        <translation>Arriba solo se cuentan alimento, cambio de agua y exportación: lo que se dosifica además, y lo que consumen los animales, queda fuera. Todos los planes juntos siguen abajo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Decay takes oxygen, most at night. Feed less when the water is warm or the surface still, and not while the flow is off.</source>
        <translation>La descomposición toma oxígeno, sobre todo de noche. Alimente menos cuando el agua está caliente o la superficie quieta, y no mientras la corriente esté parada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Nitrogen and phosphorus together are more than the whole food. Look at the label again.</source>
        <translation>Nitrógeno y fósforo juntos son más que todo el alimento. Mire de nuevo la etiqueta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day, more than the {most} that no plan may pass, reckoned for the low end of the net volume. Give at most {share} of it.</source>
        <translation>Todos los alimentos juntos pueden aportar {rise} {parameter} al día, más de los {most} que ningún plan puede pasar, calculado para el extremo bajo del volumen neto. Dé como máximo {share} de ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day; {most} is recommended at most.</source>
        <translation>Todos los alimentos juntos pueden aportar {rise} {parameter} al día; se recomienda {most} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>With these foods {parameter} may settle at {settles}, above the {high} usually kept. Feed less, or take out more.</source>
        <translation>Con estos alimentos {parameter} puede estabilizarse en {settles}, por encima de los {high} que se suelen mantener. Alimente menos, o retire más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>{parameter} never settles: nothing is said to leave the tank, and up to {rise} come in a week. Say on the Exchange sheet what is exchanged, and what skimmer, algae and media take.</source>
        <translation>{parameter} no se estabiliza nunca: no se dice que nada deje el acuario, y llegan hasta {rise} en una semana. Diga en la hoja Cambio de agua lo que se cambia, y lo que toman espumador, algas y medios.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>The label of {name} says nothing of phosphorus, so none is counted. Nearly every food brings some: test phosphate.</source>
        <translation>La etiqueta de {name} no dice nada de fósforo, así que no se cuenta. Casi todo alimento aporta algo: mida el fosfato.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>a food</source>
        <translation>un alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Common practice, no source.</source>
        <translation>Práctica común, sin fuente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Source: {source}.</source>
        <translation>Fuente: {source}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>No system takes from this jug yet, so there is no water it could run into.</source>
        <translation>Ningún sistema toma aún de este bidón, así que no hay agua a la que pudiera entrar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>What is in the jug is not complete, so nobody can say what it would do. Fill in its batch on the Stocks sheet.</source>
        <translation>Lo que hay en el bidón no está completo, así que nadie puede decir qué haría. Rellene su preparación en la hoja Soluciones.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>taken for it, not tested</source>
        <extracomment>_row</extracomment>
        <translation>supuesto, no medido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>as tested</source>
        <extracomment>_row, run_in, _lines</extracomment>
        <translation>según la prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>{name}: from {before} ({said}) to {after}</source>
        <extracomment>_row</extracomment>
        <translation>{name}: de {before} ({said}) a {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, above the {most} that no plan may aim for</source>
        <extracomment>_row</extracomment>
        <translation>, por encima de los {most} que ningún plan puede buscar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>too high already: none of it is safe</source>
        <extracomment>_row</extracomment>
        <translation>ya demasiado alto: nada de ello es seguro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>largest safe jug {safe}, advised {safe_2} or less</source>
        <extracomment>_row</extracomment>
        <translation>mayor bidón seguro {safe}, aconsejado {safe_2} o menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, about {held} of running</source>
        <extracomment>_primed</extracomment>
        <translation>, unos {held} de marcha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>The line of {name} holds {held}{run}.</source>
        <extracomment>_primed</extracomment>
        <translation>En el tubo de {name} caben {held}{run}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source> Not primed, the first {n} doses do not arrive whole.</source>
        <extracomment>for 1:  Not primed, the first dose does not arrive whole.; _primed</extracomment>
        <translation>
            <numerusform> Sin cebar, la primera dosis no llega entera.</numerusform>
            <numerusform> Sin cebar, las primeras {n} dosis no llegan enteras.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Reckoning what is taken from the jugs.</source>
        <translation>Calculando lo que se toma de los bidones.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Nothing is known to be taken from this jug, so its levels say nothing of a pump.</source>
        <translation>No consta que se tome nada de este bidón, así que sus niveles no dicen nada de una bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Say what the jug holds when it is full; then its levels can be compared.</source>
        <translation>Diga lo que cabe en el bidón lleno; entonces se pueden comparar sus niveles.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>One level is noted. Read it again in a few days: two levels tell how the pump delivers.</source>
        <translation>Hay un nivel anotado. Léalo de nuevo en unos días: dos niveles dicen cómo entrega la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>No level is noted yet. Read one now, and one more in a few days: two levels tell how the pump delivers.</source>
        <translation>Aún no hay ningún nivel anotado. Lea uno ahora, y otro en unos días: dos niveles dicen cómo entrega la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>All is well: the pump delivers what it should.</source>
        <translation>Todo está bien: la bomba entrega lo que debe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Far less is in the log than the daily rate takes. What was dosed by hand and not noted looks like a fault of the pump.</source>
        <translation>En el registro hay mucho menos de lo que toma el ritmo diario. Lo dosificado a mano y no anotado parece un fallo de la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>The level fell all the same. If no pump draws from this jug, it runs in by itself: lift the outlet out of the water at once and set the jug below it.</source>
        <extracomment>_fell</extracomment>
        <translation>El nivel bajó de todos modos. Si ninguna bomba toma de este bidón, se vacía por sí solo: saque enseguida la salida del agua y ponga el bidón más bajo que ella.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>it may run in by itself</source>
        <extracomment>summary</extracomment>
        <translation>puede vaciarse por sí solo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} {way} (give or take {half})</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} {way} (más o menos {half})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{real} left the jug from {since} to {until} (give or take {half}); {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>Salieron del bidón {real} del {since} al {until} (más o menos {half}); se esperaban {expected}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>That is {off}: {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>Eso es {off}: {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>To tell {percent}, read levels between which {clear_from} or more are dosed.</source>
        <extracomment>_checked</extracomment>
        <translation>Para notar {percent}, lea niveles entre los que se dosifiquen {clear_from} o más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Likely: {causes}.</source>
        <extracomment>_checked</extracomment>
        <translation>Probable: {causes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Possible{too}: {others}.</source>
        <extracomment>_checked</extracomment>
        <translation>Posible{too}: {others}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} too {much} delivered</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} entregado de {much}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>much</source>
        <extracomment>_checked</extracomment>
        <translation>más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>little</source>
        <extracomment>_checked</extracomment>
        <translation>menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{name} is set by a flow of {entered_number}. By these levels it gives {new} ({low} to {high}). Calibrate it first; use this only if the calibration says the same.</source>
        <extracomment>_flow</extracomment>
        <translation>{name} está ajustada con un caudal de {entered_number}. Según estos niveles da {new} ({low} a {high}). Calíbrela antes; use esto solo si la calibración dice lo mismo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what lies below the intake</source>
        <translation>lo que queda bajo la toma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how well a level is read</source>
        <translation>lo bien que se lee un nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how the jug stands</source>
        <translation>cómo está colocado el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>whether the line is primed</source>
        <translation>si el tubo está cebado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>the date of return</source>
        <translation>la fecha de regreso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison&#xa0;centre:</source>
        <translation>En los ojos: enjuague al menos 15 minutos y busque atención médica. Centro de&#xa0;toxicología:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Keep away from children. Not for drinking.</source>
        <translation>Mantener fuera del alcance de los niños. No beber.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>carbonate</source>
        <translation>carbonato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>bicarbonate</source>
        <translation>bicarbonato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>other alkalinity</source>
        <translation>otra alcalinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dissolved inorganic carbon</source>
        <translation>carbono inorgánico disuelto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dry salt</source>
        <translation>sal seca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Never mix with any {named} concentrate.</source>
        <extracomment>label</extracomment>
        <translation>Nunca mezclar con un concentrado de {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>and </source>
        <extracomment>_contents</extracomment>
        <translation>y </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength by its label: {dose} raise {water} by {rise}.</source>
        <extracomment>_strength</extracomment>
        <translation>Concentración según su etiqueta: {dose} suben {water} en {rise}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Saturated limewater, dose the clear water only. Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Agua de cal saturada, dosifique solo el agua clara. Concentración: {batch}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Concentración: {batch}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{amount} of {item}{counted_as}</source>
        <extracomment>_does</extracomment>
        <translation>{amount} de {item}{counted_as}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{dose} carries {carried}.</source>
        <extracomment>_does</extracomment>
        <translation>{dose} lleva {carried}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{parameter} by {amount}</source>
        <extracomment>_does</extracomment>
        <translation>{parameter} en {amount}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{dose} in {water} raises {rises}.</source>
        <extracomment>_does</extracomment>
        <translation>{dose} en {water} sube {rises}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{first} or {last}</source>
        <extracomment>_any_of, listed</extracomment>
        <translation>{first} o {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Filled</source>
        <extracomment>_entries</extracomment>
        <translation>Llenado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Mixed</source>
        <extracomment>_entries</extracomment>
        <translation>Preparado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} on</source>
        <extracomment>_entries</extracomment>
        <translation>{done} el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} by</source>
        <extracomment>_entries</extracomment>
        <translation>{done} por</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Not colder than</source>
        <extracomment>_entries</extracomment>
        <translation>No más frío que</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/card/label_parts.py"/>
        <location filename="../glossary.toml"/>
        <source>Batch</source>
        <extracomment>_entries, batch</extracomment>
        <translation>Preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>Read the level first, at eye height.</source>
        <extracomment>take</extracomment>
        <translation>Lea primero el nivel, a la altura de los ojos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>A refill leaves more in the jug than before.</source>
        <extracomment>take</extracomment>
        <translation>Un rellenado deja en el bidón más que antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Largest jug that leaves every value in its hard range: {safe}. Advised: {advised} or less.</source>
        <extracomment>_lines</extracomment>
        <translation>Mayor bidón que deja cada valor en sus límites estrictos: {safe}. Aconsejado: {advised} o menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>In the jug now: about {level}. The pumps take {per_day} a day.</source>
        <extracomment>_lasts</extracomment>
        <translation>En el bidón ahora: unos {level}. Las bombas toman {per_day} al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>At that it lasts more than ten years.</source>
        <extracomment>_lasts</extracomment>
        <translation>A ese ritmo dura más de diez años.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>It lasts {days_left}, until {last_full}. Refill it before {refill_before}.</source>
        <extracomment>_lasts</extracomment>
        <translation>Dura {days_left}, hasta el {last_full}. Rellénelo antes del {refill_before}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>By {earliest} if the level was read high and the pumps deliver as much more as their calibration leaves open.</source>
        <extracomment>_lasts</extracomment>
        <translation>Ya el {earliest} si el nivel se leyó alto y las bombas entregan cuanto más permite su calibración.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>the first {n} doses do</source>
        <extracomment>for 1: the first dose does; _lasts</extracomment>
        <translation>
            <numerusform>la primera dosis no llega</numerusform>
            <numerusform>las primeras {n} dosis no llegan</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The line holds {volume}: prime it after a refill, or {which} not arrive whole.</source>
        <extracomment>_lasts</extracomment>
        <translation>En el tubo caben {volume}: cébelo tras rellenar, o {which} por completo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>assumed, not tested</source>
        <extracomment>run_in</extracomment>
        <translation>supuesto, no medido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If the whole jug ran in, {name} would go from {before} ({said}) to {after}.</source>
        <extracomment>run_in</extracomment>
        <translation>Si todo el bidón se vaciara, {name} pasaría de {before} ({said}) a {after}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Jug check from {since} to {until}: {real} left the jug (give or take {real_half}), {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>Control del bidón del {since} al {until}: salieron {real} (más o menos {real_half}), se esperaban {expected}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>That is {bias} {way} (give or take {half}): {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>Eso es {bias} {way} (más o menos {half}): {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source> Possible: {possible}.</source>
        <extracomment>_checked</extracomment>
        <translation> Posible: {possible}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If a calibration says the same, multiply the pump's flow by {f_value} ({low} to {high}). Nothing is changed by itself.</source>
        <extracomment>_checked</extracomment>
        <translation>Si una calibración dice lo mismo, multiplique el caudal de la bomba por {f_value} ({low} a {high}). Nada se cambia por sí solo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The flow would then be {flow}.</source>
        <extracomment>_checked</extracomment>
        <translation>El caudal sería entonces {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Away until {until}:</source>
        <extracomment>_away</extracomment>
        <translation>Ausente hasta el {until}:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Left as it is, the jug misses doses from {left_alone_until} on.</source>
        <extracomment>_away</extracomment>
        <translation>Si se deja como está, al bidón le faltan dosis desde el {left_alone_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then. Add {add} before you leave.</source>
        <extracomment>_away</extracomment>
        <translation>Hacen falta {needed} hasta entonces. Añada {add} antes de irse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then, and there is enough.</source>
        <extracomment>_away</extracomment>
        <translation>Hacen falta {needed} hasta entonces, y hay bastante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Even full it lasts only until {lasts_until}: ask somebody to refill it.</source>
        <extracomment>_away</extracomment>
        <translation>Incluso lleno solo dura hasta el {lasts_until}: pida a alguien que lo rellene.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {after}, more than the {most} no plan may aim for.</source>
        <extracomment>_would_harm</extracomment>
        <translation>Si todo el bidón se vaciara, {parameter} llegaría a {after}, más de los {most} que ningún plan puede buscar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} It is too high already: dose none of it.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} Ya está demasiado alto: no lo dosifique.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} A jug of {safe} or less would not.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} Con un bidón de {safe} o menos, no.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level of the jug once at least. Two levels some days apart tell how its pump delivers.</source>
        <translation>Lea el nivel del bidón al menos una vez. Dos niveles con unos días entre ellos dicen cómo entrega su bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug holds {holds}, and all of that is said to lie below the intake. Correct one of the two.</source>
        <translation>En el bidón caben {holds}, y todo eso estaría bajo la toma. Corrija uno de los dos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A level of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Un nivel de {given} es más de lo que cabe en el bidón, {holds}. Corrija uno de los dos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A refill of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Rellenar a {given} es más de lo que cabe en el bidón, {holds}. Corrija uno de los dos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this level is still to come. Correct it.</source>
        <translation>La hora de este nivel está por venir. Corríjala.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this refill is still to come. Correct it, or leave it out until it is done.</source>
        <translation>La hora de este rellenado está por venir. Corríjala, u omítalo hasta que esté hecho.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The return lies before now. Correct its date.</source>
        <translation>El regreso está antes de ahora. Corrija su fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>One level says nothing of the pump. Read it again in a few days.</source>
        <translation>Un nivel no dice nada de la bomba. Léalo de nuevo en unos días.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>These are {count} levels; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Son {count} niveles; {most} pueden mirarse juntos. Omita los más antiguos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Two levels have the same time, so nothing is said of the pump. Correct one of them.</source>
        <translation>Dos niveles tienen la misma hora, así que no se dice nada de la bomba. Corrija uno de ellos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No dose falls between these levels, so they say nothing of the pump.</source>
        <translation>Ninguna dosis cae entre estos niveles, así que no dicen nada de la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level fell without any dose. Lift the outlet out of the water at once: the jug may run in by itself.</source>
        <translation>El nivel bajó sin ninguna dosis. Saque enseguida la salida del agua: el bidón puede vaciarse por sí solo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>More left the jug than the pump should have taken, so it may run in by itself. Stop at once: lift the outlet out of the water and the jug below it, then test the water before anything is dosed.</source>
        <translation>Salió del bidón más de lo que la bomba debía tomar, así que puede vaciarse por sí solo. Pare enseguida: saque la salida del agua y ponga el bidón más bajo, y mida el agua antes de dosificar nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No single cause explains these levels. Read them again, and note every refill.</source>
        <translation>Ninguna causa sola explica estos niveles. Léalos de nuevo, y anote cada rellenado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{count} pumps draw from this jug. The levels cannot tell which of them is off: look at each.</source>
        <translation>{count} bombas toman de este bidón. Los niveles no pueden decir cuál se desvía: mire cada una.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug was found dry, so only what was in it is expected to have been delivered.</source>
        <translation>El bidón se encontró vacío, así que solo se espera entregado lo que había en él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level rose without a refill noted. Note the refill, or read the level again.</source>
        <translation>El nivel subió sin un rellenado anotado. Anote el rellenado, o lea el nivel de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands above its outlet, so it can run in by itself when the pump head fails. Set it below the outlet.</source>
        <translation>El bidón está más alto que su salida, así que puede vaciarse por sí solo si falla el cabezal de la bomba. Póngalo más bajo que la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends under water, so the tank can run back into the jug, or the jug into the tank. Hang it above the highest water line with an air gap.</source>
        <translation>La salida termina bajo el agua, así que el acuario puede pasar al bidón, o el bidón al acuario. Cuélguela por encima de la línea de agua más alta con un espacio de aire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look whether the outlet ends above the highest water line and the jug stands below the outlet.</source>
        <translation>Vea si la salida termina por encima de la línea de agua más alta y el bidón está más bajo que la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is empty, or too empty for a whole dose. Refill it and prime the line. Go on with the next dose; never make up what was missed.</source>
        <translation>El bidón está vacío, o demasiado vacío para una dosis entera. Rellénelo y cebe el tubo. Siga con la próxima dosis; nunca compense lo que faltó.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is low: it lasts {days}. Mix the next batch.</source>
        <translation>El bidón está bajo: dura {days}. Haga la próxima preparación.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The pumps take {per_day} a day, so a full jug lasts less than two days. Make a stronger stock, as far as it dissolves.</source>
        <translation>Las bombas toman {per_day} al día, así que un bidón lleno dura menos de dos días. Haga una solución más fuerte, hasta donde se disuelva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends above the highest water line, with an air gap.</source>
        <translation>La salida termina por encima de la línea de agua más alta, con un espacio de aire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands below the outlet.</source>
        <translation>El bidón está más bajo que la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, no value would leave its hard range.</source>
        <translation>Si todo el bidón se vaciara, ningún valor dejaría sus límites estrictos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>With the tube lifted out of the pump, nothing runs on.</source>
        <translation>Con el tubo fuera de la bomba, nada sigue saliendo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Alkalinity and calcium have outlets of their own, apart and in strong flow.</source>
        <translation>Alcalinidad y calcio tienen salidas propias, separadas y en corriente fuerte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The line is primed: liquid stands at the outlet.</source>
        <translation>El tubo está cebado: hay líquido en la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>all is well</source>
        <translation>todo está bien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a worn pump head</source>
        <translation>un cabezal de bomba gastado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>air in the line, or a blocked line</source>
        <translation>aire en el tubo, o un tubo obstruido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>crust, or a line that is partly blocked</source>
        <translation>costra, o un tubo obstruido en parte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>the jug runs in by itself (siphon)</source>
        <translation>el bidón se vacía por sí solo (sifón)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a pump that is not calibrated</source>
        <translation>una bomba sin calibrar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a batch of another strength than noted, or another net volume</source>
        <translation>una preparación de otra concentración que la anotada, u otro volumen neto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a level misread, or a refill that was not noted</source>
        <translation>un nivel mal leído, o un rellenado sin anotar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The levels cannot tell the cause.</source>
        <translation>Los niveles no pueden decir la causa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Lift the outlet out of the water and set the jug below it. Nothing may run on.</source>
        <translation>Saque la salida del agua y ponga el bidón más bajo que ella. Nada debe seguir saliendo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level again, at eye height, on level ground.</source>
        <translation>Lea el nivel de nuevo, a la altura de los ojos, sobre suelo plano.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Ask whether somebody refilled the jug, or took something out.</source>
        <translation>Pregunte si alguien rellenó el bidón, o sacó algo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Watch one dose at the outlet: it comes at once, and stops at once.</source>
        <translation>Observe una dosis en la salida: viene enseguida, y para enseguida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look along the line for air and kinks, then prime it.</source>
        <translation>Busque a lo largo del tubo aire y dobleces, y cébelo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look at the outlet for crust, and clean or cut it. Wear goggles.</source>
        <translation>Busque costra en la salida, y límpiela o córtela. Use gafas de protección.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Compare the jug's label with what is noted: chemical, mass, volume, date.</source>
        <translation>Compare la etiqueta del bidón con lo anotado: producto, masa, volumen, fecha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Test the water again with fresh reagent, and check the net volume.</source>
        <translation>Mida el agua de nuevo con reactivo fresco, y compruebe el volumen neto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Calibrate the pump: run it a known time into a cylinder, three times.</source>
        <translation>Calibre la bomba: hágala funcionar un tiempo conocido en una probeta, tres veces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If it still delivers too little, change the head's tubing and calibrate again.</source>
        <translation>Si sigue entregando demasiado poco, cambie el tubo del cabezal y calibre de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>within 5&#xa0;% of what was expected</source>
        <translation>con menos del 5&#xa0;% de diferencia con lo esperado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 5&#xa0;% off</source>
        <translation>se desvía más del 5&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 10&#xa0;% off</source>
        <translation>se desvía más del 10&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>not certain: the levels are too coarse to tell 5&#xa0;%</source>
        <translation>no es seguro: los niveles son demasiado gruesos para notar un 5&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Common practice: no jug holds more than twice what may be dosed in a day.</source>
        <translation>Práctica común: en ningún bidón cabe más del doble de lo que puede dosificarse en un día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Missed doses are never made up: go on with the next one, as large as ever.</source>
        <translation>Las dosis perdidas nunca se compensan: siga con la próxima, tan grande como siempre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>likely</source>
        <extracomment>likely</extracomment>
        <translation>probable</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>possible</source>
        <extracomment>likely</extracomment>
        <translation>posible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>unlikely</source>
        <extracomment>likely</extracomment>
        <translation>poco probable</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is in it yet</source>
        <translation>aún no hay nada en él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>level not known</source>
        <translation>nivel desconocido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{named}, batch {batch_id}</source>
        <extracomment>contents_words</extracomment>
        <translation>{named}, preparación {batch_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose} of {holds}</source>
        <extracomment>row</extracomment>
        <translation>{dose} de {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refill before {out}</source>
        <extracomment>row</extracomment>
        <translation>rellenar antes del {out}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read it once</source>
        <extracomment>level_now</extracomment>
        <translation>léalo una vez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>as {read} {at}</source>
        <extracomment>level_now</extracomment>
        <translation>según {read} {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read</source>
        <extracomment>level_now</extracomment>
        <translation>la lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>filled</source>
        <extracomment>level_now</extracomment>
        <translation>el rellenado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>leído {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since it was read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>calculado desde la lectura {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since its batch of {since}</source>
        <extracomment>level_now</extracomment>
        <translation>calculado desde su preparación del {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>; far less is logged, so read it</source>
        <extracomment>level_now</extracomment>
        <translation>; está anotado mucho menos, así que léalo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoning</source>
        <extracomment>_lasts</extracomment>
        <translation>calculando</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is taken</source>
        <extracomment>_lasts</extracomment>
        <translation>no se toma nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>more than ten years</source>
        <extracomment>_lasts, _long_time</extracomment>
        <translation>más de diez años</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>empty</source>
        <extracomment>_lasts</extracomment>
        <translation>vacío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>may be empty</source>
        <extracomment>_lasts</extracomment>
        <translation>puede estar vacío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>1&#xa0;day</source>
        <extracomment>_whole</extracomment>
        <translation>1&#xa0;día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{days}&#xa0;days</source>
        <extracomment>_whole</extracomment>
        <translation>{days}&#xa0;días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Empty</source>
        <extracomment>_figure, PreviewModel.data</extracomment>
        <translation>Vacío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Empty?</source>
        <extracomment>_figure</extracomment>
        <translation>¿Vacío?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>hours left</source>
        <extracomment>_figure</extracomment>
        <translation>horas restantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>day left</source>
        <extracomment>_figure</extracomment>
        <translation>día restante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>days left</source>
        <extracomment>_figure</extracomment>
        <translation>días restantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nobody knows what is in this jug. Read its level.</source>
        <extracomment>_second</extracomment>
        <translation>Nadie sabe qué hay en este bidón. Lea su nivel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose}{holds} in the jug.</source>
        <extracomment>_second</extracomment>
        <translation>{dose}{holds} en el bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> of {holds}</source>
        <extracomment>_second</extracomment>
        <translation> de {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> Refill it before {out}.</source>
        <extracomment>_second</extracomment>
        <translation> Rellénelo antes del {out}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{each} {per_day} a day</source>
        <extracomment>_third</extracomment>
        <translation>{each} {per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Taken by {takers}.</source>
        <extracomment>_third</extracomment>
        <translation>Toman de él: {takers}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nothing is known to be taken from it.</source>
        <extracomment>_third</extracomment>
        <translation>No consta que se tome nada de él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>By what was dosed the jug is empty by now. Read its level. If it is, refill it and prime the line; go on with the next dose and never make up what was missed.</source>
        <extracomment>_notes</extracomment>
        <translation>Según lo dosificado el bidón ya está vacío. Lea su nivel. Si lo está, rellénelo y cebe el tubo; siga con la próxima dosis y nunca compense lo que faltó.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>The line was not primed after the refill of {at}. Run the pump until liquid stands at the outlet, then say so here. What did not arrive is not made up.</source>
        <extracomment>_notes</extracomment>
        <translation>El tubo no se cebó tras el rellenado del {at}. Haga funcionar la bomba hasta que haya líquido en la salida, y dígalo aquí. Lo que no llegó no se compensa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is past the date it was to be used by. Mix a new one.</source>
        <extracomment>_notes, StocksSheet.recompute</extracomment>
        <translation>Esta preparación ha pasado su fecha de uso. Haga una nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> from {before}</source>
        <extracomment>_level_row</extracomment>
        <translation> desde {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refilled{before} to {said}, line {primed}</source>
        <extracomment>_level_row</extracomment>
        <translation>rellenado{before} hasta {said}, tubo {primed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>primed</source>
        <extracomment>_level_row</extracomment>
        <translation>cebado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>not primed</source>
        <extracomment>_level_row</extracomment>
        <translation>sin cebar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>today {clock}</source>
        <extracomment>_moment, weekday_time</extracomment>
        <translation>hoy {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>Fill in the net volume: without it doses cannot be counted.</source>
        <extracomment>learn</extracomment>
        <translation>Rellene el volumen neto: sin él no pueden contarse las dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>New water is taken to be like natural seawater.</source>
        <extracomment>learn</extracomment>
        <translation>Se supone que el agua nueva es como el agua de mar natural.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>From the log: {use_value} ({ends}), last reading {since_days} ago.</source>
        <extracomment>_offer</extracomment>
        <translation>Según el registro: {use_value} ({ends}), última lectura hace {since_days}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source> to </source>
        <extracomment>_offer</extracomment>
        <translation> a </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A reading</source>
        <translation>Una lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A dose given</source>
        <translation>Una dosis dada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A water exchange</source>
        <translation>Un cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note</source>
        <translation>Una nota</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose the jug. It must hold a batch that can be reckoned.</source>
        <extracomment>take</extracomment>
        <translation>Elija el bidón. Debe tener una preparación con la que se pueda calcular.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose what was measured.</source>
        <extracomment>_reading</extracomment>
        <translation>Elija qué se midió.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>{value} is not a likely reading of {parameter}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_reading</extracomment>
        <translation>{value} no es una lectura probable ({parameter}). Probables son {low} a {high}. Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Write the note.</source>
        <extracomment>_note</extracomment>
        <translation>Escriba la nota.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note has {longest_note} characters at most.</source>
        <extracomment>_note</extracomment>
        <translation>Una nota tiene {longest_note} caracteres como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill this in.</source>
        <extracomment>_number</extracomment>
        <translation>Rellene esto.</translation>
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
        <translation>un bidón que ya no está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../glossary.toml"/>
        <source>Water exchange</source>
        <extracomment>row, water exchange</extracomment>
        <translation>Cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_id.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {parameter}</source>
        <extracomment>_own_name, names_of, _upkeep</extracomment>
        <translation>Bomba para {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose more doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Elija más dosis al día. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose 24 doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Elija 24 dosis al día. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{days} days</source>
        <extracomment>_long_time, _age</extracomment>
        <translation>{days} días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{typed} is not a likely reading of {parameter}</source>
        <extracomment>_implausible</extracomment>
        <translation>{typed} no es una lectura probable ({parameter})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}: did you mean {meant} = {value}?</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}: ¿quería decir {meant} = {value}?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}. Probables son {low} a {high}. Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The reading is dated {measured_at}, which is still to come. Correct the time.</source>
        <translation>La lectura lleva la fecha {measured_at}, que está por venir. Corrija la hora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Reading is {age_days} days old; after {stale_days} days it is too old to correct from. Test again before raising {parameter}.</source>
        <translation>La lectura tiene {age_days} días; tras {stale_days} días es demasiado antigua para corregir. Mida de nuevo antes de subir {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No plan may aim for {target}. Choose a target from {low} to {high}.</source>
        <translation>Ningún plan puede buscar {target}. Elija un valor objetivo de {low} a {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already above {target}. Nothing that is dosed lowers it: stop dosing and wait while the animals use it, or exchange water.</source>
        <translation>{parameter} ya está por encima de {target}. Nada de lo que se dosifica baja este valor: pare de dosificar y espere a que los animales lo consuman, o cambie agua.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already at {target}. Nothing to raise; dose only what is used.</source>
        <translation>{parameter} ya está en {target}. No hay nada que subir; dosifique solo lo que se consume.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The fastest rise must be more than zero.</source>
        <translation>La subida más rápida debe ser mayor que cero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is faster than animals stand. The most that can be planned is {hard}; recommended is {recommended}.</source>
        <translation>{fastest} es más rápido de lo que soportan los animales. Lo máximo que se puede planificar es {hard}; se recomienda {recommended}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is above the recommended {recommended}. Write the reason, or slow it down.</source>
        <translation>{fastest} está por encima de lo recomendado, {recommended}. Escriba la razón, o vaya más despacio.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>With {n} doses a day, each</source>
        <extracomment>for 1: With one dose a day, it</extracomment>
        <translation>
            <numerusform>Con una dosis al día, esta</numerusform>
            <numerusform>Con {n} dosis al día, cada una</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source> would have to raise by more than {jump} only to keep up. Choose more doses a day.</source>
        <translation> tendría que subir más de {jump} solo para mantener el paso. Elija más dosis al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The pump can give {most} in 24 hours; the tank alone uses up {needs}. Use a stronger stock or a faster pump.</source>
        <translation>La bomba puede dar {most} en 24 horas; solo el acuario consume ya {needs}. Use una solución más fuerte o una bomba más rápida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>This additive would raise {other} as well, far beyond its limit. Choose another additive.</source>
        <translation>Este aditivo subiría también {other}, muy por encima de su límite. Elija otro aditivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>To make good the daily use alone, single doses would lift pH by more than {most} in an hour. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Solo para compensar el consumo diario, cada dosis subiría el pH más de {most} en una hora. {per_day}El bicarbonato de sodio no lo sube de inmediato.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>pH is {now} now and would come to {ph} at the target; this additive must not take it above {most}. </source>
        <translation>El pH está ahora en {now} y llegaría a {ph} en el valor objetivo; este aditivo no debe llevarlo por encima de {most}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{per_day}Use sodium bicarbonate.</source>
        <translation>{per_day}Use bicarbonato de sodio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Use sodium bicarbonate, choose a nearer target, or dose at night and test pH then.</source>
        <translation>Use bicarbonato de sodio, elija un valor objetivo más cercano, o dosifique de noche y mida entonces el pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} at the target. Above {most} calcium carbonate falls out. </source>
        <translation>La saturación de aragonito está ahora en {now} y llegaría a {saturation} en el valor objetivo. Por encima de {most} precipita carbonato de calcio. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Choose a nearer target.</source>
        <translation>Elija un valor objetivo más cercano.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The tank uses up {needs} of this in 24 hours, but only {most} evaporate. Limewater alone cannot keep up: use a stronger additive besides.</source>
        <translation>El acuario consume {needs} de esto en 24 horas, pero solo se evaporan {most}. El agua de cal sola no basta: use además un aditivo más fuerte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not known how much evaporates. Top-off must leave room for {in_day} in 24 hours, or the tank overflows and its salinity falls.</source>
        <translation>No se sabe cuánto se evapora. El relleno debe dejar sitio para {in_day} en 24 horas, o el acuario rebosa y su salinidad baja.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>At this pace the correction takes {days}. Plans end after {most} days: choose a faster rise, a stronger stock or a nearer target.</source>
        <translation>A este ritmo la corrección tarda {days}. Los planes terminan tras {most} días: elija una subida más rápida, una solución más fuerte o un valor objetivo más cercano.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>A dose of {single} rounded down to steps of {step} does not raise the value. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Una dosis de {single} redondeada hacia abajo a pasos de {step} no sube el valor. Elija menos dosis al día, un paso más fino o una solución más débil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The second reckoning does not agree with the plan, so no plan is given. Please keep this question and report it.</source>
        <translation>El segundo cálculo no coincide con el plan, así que no se da ningún plan. Guarde esta pregunta y comuníquela, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Faster than the recommended {recommended}. Reason given: {reason}.</source>
        <translation>Más rápido que lo recomendado, {recommended}. Razón dada: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not said when this was measured. Test again if it is older than {stale_days} days.</source>
        <translation>No se dice cuándo se midió esto. Mida de nuevo si tiene más de {stale_days} días.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The volume is not known, so its low end is used: {volume}.</source>
        <translation>El volumen no se conoce, así que se usa su extremo bajo: {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>For mg per kg a salinity of {salinity} and {degc} are assumed where not given.</source>
        <translation>Para mg por kg se suponen una salinidad de {salinity} y {degc} donde no se dan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The target is above the range usually kept, which ends at {top}.</source>
        <translation>El valor objetivo está por encima de lo que se suele mantener, que termina en {top}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>One jug of {jug} is not enough: the correction takes {total}. Mix the next batch at the same strength.</source>
        <translation>Un bidón de {jug} no basta: la corrección toma {total}. Haga la próxima preparación con la misma concentración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Also raises {other} by {per_day}.</source>
        <translation>Sube también {other} en {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Rounding the dose down to steps of {step} makes the correction {slower} times as long. Use fewer doses a day or a finer step.</source>
        <translation>Redondear la dosis hacia abajo a pasos de {step} hace la corrección {slower} veces más larga. Use menos dosis al día o un paso más fino.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No pump gives {dose} at a time. Make a weaker stock, or choose fewer doses a day.</source>
        <translation>Ninguna bomba da {dose} de una vez. Haga una solución más débil, o elija menos dosis al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The upkeep of {per_day} in 24 hours is too small for this pump in so many doses, so none is given. </source>
        <translation>El mantenimiento de {per_day} en 24 horas es demasiado pequeño para esta bomba en tantas dosis, así que no se da ninguno. </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Give it afterwards in {n} doses a day or fewer.</source>
        <extracomment>for 1: Make a weaker stock for it.</extracomment>
        <translation>
            <numerusform>Haga para él una solución más débil.</numerusform>
            <numerusform>Delo después en {n} dosis al día o menos.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No use per day is entered, so after the correction nothing is dosed. {parameter} falls by whatever the animals use.</source>
        <translation>No se ha indicado consumo diario, así que tras la corrección no se dosifica nada. {parameter} baja lo que consuman los animales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {value}, more than the {most} no plan may aim for. Use a smaller jug, or fill it less.</source>
        <translation>Si todo el bidón se vaciara, {parameter} llegaría a {value}, más de los {most} que ningún plan puede buscar. Use un bidón más pequeño, o llénelo menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Each dose would be {single}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Cada dosis sería de {single}, por debajo de la dosis mínima exacta de la bomba, {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose {most_doses} doses a day or fewer, or a weaker stock.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>{head} Elija {most_doses} dosis al día o menos, o una solución más débil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Use a weaker stock or a finer pump.</source>
        <extracomment>_below_smallest, _smallest</extracomment>
        <translation>{head} Use una solución más débil o una bomba más fina.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_cards.py"/>
        <source>It was made for {before}.</source>
        <extracomment>other_flow</extracomment>
        <translation>Se hizo para {before}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {hours} {flow}</source>
        <extracomment>_spoken</extracomment>
        <translation>a {hours} {flow}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>{n} calibrations</source>
        <extracomment>for 1: 1 calibration; _spoken</extracomment>
        <translation>
            <numerusform>1 calibración</numerusform>
            <numerusform>{n} calibraciones</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Expected today</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Esperado hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{limit} off</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Desvío de {limit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>, does not count</source>
        <extracomment>point_words</extracomment>
        <translation>, no cuenta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {at}: {flow}, from {low} to {high}{does_not}</source>
        <extracomment>point_words</extracomment>
        <translation>a {at}: {flow}, de {low} a {high}{does_not}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>already</source>
        <extracomment>until</extracomment>
        <translation>ya</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>in {hours}</source>
        <extracomment>until</extracomment>
        <translation>dentro de {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>about {hours}, at {per_day} a day</source>
        <extracomment>hours_hint</extracomment>
        <translation>unas {hours}, a {per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it gives about {expected}, {off} {more_or_less} than it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>Según sus horas da unos {expected}, {off} {more_or_less} de lo ajustado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Do not dose on with the flow it is set to: calibrate it</source>
        <extracomment>_expected</extracomment>
        <translation>No siga dosificando con el caudal ajustado: calíbrela</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Calibrate it</source>
        <extracomment>_expected, _old</extracomment>
        <translation>Calíbrela</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours it is no longer near the flow it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>Según sus horas de marcha ya no está cerca del caudal ajustado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it will be {limit} off on {at}.</source>
        <extracomment>_expected</extracomment>
        <translation>Según sus horas se desviará {limit} el {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours its flow will be off.</source>
        <extracomment>_expected</extracomment>
        <translation>Según sus horas de marcha su caudal se desviará.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its calibration of {on} is {span} old.</source>
        <extracomment>_old</extracomment>
        <translation>Su calibración del {on} tiene {span}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its last calibration was on {on}.</source>
        <extracomment>_old</extracomment>
        <translation>Su última calibración fue el {on}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>about </source>
        <extracomment>_worn, _drift, _head</extracomment>
        <translation>unas </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>It has run {amount}{hours} of the {life} that one lasts.</source>
        <extracomment>_worn</extracomment>
        <translation>Ha funcionado {amount}{hours} de las {life} que dura uno.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>The head is near the end of its running hours.</source>
        <extracomment>_worn</extracomment>
        <translation>El cabezal está cerca del final de sus horas de marcha.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Change the head, then calibrate it</source>
        <extracomment>_worn</extracomment>
        <translation>Cambie el cabezal, y calíbrela</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Have a new head ready</source>
        <extracomment>_worn</extracomment>
        <translation>Tenga listo un cabezal nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source> in {place}</source>
        <extracomment>sharing</extracomment>
        <translation> en {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source>{pump} is chosen for {where}. One head draws from one jug into one water: choose another pump, or another head, for one of them.</source>
        <extracomment>sharing</extracomment>
        <translation>{pump} está elegida para {where}. Un cabezal toma de un solo bidón para una sola agua: elija otra bomba, u otro cabezal, para uno de ellos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>Fill in {pump_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Rellene: {pump_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>at {hours}</source>
        <extracomment>row</extracomment>
        <translation>a {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>no time yet</source>
        <extracomment>row</extracomment>
        <translation>aún sin hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>not complete</source>
        <extracomment>row, batch_row</extracomment>
        <translation>incompleta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>good</source>
        <extracomment>row</extracomment>
        <translation>buena</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>repeat</source>
        <extracomment>row</extracomment>
        <translation>repetir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>flow used</source>
        <extracomment>row</extracomment>
        <translation>caudal usado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scatter of the runs</source>
        <translation>dispersión de las mediciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>tolerance of the instrument</source>
        <translation>tolerancia del instrumento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>timing</source>
        <translation>cronometraje</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>temperature and air</source>
        <translation>temperatura y aire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>good enough to dose by</source>
        <extracomment>answer</extracomment>
        <translation>suficiente para dosificar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>repeat the calibration</source>
        <extracomment>answer</extracomment>
        <translation>repita la calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Within {half}: from {mean} to {mean_2}. {result}.</source>
        <extracomment>answer</extracomment>
        <translation>Más o menos {half}: de {mean} a {mean_2}. {result}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{doses} doses of {seconds}</source>
        <extracomment>_runs</extracomment>
        <translation>{doses} dosis de {seconds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} of {of}</source>
        <extracomment>_runs</extracomment>
        <translation>{count} de {of}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Scatter of the runs</source>
        <extracomment>_bars</extracomment>
        <translation>Dispersión de las mediciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Off the flow in use</source>
        <extracomment>_bars</extracomment>
        <translation>Desvío del caudal en uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{hours} of {life}</source>
        <extracomment>_bars</extracomment>
        <translation>{hours} de {life}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Head</source>
        <extracomment>_bars</extracomment>
        <translation>Cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{value} of {most}</source>
        <extracomment>_bar</extracomment>
        <translation>{value} de {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>, not counted</source>
        <extracomment>_working</extracomment>
        <translation>, no contada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Run {number}</source>
        <extracomment>_working</extracomment>
        <translation>Medición {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{read}{by} in {total_seconds}{counted}</source>
        <extracomment>_working</extracomment>
        <translation>{read}{by} en {total_seconds}{counted}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>How well it is known</source>
        <extracomment>_working</extracomment>
        <translation>Lo bien que se conoce</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>share of {sources}</source>
        <extracomment>_working</extracomment>
        <translation>parte de {sources}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>To know it to {wanted}</source>
        <extracomment>_run</extracomment>
        <translation>Para conocerlo con {wanted}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>each run, with this {found}, three times</source>
        <extracomment>_run</extracomment>
        <translation>cada medición, con este instrumento ({found}), tres veces</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>with this {found}</source>
        <extracomment>_run</extracomment>
        <translation>con este instrumento ({found})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>take a finer one</source>
        <extracomment>_run</extracomment>
        <translation>tome algo más fino</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source> in {dose}</source>
        <extracomment>_doses</extracomment>
        <translation> en {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>A dose in use</source>
        <extracomment>_doses</extracomment>
        <translation>Una dosis en uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>At the smallest dose</source>
        <extracomment>_doses</extracomment>
        <translation>Con la dosis mínima</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>let the pump give so many into one reading</source>
        <extracomment>_doses</extracomment>
        <translation>deje que la bomba dé tantas para una sola lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} doses</source>
        <extracomment>_doses</extracomment>
        <translation>{count} dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>after a refill run it so long, and see the liquid at its end</source>
        <extracomment>_line</extracomment>
        <translation>tras rellenar, hágala funcionar este tiempo, y vea el líquido en el extremo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift</source>
        <extracomment>_drift</extracomment>
        <translation>Deriva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at {amount}{hours}</source>
        <extracomment>_drift</extracomment>
        <translation>a {amount}{hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift in {per_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>Deriva en {per_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>give or take {drift_half_width}</source>
        <extracomment>_drift</extracomment>
        <translation>más o menos {drift_half_width}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at the earliest {earliest_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>como pronto {earliest_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{amount}{hours} of {life} run</source>
        <extracomment>_head</extracomment>
        <translation>{amount}{hours} de {life} funcionadas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>used up</source>
        <extracomment>_head, _change, _settles</extracomment>
        <translation>agotado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{left} left</source>
        <extracomment>_head</extracomment>
        <translation>quedan {left}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The head</source>
        <extracomment>_head</extracomment>
        <translation>El cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The outlet ends {height} above the highest water line.</source>
        <extracomment>installation</extracomment>
        <translation>La salida termina {height} por encima de la línea de agua más alta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>A brushed motor slows with age as well: calibrate more often.</source>
        <extracomment>motor</extracomment>
        <translation>Un motor de escobillas también se frena con la edad: calibre más a menudo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into a jar on the scale</source>
        <extracomment>guide</extracomment>
        <translation>en un tarro sobre la báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into the cylinder</source>
        <extracomment>guide</extracomment>
        <translation>en la probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Weigh each</source>
        <extracomment>guide</extracomment>
        <translation>Pese cada una</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Read each at eye height</source>
        <extracomment>guide</extracomment>
        <translation>Lea cada una a la altura de los ojos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run {lasts}</source>
        <extracomment>guide</extracomment>
        <translation>Déjela funcionar {lasts}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run the same time</source>
        <extracomment>guide</extracomment>
        <translation>Déjela funcionar el mismo tiempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Prime the line. {run} {into}, three times. {read}.</source>
        <extracomment>guide</extracomment>
        <translation>Cebe el tubo. {run} {into}, tres veces. {read}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>In {lasts} about {dose} come out, enough to know the flow to {wanted}.</source>
        <extracomment>proposal</extracomment>
        <translation>En {lasts} salen unos {dose}, bastante para conocer el caudal con {wanted}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Residual-current protection (RCD of 30&#xa0;mA, or GFCI) on every circuit near the tank.</source>
        <translation>Protección diferencial (de 30&#xa0;mA) en cada circuito cerca del acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A drip loop in every cable, nothing electrical where it can be splashed.</source>
        <translation>Un bucle de goteo en cada cable, nada eléctrico donde pueda salpicar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Unplug before reaching in.</source>
        <translation>Desenchufe antes de meter la mano.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Stepper motor</source>
        <translation>Motor paso a paso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Brushed motor</source>
        <translation>Motor de escobillas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A cylinder</source>
        <translation>Una probeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A scale</source>
        <translation>Una báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A stop watch, by hand</source>
        <translation>Un cronómetro, a mano</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>The pump's own clock</source>
        <translation>El reloj de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the motor</source>
        <translation>el motor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the date the head was fitted</source>
        <translation>la fecha en que se puso el cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours of the head</source>
        <translation>las horas de marcha del cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the hours that a head lasts</source>
        <translation>las horas que dura un cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how high the outlet ends</source>
        <translation>a qué altura termina la salida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the tubing is</source>
        <translation>qué tubo es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>when the pump was calibrated</source>
        <translation>cuándo se calibró la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours</source>
        <translation>las horas de marcha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were measured with</source>
        <translation>con qué se midieron las mediciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the doses in a run</source>
        <translation>las dosis de una medición</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were timed with</source>
        <translation>con qué se cronometraron las mediciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>who calibrated the pump</source>
        <translation>quién calibró la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the flow that is used</source>
        <translation>el caudal que se usa</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how long run {run} lasted</source>
        <translation>cuánto duró la medición {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what run {run} gave</source>
        <translation>qué dio la medición {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>if nothing is dosed</source>
        <extracomment>chart</extracomment>
        <translation>si no se dosifica nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>fastest allowed</source>
        <extracomment>chart</extracomment>
        <translation>lo más rápido permitido</translation>
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
        <translation>aragonito {saturation}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Put {grams} of {tall_man} into {litres} of water, stir, and let it settle until it is clear.</source>
        <extracomment>_recipe</extracomment>
        <translation>Eche {grams} de {tall_man} en {litres} de agua, remueva, y deje asentar hasta que esté clara.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve them in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Pese {weighed}. Disuélvalos en parte del agua, y complete a {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve it in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Pese {weighed}. Disuélvalo en parte del agua, y complete a {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>At {at} a litre of solution holds {most} at most.</source>
        <extracomment>_recipe</extracomment>
        <translation>A {at} un litro de solución contiene {most} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source> of {purity}</source>
        <extracomment>_portion</extracomment>
        <translation> de {purity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>{grams} of {tall_man}{purity}</source>
        <extracomment>_portion</extracomment>
        <translation>{grams} de {tall_man}{purity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Carries {per_litre}: {item}.</source>
        <extracomment>_strength</extracomment>
        <translation>Lleva {per_litre}: {item}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>{dose} raises {water} by {amount}: {parameter}.</source>
        <extracomment>_strength</extracomment>
        <translation>{dose} sube {water} en {amount}: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>First, in this order:</source>
        <extracomment>_lines</extracomment>
        <translation>Primero, en este orden:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>reckoned from what ran in</source>
        <extracomment>_lines, _view</extracomment>
        <translation>calculado de lo que entró</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{name}: {now} ({how}), to come to {target}.</source>
        <extracomment>_lines</extracomment>
        <translation>{name}: {now} ({how}), debe llegar a {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Held: {held}.</source>
        <extracomment>_lines</extracomment>
        <translation>Suspendido: {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a new test</source>
        <extracomment>_choice</extracomment>
        <translation>tras una nueva prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {course}.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Tarda {course}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {litres} in {course}. {exchanged}</source>
        <extracomment>choice_lines</extracomment>
        <translation>Lleva {litres} en {course}. {exchanged}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Still above the target then: go on with no more than {slow} an hour, and test every day.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Si entonces sigue por encima del valor objetivo: siga con no más de {slow} por hora, y mida cada día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a day, then every {stale_days}</source>
        <extracomment>tests_line</extracomment>
        <translation>tras un día, luego cada {stale_days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>every day before more water is exchanged</source>
        <extracomment>tests_line</extracomment>
        <translation>cada día antes de cambiar más agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Test now, {often}, and after {days}. Stop as soon as a test shows the target.</source>
        <extracomment>tests_line</extracomment>
        <translation>Mida ahora, {often}, y tras {days}. Pare en cuanto una prueba muestre el valor objetivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{middle}, perhaps {low} to {high}</source>
        <extracomment>now_words</extracomment>
        <translation>{middle}, quizá {low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{days}, perhaps {low} to {high}</source>
        <extracomment>takes</extracomment>
        <translation>{days}, quizá {low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>No more than {most_l_per_day} is exchanged in a day.</source>
        <extracomment>_pace</extracomment>
        <translation>No se cambia más de {most_l_per_day} en un día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>The pace at first is set by {name}, which may change by {hard} at most.</source>
        <extracomment>_pace</extracomment>
        <translation>El ritmo al principio lo marca {name}, que puede cambiar {hard} como máximo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Day {number}: {stage}, to {reached}.</source>
        <extracomment>_stages</extracomment>
        <translation>Día {number}: {stage}, hasta {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>After day {days_shown} test and ask again. At this pace the last day is day {stages}.</source>
        <extracomment>_stages</extracomment>
        <translation>Tras el día {days_shown} mida y pregunte de nuevo. A este ritmo el último día es el día {stages}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source> for {days}</source>
        <extracomment>_stage</extracomment>
        <translation> durante {days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{l_per_day} of water{how_long}, that is {per_hour} an hour</source>
        <extracomment>_stage</extracomment>
        <translation>{l_per_day} de agua{how_long}, es decir {per_hour} por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or one change of {sizes} at once.</source>
        <extracomment>_changes</extracomment>
        <translation>O un solo cambio de {sizes} de golpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or {count} single changes, 12&#xa0;h apart, {litres} in all: {sizes}.</source>
        <extracomment>_changes</extracomment>
        <translation>O {count} cambios sueltos, con 12&#xa0;h entre ellos, {litres} en total: {sizes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{head} Then test and ask again.</source>
        <extracomment>_changes</extracomment>
        <translation>{head} Luego mida y pregunte de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Meanwhile {other} goes from {first} to {last}.</source>
        <extracomment>_along</extracomment>
        <translation>Mientras tanto {other} va de {first} a {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>The last test of {odd} is not likely for a tank, so it is not followed. Test it again.</source>
        <extracomment>_view</extracomment>
        <translation>La última prueba de {odd} no es probable para un acuario, así que no se sigue. Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{name} {now} ({how}), to come to {target}.</source>
        <extracomment>_view</extracomment>
        <translation>{name} {now} ({how}), debe llegar a {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{held} Held: {held_2}.</source>
        <extracomment>_view</extracomment>
        <translation>{held} Suspendido: {held_2}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{canonical} per day</source>
        <extracomment>per_day</extracomment>
        <translation>{canonical} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Still to be filled in: {path}.</source>
        <extracomment>missing</extracomment>
        <translation>Falta rellenar: {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Alkalinity is so high that calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>La alcalinidad es tan alta que es probable que precipite carbonato de calcio y arrastre calcio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Saturation with aragonite is about {saturation}; above {most} calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>La saturación de aragonito es de unos {saturation}; por encima de {most} es probable que precipite carbonato de calcio y arrastre calcio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <extracomment>_likely</extracomment>
        <translation>Ninguna cifra de aquí vale ya: mida alcalinidad, calcio y pH antes que nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A target of {value} lies outside what a plan may aim for: {low} to {high}.</source>
        <translation>Un valor objetivo de {value} está fuera de lo que un plan puede buscar: {low} a {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} at {value} is not above its target of {target}. There is nothing to bring down.</source>
        <translation>{parameter} en {value} no está por encima de su valor objetivo de {target}. No hay nada que bajar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A value of {value} is not likely for the {parameter} of {new}. Likely are {low} to {high}. Look at the unit, or test again.</source>
        <translation>Un valor de {value} no es probable ({parameter}: {new}). Probables son {low} a {high}. Mire la unidad, o mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a tank before anything ran in</source>
        <translation>un acuario antes de que entrara nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {value} of {parameter}, outside the hard limits of {low} to {high}. Use other new water, or put it right first.</source>
        <translation>El agua nueva tiene {value} de {parameter}, fuera de los límites estrictos de {low} a {high}. Use otra agua nueva, o corríjala antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The net volume may be anything from {low} to {high}. Every limit here holds at both ends.</source>
        <translation>El volumen neto puede estar entre {low} y {high}. Cada límite de aquí vale en ambos extremos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The pH is not followed along an exchange. Test it with every other test, and slow down if it moves by more than 0.2 in an hour.</source>
        <translation>El pH no se sigue a lo largo de un cambio de agua. Mídalo con cada otra prueba, y vaya más despacio si se mueve más de 0,2 en una hora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>This stock raises nothing that is reckoned here. Stop the pump, test the water, and ask somebody who knows the chemical.</source>
        <translation>Esta solución no sube nada de lo que se calcula aquí. Pare la bomba, mida el agua, y pregunte a quien conozca el producto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The second reckoning differs ({what}), so nothing is proposed. Please report this question.</source>
        <translation>El segundo cálculo difiere ({what}), así que no se propone nada. Comunique esta pregunta, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>How much {parameter} the animals use in a day is not known, so nobody can say how long it takes them to draw it down.</source>
        <translation>No se sabe cuánto consumen los animales en un día ({parameter}), así que nadie puede decir cuánto tardan en bajarlo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>With its doses held, {parameter} would fall by {use}, more than the {most} it may change.</source>
        <translation>Con sus dosis suspendidas, {parameter} bajaría {use}, más de los {most} que puede cambiar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the {parameter} of the new water first.</source>
        <translation>Mida antes en el agua nueva: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, which is not below the target of {target}. Exchanging cannot bring it there.</source>
        <translation>El agua nueva tiene {new}, que no está por debajo del valor objetivo de {target}. Cambiar agua no puede llevarlo ahí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would fall to {value}, below its hard limit of {bound}.</source>
        <translation>{parameter} bajaría a {value}, por debajo de su límite estricto de {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would rise to {value}, above its hard limit of {bound}.</source>
        <translation>{parameter} subiría a {value}, por encima de su límite estricto de {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>It would take {parameter} more than {days}&#xa0;days to come down.</source>
        <translation>Harían falta más de {days}&#xa0;días para que bajara {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Seen: {and_}. Calcium carbonate is falling out. No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <translation>Visto: {and_}. Está precipitando carbonato de calcio. Ninguna cifra de aquí vale ya: mida alcalinidad, calcio y pH antes que nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>cloudy water</source>
        <translation>agua turbia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a white film</source>
        <translation>una película blanca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Nothing can be proposed that brings {parameter} down. Keep its doses held, test every day, and ask for advice.</source>
        <translation>No se puede proponer nada que baje {parameter}. Mantenga suspendidas sus dosis, mida cada día, y pida consejo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} was found at {value}, less than the {expected} expected from what ran in. Less ran in, or some of it has fallen out already.</source>
        <translation>{parameter} se encontró en {value}, menos de los {expected} esperados de lo que entró. Entró menos, o una parte ya ha precipitado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} is too high as well: {value}, more than the {most} no plan may aim for.</source>
        <translation>Este valor también es demasiado alto ({parameter}): {value}, más de los {most} que ningún plan puede buscar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The last test of {names} is not given; the top of the range usually kept is assumed. Test it.</source>
        <translation>No se da la última prueba ({names}); se supone el tope de lo que se suele mantener. Mídalo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The doses of {names} are held too, but its use is not known: it falls by an unknown amount. Test it as often.</source>
        <translation>También se suspenden las dosis de {names}, pero su consumo no se conoce: baja una cantidad desconocida. Mídalo con la misma frecuencia.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Of {names} the value in the tank or in the new water is not known, so its change is neither reckoned nor limited.</source>
        <translation>No se conoce el valor en el acuario o en el agua nueva ({names}), así que su cambio ni se calcula ni se limita.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Bring the new water to the tank's temperature before it goes in.</source>
        <translation>Lleve el agua nueva a la temperatura del acuario antes de que entre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, the tank {tank}. Bring it to the tank's temperature first.</source>
        <translation>El agua nueva tiene {new}, el acuario {tank}. Llévela antes a la temperatura del acuario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Switch the dosing pump off, and pull its plug with dry hands.</source>
        <translation>Apague la bomba dosificadora, y desenchúfela con las manos secas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Take the line out of the jug and lift its outlet out of the water. Nothing may run on.</source>
        <translation>Saque el tubo del bidón y levante su salida fuera del agua. Nada debe seguir saliendo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it. A second chemical adds a second shock.</source>
        <translation>No dosifique nada en contra. Un segundo producto añade un segundo golpe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid, whatever pH shows.</source>
        <translation>No añada ácido, muestre lo que muestre el pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test alkalinity, calcium, magnesium, pH and salinity now, in water taken far from the outlet. Note the time.</source>
        <translation>Mida ahora alcalinidad, calcio, magnesio, pH y salinidad, en agua tomada lejos de la salida. Anote la hora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call whoever is in charge of the system, and tell what ran in, how much and when.</source>
        <translation>Llame a quien esté a cargo del sistema, y diga qué entró, cuánto y cuándo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off. Pull its plug.</source>
        <translation>Pare la bomba. Desenchúfela.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out of the jug.</source>
        <translation>Tubo fuera del bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it.</source>
        <translation>No dosifique nada en contra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid.</source>
        <translation>No añada ácido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the water now.</source>
        <translation>Mida el agua ahora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off</source>
        <translation>Bomba parada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out</source>
        <translation>Tubo fuera</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No doses</source>
        <translation>Sin dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No acid</source>
        <translation>Sin ácido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test water</source>
        <translation>Medir agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call keeper</source>
        <translation>Llamar al cuidador</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>only after a new test</source>
        <translation>solo tras una nueva prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>not proposed</source>
        <translation>no propuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and wait</source>
        <translation>Suspender las dosis y esperar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Exchange water, not counting on any use</source>
        <translation>Cambiar agua, sin contar con ningún consumo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and exchange water, counting on the use</source>
        <translation>Suspender las dosis y cambiar agua, contando con el consumo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>In every choice the doses of what is too high stay held, and no chemical is given against it.</source>
        <translation>En cada opción las dosis de lo que está demasiado alto siguen suspendidas, y no se da ningún producto en contra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>New water goes in as fast as old water goes out, far from the animals.</source>
        <translation>El agua nueva entra tan rápido como sale la vieja, lejos de los animales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the most that is exchanged in a day</source>
        <translation>lo máximo que se cambia en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether the water is cloudy</source>
        <translation>si el agua está turbia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether there is a white film</source>
        <translation>si hay una película blanca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the way that was chosen</source>
        <translation>el camino elegido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether {name} is held</source>
        <translation>si se suspende: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>This is a reminder, not an order to dose. Missed doses are never made up. Look at the Rounds sheet first: it knows what came since.</source>
        <translation>Esto es un recordatorio, no una orden de dosificar. Las dosis perdidas nunca se compensan. Mire antes la hoja Ronda: sabe lo que ha venido desde entonces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>No reading is in the log yet.</source>
        <extracomment>_tests, _by_reading</extracomment>
        <translation>Aún no hay lecturas en el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>The last reading holds until {at}.</source>
        <extracomment>_tests</extracomment>
        <translation>La última lectura vale hasta el {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} asks for it by {retest_at}.</source>
        <extracomment>_tests</extracomment>
        <translation>El plan {plan_id} la pide antes del {retest_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{systems}: test {name}</source>
        <extracomment>_tests</extracomment>
        <translation>{systems}: medir {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>As far as is known it is empty on {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Por lo que se sabe, se vacía el {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Its batch is to be used by {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Su preparación debe usarse a más tardar el {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{jug}: look at the jug, mix a new batch</source>
        <extracomment>_jugs</extracomment>
        <translation>{jug}: mirar el bidón, hacer una preparación nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Card {plan_id} must not be followed. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>La tarjeta {plan_id} no debe seguirse. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: card {plan_id} is void</source>
        <extracomment>_cards</extracomment>
        <translation>{place}: la tarjeta {plan_id} está anulada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: replace card {plan_id}</source>
        <extracomment>_cards</extracomment>
        <translation>{place}: sustituir la tarjeta {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>It is valid until {valid_until}. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>Es válida hasta el {valid_until}. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: end the plan for {parameter}</source>
        <extracomment>_plans</extracomment>
        <translation>{place}: terminar el plan para {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} ends on {at}.</source>
        <extracomment>_plans</extracomment>
        <translation>El plan {plan_id} termina el {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be written: the file or its folder is read-only.</source>
        <translation>No se puede escribir el registro: el archivo o su carpeta es de solo lectura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is busy in another window or program. It is tried again with the next edit.</source>
        <translation>El registro está ocupado en otra ventana o programa. Se intenta de nuevo con el próximo cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk does not answer. What you type is kept here and saved when it does.</source>
        <translation>El disco no responde. Lo que escribe se conserva aquí y se guarda cuando responda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk is full. What you type is kept here; make room, then go on.</source>
        <translation>El disco está lleno. Lo que escribe se conserva aquí; haga sitio y siga.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log file is damaged. Nothing was changed in it; </source>
        <translation>El archivo del registro está dañado. No se cambió nada en él; </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>its newest backup is {backup}.</source>
        <translation>su copia más reciente es {backup}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>no backup was found beside it.</source>
        <translation>no se encontró ninguna copia a su lado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is no longer at its place, {file}. What you type is kept here; put it back there, then go on.</source>
        <translation>El registro ya no está en su sitio, {file}. Lo que escribe se conserva aquí; vuelva a ponerlo allí y siga.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something in the log is damaged and cannot be read. The rest is used; the list of copies may hold it whole.</source>
        <translation>Algo del registro está dañado y no se puede leer. El resto se usa; la lista de copias puede tenerlo entero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used. What you type is kept here; try again.</source>
        <translation>No se pudo usar el registro. Lo que escribe se conserva aquí; inténtelo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater. Nothing was changed in it.</source>
        <translation>Ese archivo no es un registro de Evenwater. No se cambió nada en él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log was made by a newer Evenwater. Update the program to open it.</source>
        <translation>El registro lo hizo un Evenwater más nuevo. Actualice el programa para abrirlo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be opened at that place.</source>
        <translation>El registro no se puede abrir en ese lugar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be brought up to date. Its backup from before is unchanged.</source>
        <translation>No se pudo poner al día el registro. Su copia de antes está intacta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log already holds something, so it was not filled.</source>
        <translation>El registro ya contiene algo, así que no se llenó.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this in the meantime.</source>
        <translation>Otra ventana lo retiró entretanto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window added this in the meantime.</source>
        <translation>Otra ventana lo añadió entretanto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this entry in the meantime.</source>
        <translation>Otra ventana retiró esta entrada entretanto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This entry is in the log already, and says something else.</source>
        <translation>Esta entrada ya está en el registro, y dice otra cosa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window changed this entry in the meantime. Look at it again.</source>
        <translation>Otra ventana cambió esta entrada entretanto. Mírela de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That plan is not in the log.</source>
        <translation>Ese plan no está en el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card with this plan id exists already.</source>
        <translation>Ya existe una tarjeta con este código de plan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is no longer in its folder.</source>
        <translation>Esa copia ya no está en su carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater.</source>
        <translation>Ese archivo no es un registro de Evenwater.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy was made by a newer Evenwater. Update the program to restore it.</source>
        <translation>Esa copia la hizo un Evenwater más nuevo. Actualice el programa para restaurarla.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is damaged and cannot be restored. Choose another one.</source>
        <translation>Esa copia está dañada y no se puede restaurar. Elija otra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log and its copies lie there already. Choose another folder.</source>
        <translation>El registro y sus copias ya están ahí. Elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>There is no room for the copy. Make room, or choose another folder.</source>
        <translation>No hay sitio para la copia. Haga sitio, o elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The copy could not be written there. Choose another folder.</source>
        <translation>La copia no se pudo escribir ahí. Elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This log is not on a disk, so it has no copies.</source>
        <translation>Este registro no está en un disco, así que no tiene copias.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something that was typed is not saved yet, and would be lost. Let the log be saved first.</source>
        <translation>Algo de lo escrito aún no está guardado, y se perdería. Deje antes que se guarde el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That card is not in the log.</source>
        <translation>Esa tarjeta no está en el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card that is void cannot be in use again. Print a new one.</source>
        <translation>Una tarjeta anulada no puede volver a usarse. Imprima una nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be painted on that device.</source>
        <translation>La tarjeta no se pudo pintar en ese dispositivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A word on the card is wider than this paper. Choose a larger paper.</source>
        <translation>Una palabra de la tarjeta es más ancha que este papel. Elija un papel mayor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be written there. Choose another folder.</source>
        <translation>La tarjeta no se pudo escribir ahí. Elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card's typeface is missing. Install the program again.</source>
        <translation>Falta la letra de la tarjeta. Instale el programa de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The printer put {got} in place of {wanted}. Choose the right paper.</source>
        <translation>La impresora puso {got} en lugar de {wanted}. Elija el papel correcto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>system</source>
        <translation>sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>jug</source>
        <translation>bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>batch</source>
        <translation>preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>pump</source>
        <translation>bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>calibration</source>
        <translation>calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>level</source>
        <translation>nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>date of return</source>
        <translation>fecha de regreso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>exchange</source>
        <translation>cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>recovery</source>
        <translation>recuperación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>logging {kind}</source>
        <translation>anotar: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>change of {kind}</source>
        <extracomment>step_words</extracomment>
        <translation>cambio: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing {kind}</source>
        <translation>retirar: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>import of readings</source>
        <translation>importación de lecturas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>starting the plan for {subject}</source>
        <translation>inicio del plan para {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>ending the plan for {subject}</source>
        <translation>fin del plan para {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a reading</source>
        <translation>una lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a dose</source>
        <translation>una dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a water exchange</source>
        <translation>un cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a note</source>
        <translation>una nota</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a calibration</source>
        <translation>una calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a batch</source>
        <translation>una preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the name</source>
        <translation>el nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug</source>
        <translation>el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what is in the jug</source>
        <translation>lo que hay en el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how the strength is said</source>
        <translation>cómo se dice la concentración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug to match</source>
        <translation>el bidón con el que igualar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>who mixed it</source>
        <translation>quién lo preparó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date to use it by</source>
        <translation>la fecha límite de uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date of mixing</source>
        <translation>la fecha de preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours begin</source>
        <translation>cuándo empiezan las horas de silencio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours end</source>
        <translation>cuándo terminan las horas de silencio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the time that opposing doses stay apart</source>
        <translation>el tiempo entre dosis opuestas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>one pump at a time</source>
        <translation>una bomba a la vez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the doses a day</source>
        <translation>las dosis al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the fewest doses a day</source>
        <translation>las dosis mínimas al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the most doses a day</source>
        <translation>las dosis máximas al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the hour of the first dose</source>
        <translation>la hora de la primera dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used ({code}).</source>
        <extracomment>sentence</extracomment>
        <translation>No se pudo usar el registro ({code}).</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>{n}&#xa0;edits</source>
        <extracomment>for 1: {n}&#xa0;edit; edits_words</extracomment>
        <translation>
            <numerusform>{n}&#xa0;cambio</numerusform>
            <numerusform>{n}&#xa0;cambios</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>adding a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>añadir: {noun}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>retirar: {noun}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Jugs on the shelf</source>
        <translation>Bidones en el estante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Missed doses are never made up: go on with the next one.</source>
        <translation>Las dosis perdidas nunca se compensan: siga con la próxima.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>This sheet holds for the round it was printed for. Doses stand on the cards, not here.</source>
        <translation>Esta hoja vale para la ronda para la que se imprimió. Las dosis están en las tarjetas, no aquí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>Nothing is wrong and nothing is due.</source>
        <extracomment>page, headline</extracomment>
        <translation>Nada está mal y nada está pendiente.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>{n} things to do</source>
        <extracomment>for 1: {n} thing to do; page</extracomment>
        <translation>
            <numerusform>{n} cosa por hacer</numerusform>
            <numerusform>{n} cosas por hacer</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Round sheet</source>
        <extracomment>page</extracomment>
        <translation>Hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Printed {date_words} {clock}</source>
        <extracomment>page</extracomment>
        <translation>Impresa el {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Today</source>
        <extracomment>_line</extracomment>
        <translation>Hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>By {at}</source>
        <extracomment>_line</extracomment>
        <translation>Antes del {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>wrong</source>
        <extracomment>headline</extracomment>
        <translation>mal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due</source>
        <extracomment>headline</extracomment>
        <translation>pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due soon</source>
        <extracomment>headline</extracomment>
        <translation>pronto pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Stop {food} and throw it away</source>
        <extracomment>_last_day</extracomment>
        <translation>Pare {food} y tírelo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away</source>
        <extracomment>_last_day</extracomment>
        <translation>Tire {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day was {day}. Rinse jug and line.</source>
        <extracomment>_last_day</extracomment>
        <translation>Su último día fue el {day}. Enjuague bidón y tubo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away tonight</source>
        <extracomment>_last_day</extracomment>
        <translation>Tire {food} esta noche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>{day} is its last day.</source>
        <extracomment>_last_day</extracomment>
        <translation>{day} es su último día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Get new {food}</source>
        <extracomment>_last_day, _empty</extracomment>
        <translation>Reponga {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day is {day}.</source>
        <extracomment>_last_day</extracomment>
        <translation>Su último día es el {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug is empty on {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Al ritmo diario su bidón se vacía el {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug would be empty since {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Al ritmo diario su bidón estaría vacío desde el {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Look how much {food} is left</source>
        <extracomment>_empty</extracomment>
        <translation>Mire cuánto queda de {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Look how much is left</source>
        <translation>Mire cuánto queda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its batch {was} to be used by {use_by}.</source>
        <extracomment>_old</extracomment>
        <translation>Su preparación {was} utilizable hasta el {use_by}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>was</source>
        <extracomment>_old, cards</extracomment>
        <translation>era</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>is</source>
        <extracomment>_old, cards</extracomment>
        <translation>es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Mix a new batch</source>
        <extracomment>_old, _empty</extracomment>
        <translation>Haga una preparación nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the daily rate it {gone} {at}.</source>
        <extracomment>_empty</extracomment>
        <translation>Al ritmo diario {gone} {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, but far less is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>A {per_day} al día {gone} {at}, pero está anotado mucho menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its level was read on {at}: it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>Su nivel se leyó el {at}: está vacío.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the doses logged it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>Según las dosis anotadas está vacío.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>It {gone} {at}, reckoned from the doses logged.</source>
        <extracomment>_empty</extracomment>
        <translation>Según las dosis anotadas {gone} {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>reckoned from the doses logged until {until}</source>
        <extracomment>_empty</extracomment>
        <translation>calculado de las dosis anotadas hasta el {until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, {logged}.</source>
        <extracomment>_empty</extracomment>
        <translation>A {per_day} al día {gone} {at}, {logged}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source> since {since}</source>
        <extracomment>_empty</extracomment>
        <translation> desde el {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day{since} it {gone} {at}; no dose is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>A {per_day} al día{since} {gone} {at}; no hay ninguna dosis anotada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>would be empty since</source>
        <extracomment>_would</extracomment>
        <translation>estaría vacío desde el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>is empty on</source>
        <extracomment>_would</extracomment>
        <translation>se vacía el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Stop dosing {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Pare de dosificar: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Its plan says to stop.</source>
        <extracomment>plans</extracomment>
        <translation>Su plan dice parar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Look at the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Mire el plan para {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It cannot be reckoned any more.</source>
        <extracomment>plans</extracomment>
        <translation>Ya no se puede calcular.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>The readings leave its band.</source>
        <extracomment>plans</extracomment>
        <translation>Las lecturas dejan su banda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Plan {plan_id} {reached} {ends}.</source>
        <extracomment>plans</extracomment>
        <translation>El plan {plan_id} {reached} {ends}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>reached its end on</source>
        <extracomment>plans</extracomment>
        <translation>llegó a su fin el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>ends on</source>
        <extracomment>plans</extracomment>
        <translation>termina el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>End the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Termine el plan para {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Another card has taken its place.</source>
        <extracomment>cards</extracomment>
        <translation>Otra tarjeta ha ocupado su lugar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Take down card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Descuelgue la tarjeta {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It must not be followed.</source>
        <extracomment>cards</extracomment>
        <translation>No debe seguirse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It {was} valid until {valid_until}.</source>
        <extracomment>cards</extracomment>
        <translation>La tarjeta {was} válida hasta el {valid_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Replace card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Sustituya la tarjeta {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_room.py"/>
        <source>A system that is gone</source>
        <extracomment>place_of</extracomment>
        <translation>Un sistema que ya no está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter} again with a fresh kit</source>
        <extracomment>_duty</extracomment>
        <translation>Mida {parameter} de nuevo con un kit nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter}</source>
        <extracomment>_duty</extracomment>
        <translation>Mida {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is dated {at}, which is still to come. Look at the clock and at the reading.</source>
        <extracomment>_by_reading</extracomment>
        <translation>La última lectura lleva la fecha {at}, que está por venir. Mire el reloj y la lectura.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings all say {typed}.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Las últimas {same} lecturas dicen todas {typed}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings are all alike.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Las últimas {same} lecturas son todas iguales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Plan {plan_id} {asked} for a test by {at}.</source>
        <extracomment>_by_plan</extracomment>
        <translation>El plan {plan_id} {asked} una prueba antes del {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asked</source>
        <extracomment>_by_plan</extracomment>
        <translation>pedía</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asks</source>
        <extracomment>_by_plan</extracomment>
        <translation>pide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>less than a day</source>
        <extracomment>_age</extracomment>
        <translation>menos de un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>1 day</source>
        <extracomment>_age</extracomment>
        <translation>1 día</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{n} days</source>
        <extracomment>for 1: a day; _age</extracomment>
        <translation>
            <numerusform>un día</numerusform>
            <numerusform>{n} días</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is {age} old; it holds {held}.</source>
        <extracomment>_age</extracomment>
        <translation>La última lectura tiene {age}; vale {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer.</source>
        <extracomment>copy_shown</extracomment>
        <translation>El servidor con el registro no responde.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Read from this computer's copy of {when}; the server does not answer. What others logged since is not in it.</source>
        <extracomment>copy_shown</extracomment>
        <translation>Leído de la copia de este ordenador, de {when}; el servidor no responde. Lo que otros anotaron desde entonces no está en ella.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer. Look whether it runs and whether this computer is in its network.</source>
        <extracomment>_away</extracomment>
        <translation>El servidor con el registro no responde. Mire si funciona y si este ordenador está en su red.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not answer, so that was not done. Try again when it does.</source>
        <extracomment>_away</extracomment>
        <translation>El servidor no responde, así que eso no se hizo. Inténtelo de nuevo cuando responda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Kept on this computer, and sent when the server answers. Read from the copy of {when}.</source>
        <extracomment>_waits</extracomment>
        <translation>Guardado en este ordenador, y enviado cuando responda el servidor. Leído de la copia de {when}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>{when} by {who}</source>
        <extracomment>_doubted</extracomment>
        <translation>{when} por {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>A dose that waited for the server was logged beside one that somebody else logged ({which}). If both are the same dose, remove one of them.</source>
        <extracomment>_doubted</extracomment>
        <translation>Una dosis que esperaba al servidor se anotó junto a otra que anotó otra persona ({which}). Si son la misma dosis, retire una de ellas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Somebody logged a dose at this moment. Look at it before you log yours.</source>
        <translation>Alguien anotó una dosis en este momento. Mírela antes de anotar la suya.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server cannot keep a character in it, so it was not saved. Type it again.</source>
        <translation>El servidor no puede guardar un carácter que contiene, así que no se guardó. Escríbalo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>That is no address of a log. It looks like postgresql://keeper@fishroom-server/fishroom</source>
        <translation>Eso no es una dirección de un registro. Tiene esta forma: postgresql://keeper@fishroom-server/fishroom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>An address has no password in it, since it would stay where others can read it. Type it in the field for it, keep it in the system's keyring, or set EVENWATER_LOG_PASSWORD.</source>
        <translation>Una dirección no lleva contraseña, pues quedaría donde otros pueden leerla. Escríbala en su campo, guárdela en el llavero del sistema, o fije EVENWATER_LOG_PASSWORD.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let you in with this name and password. The password is taken from the field, from EVENWATER_LOG_PASSWORD or from the system's keyring.</source>
        <translation>El servidor no le deja entrar con este nombre y contraseña. La contraseña se toma del campo, de EVENWATER_LOG_PASSWORD o del llavero del sistema.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server answers, but has no database of that name.</source>
        <translation>El servidor responde, pero no tiene una base de datos con ese nombre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>What was written is not what was read, so nothing was kept of it. Try again.</source>
        <translation>Lo escrito no es lo que se leyó, así que no se guardó nada de ello. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let this name make or change the log. Ask who looks after it.</source>
        <translation>El servidor no deja que este nombre haga o cambie el registro. Pregunte a quien lo cuida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>This Evenwater was installed without what a log on a server needs. Install it with [facility].</source>
        <translation>Este Evenwater se instaló sin lo que necesita un registro en un servidor. Instálelo con [facility].</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>limewater, saturated {tall_man}</source>
        <extracomment>contents_options</extracomment>
        <translation>agua de cal, {tall_man} saturado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>magnesium CHLORide and SULFate, as in seawater</source>
        <extracomment>contents_options</extracomment>
        <translation>CLORuro y SULFato de magnesio, como en el agua de mar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>A bottle, by its label</source>
        <extracomment>contents_options</extracomment>
        <translation>Un frasco, según su etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>What it was made for cannot be reckoned any more.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Aquello para lo que se hizo ya no se puede calcular.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>It was made for another strength: {before}. {held_by}: {strength_line}.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Se hizo para otra concentración: {before}. {held_by}: {strength_line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>The jug now</source>
        <extracomment>card_outdated, StockRecords.outdated</extracomment>
        <translation>El bidón ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>by its label, {dose} raise {water} by {rise}</source>
        <extracomment>strength_line</extracomment>
        <translation>según su etiqueta, {dose} suben {water} en {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>No hazard statement</source>
        <extracomment>hazards</extracomment>
        <translation>Sin indicación de peligro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In the jug</source>
        <extracomment>batch_row</extracomment>
        <translation>En el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Used before</source>
        <extracomment>batch_row</extracomment>
        <translation>Usada antes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Not in the jug yet</source>
        <extracomment>batch_row</extracomment>
        <translation>Aún no en el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>to be weighed</source>
        <extracomment>batch_row</extracomment>
        <translation>por pesar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>mixed {mixed}</source>
        <extracomment>batch_row</extracomment>
        <translation>preparada el {mixed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>use by {batch}</source>
        <extracomment>batch_row</extracomment>
        <translation>usar hasta el {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Monday</source>
        <translation>lunes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Tuesday</source>
        <translation>martes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Wednesday</source>
        <translation>miércoles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thursday</source>
        <translation>jueves</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Friday</source>
        <translation>viernes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Saturday</source>
        <translation>sábado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sunday</source>
        <translation>domingo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>May</source>
        <translation>may</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sep</source>
        <translation>sep</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Dec</source>
        <translation>dic</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{value} per day</source>
        <extracomment>Shown.per_day</extracomment>
        <translation>{value} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (cubic metres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (metros cúbicos)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (litres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (litros)</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <extracomment>for 1: {n}&#xa0;day; span</extracomment>
        <translation>
            <numerusform>{n}&#xa0;día</numerusform>
            <numerusform>{n}&#xa0;días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <comment>every</comment>
        <extracomment>for 1: a day; days_words</extracomment>
        <translation>
            <numerusform>{n}&#xa0;día</numerusform>
            <numerusform>{n}&#xa0;días</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>once a day</source>
        <extracomment>every</extracomment>
        <translation>una vez al día</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {rest}</source>
        <extracomment>for 1: every minute; every</extracomment>
        <translation>
            <numerusform>cada minuto</numerusform>
            <numerusform>cada {rest}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours} {rest}</source>
        <extracomment>every</extracomment>
        <translation>cada {hours} {rest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours}</source>
        <extracomment>for 1: every hour; every</extracomment>
        <translation>
            <numerusform>cada hora</numerusform>
            <numerusform>cada {hours}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{weekday} {day} {month} {year}</source>
        <extracomment>date_words</extracomment>
        <translation>{weekday} {day} {month} {year}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{day} {month}</source>
        <extracomment>day_words</extracomment>
        <translation>{day} {month}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{weekday} {day} {month}</source>
        <extracomment>day_words</extracomment>
        <translation>{weekday} {day} {month}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>What else it does</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>Qué más hace</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como NO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como PO4</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium is taken to be made good with calcium chloride</source>
        <translation>se supone que el calcio se compensa con cloruro de calcio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity is taken to be made good with a sodium salt</source>
        <translation>se supone que la alcalinidad se compensa con una sal de sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>What comes along</source>
        <extracomment>_correction</extracomment>
        <translation>Lo que viene con ello</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>a label does not say what else is in the bottle</source>
        <extracomment>_correction</extracomment>
        <translation>una etiqueta no dice qué más hay en el frasco</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>not known</source>
        <extracomment>_correction, _line</extracomment>
        <translation>desconocido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>{item} con la corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>carried in by {stock} of stock</source>
        <extracomment>_correction</extracomment>
        <translation>aportado por {stock} de solución</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what is in the water by then ÷ {density}; alkalinity counts as bicarbonate</source>
        <extracomment>_correction</extracomment>
        <translation>lo que hay entonces en el agua ÷ {density}; la alcalinidad cuenta como bicarbonato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity by the last dose</source>
        <extracomment>_correction</extracomment>
        <translation>Salinidad en la última dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>Agua con la corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>comes in place of as much top-off</source>
        <extracomment>_correction, _lines</extracomment>
        <translation>sustituye a otro tanto de relleno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{per_unit} for each {words}</source>
        <extracomment>_pair</extracomment>
        <translation>{per_unit} por cada {words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>skeleton takes one mole of calcium to two equivalents</source>
        <extracomment>_pair</extracomment>
        <translation>el esqueleto toma un mol de calcio por dos equivalentes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium to alkalinity</source>
        <extracomment>_pair</extracomment>
        <translation>Calcio frente a alcalinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{calcium_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{calcium_per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{alkalinity_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{alkalinity_per_day} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Calcio consumido con ella</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Alkalinity used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Alcalinidad consumida con él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, {salt_g} in the whole tank, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>de mantenimiento, {salt_g} en todo el acuario, si no se cambia nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinidad en un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinidad en un año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>de mantenimiento, si no se cambia nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>left as the nutrient is taken up</source>
        <extracomment>_upkeep</extracomment>
        <translation>queda al tomarse el nutriente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>not used up</source>
        <extracomment>_upkeep</extracomment>
        <translation>no consumido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{why}, if nothing is exchanged; {later} in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>{why}, si no se cambia nada; {later} en un año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>{item} en un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Agua en un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, comes in place of as much top-off</source>
        <extracomment>_upkeep</extracomment>
        <translation>de mantenimiento, sustituye a otro tanto de relleno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salt left behind in a month</source>
        <extracomment>_salt</extracomment>
        <translation>Sal que queda en un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>everything that comes is used up</source>
        <extracomment>_salt</extracomment>
        <translation>todo lo que llega se consume</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>every equivalent leaves one mole, {mole}{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>cada equivalente deja un mol, {mole}{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salt_g} of sodium chloride</source>
        <extracomment>_salt</extracomment>
        <translation>{salt_g} de cloruro de sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the mass of what is not used up{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>la masa de lo que no se consume{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Dissolved inorganic carbon</source>
        <extracomment>_way</extracomment>
        <translation>Carbono inorgánico disuelto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Taken for these</source>
        <extracomment>_way</extracomment>
        <translation>Tomado para esto</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>right after the {n} doses of an hour</source>
        <extracomment>for 1: right after a dose; _instants</extracomment>
        <translation>
            <numerusform>justo después de una dosis</numerusform>
            <numerusform>justo después de las {n} dosis de una hora</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>at the target</source>
        <extracomment>_instants</extracomment>
        <translation>en el valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{dose} there</source>
        <extracomment>_instants</extracomment>
        <translation>{dose} allí</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{at_target} at the target</source>
        <extracomment>_instants</extracomment>
        <translation>{at_target} en el valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the air brings the carbon dioxide back between doses</source>
        <extracomment>_taken</extracomment>
        <translation>el aire devuelve el dióxido de carbono entre dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>pH was not measured: {ph_assumed} now and at the target</source>
        <extracomment>_taken</extracomment>
        <translation>no se midió el pH: {ph_assumed} ahora y en el valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>no se dio el calcio: como en el agua de mar natural</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>no se dio la alcalinidad: como en el agua de mar natural</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what a dose of this bottle does at once is not known</source>
        <extracomment>_taken</extracomment>
        <translation>no se sabe qué hace de inmediato una dosis de este frasco</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per L</source>
        <extracomment>_density, _spread_line, a unit beside a figure</extracomment>
        <translation>kg por L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>less than {least_salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>menos de {least_salinity} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>g per kg</source>
        <extracomment>_more, _figure</extracomment>
        <translation>g por kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>{salinity} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I weighed it</source>
        <translation>Lo pesé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I want a strength</source>
        <translation>Quiero una concentración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>To match another jug</source>
        <translation>Igualar a otro bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{chemical} raises nothing that is corrected here. Weigh it instead.</source>
        <extracomment>evaluate</extracomment>
        <translation>{chemical} no sube nada de lo que se corrige aquí. Péselo en su lugar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Choose the jug to match.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Elija el bidón al que igualar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>A bottle known by its label, or a jug with nothing in it, cannot be matched. Choose another jug.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Un frasco conocido por su etiqueta, o un bidón sin nada, no puede servir de modelo. Elija otro bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>of {first}</source>
        <extracomment>_answered</extracomment>
        <translation>de {first}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{grams} of {tall_man}</source>
        <extracomment>_answered</extracomment>
        <translation>{grams} de {tall_man}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{weighed}, filled up to {litres}</source>
        <extracomment>_answered</extracomment>
        <translation>{weighed}, completado a {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source> and {mass}</source>
        <extracomment>_answered</extracomment>
        <translation> y {mass}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>g{also} to weigh out</source>
        <extracomment>_answered</extracomment>
        <translation>g{also} por pesar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>saturated, clear, in a jug of {litres}</source>
        <extracomment>_answered</extracomment>
        <translation>saturado, claro, en un bidón de {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>meq per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>meq por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>g por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>mmol per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>mmol por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>mg por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{dose} raises {water} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>{dose} sube {water} en {shown}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>and {parameter} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>y {parameter} en {shown}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Dissolved, at {at}</source>
        <extracomment>_bars</extracomment>
        <translation>Disuelto, a {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{made} of {most}</source>
        <extracomment>_bars</extracomment>
        <translation>{made} de {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in a litre</source>
        <extracomment>_working</extracomment>
        <translation>en un litro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in seawater {sulfate_per_magnesium}</source>
        <extracomment>_working</extracomment>
        <translation>en agua de mar {sulfate_per_magnesium}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Sulfate to magnesium</source>
        <extracomment>_working</extracomment>
        <translation>Sulfato frente a magnesio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>by moles, {sea}</source>
        <extracomment>_working</extracomment>
        <translation>en moles, {sea}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{made} of {chemical} in a litre cannot dissolve: at {temperature} the most is {most} in a litre. Make the stock weaker.</source>
        <translation>{made} de {chemical} en un litro no se pueden disolver: a {temperature} lo máximo es {most} en un litro. Haga la solución más débil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>The stock is near its limit ({made} of {most} in a litre). Keep it {warm} and look for crystals.</source>
        <translation>La solución está cerca de su límite ({made} de {most} en un litro). Manténgala {warm} y busque cristales.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>warm</source>
        <translation>templada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>cool</source>
        <translation>fresca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is dangerous to people and easy to overdose. Use it only if you are trained for it.</source>
        <translation>{chemical}: peligroso para las personas y fácil de sobredosificar. Úselo solo si está formado para ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} fall out when they are dissolved together. Give each a jug of its own.</source>
        <translation>{first} y {second} precipitan si se disuelven juntos. Dé a cada uno su propio bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is named twice. Add its masses up and name it once.</source>
        <translation>{chemical} se nombra dos veces. Sume sus masas y nómbrelo una vez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} cannot be mixed to the magnesium and sulfate of seawater. Take magnesium chloride and magnesium sulfate.</source>
        <translation>{first} y {second} no se pueden mezclar al magnesio y sulfato del agua de mar. Tome cloruro de magnesio y sulfato de magnesio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>A jug of {chemical} must not be saturated: it crystallises when the room cools. Only limewater is dosed so.</source>
        <translation>Un bidón de {chemical} no debe estar saturado: cristaliza cuando se enfría la habitación. Solo el agua de cal se dosifica así.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Limewater holds {grams_per} in a litre at {degc}, and less when it is warmer. Dose the clear water only, and keep the jug closed: air turns it into chalk.</source>
        <translation>El agua de cal contiene {grams_per} en un litro a {degc}, y menos cuando está más caliente. Dosifique solo el agua clara, y mantenga el bidón cerrado: el aire la vuelve tiza.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} and {partner} are no pair. Of a matched pair one stock carries alkalinity only and the other calcium only.</source>
        <translation>{chemical} y {partner} no son pareja. En un par igualado una solución lleva solo alcalinidad y la otra solo calcio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No seawater of this alkalinity has a pH of {ph}. Test both again, and see on which scale the pH is.</source>
        <translation>Ningún agua de mar con esta alcalinidad tiene un pH de {ph}. Mida ambos de nuevo, y vea en qué escala está el pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Aragonite saturation reaches {saturation}; above {most} calcium carbonate may fall out, and these figures hold no longer. Add less at a time.</source>
        <translation>La saturación de aragonito llega a {saturation}; por encima de {most} puede precipitar carbonato de calcio, y estas cifras ya no valen. Añada menos cada vez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No calcium is given, so {calcium} is assumed, as natural seawater of this salinity has.</source>
        <translation>No se da el calcio, así que se supone {calcium}, como tiene el agua de mar natural de esta salinidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>pH was not measured, so {ph} is assumed all along, and only its rise in an hour is limited. Measure it before a large correction.</source>
        <translation>No se midió el pH, así que se supone {ph} todo el tiempo, y solo se limita su subida en una hora. Mídalo antes de una corrección grande.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At the target pH comes to {ph} once gas exchange has caught up, above the {most} usually kept. More air from outdoors does not lower it; a nearer target does.</source>
        <translation>En el valor objetivo el pH llega a {ph} una vez hecho el intercambio con el aire, por encima de los {most} que se suelen mantener. Más aire de fuera no lo baja; un valor objetivo más cercano, sí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>What is in the bottle is not known. For pH it is reckoned as hydroxide, which lifts it most.</source>
        <translation>No se sabe qué hay en el frasco. Para el pH se cuenta como hidróxido, que es lo que más lo sube.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At a salinity of {salinity} and {degc} not all constants were measured; these figures are less certain.</source>
        <translation>A una salinidad de {salinity} y {degc} no todas las constantes se midieron; estas cifras son menos seguras.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sodium</source>
        <translation>sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>chloride</source>
        <translation>cloruro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sulfate</source>
        <translation>sulfato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>boron</source>
        <translation>boro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>temperature</source>
        <translation>temperatura</translation>
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
        <translation>{first} y {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {widest}</source>
        <extracomment>_beside</extracomment>
        <translation>Tomar {widest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{widest} would do</source>
        <extracomment>_beside</extracomment>
        <translation>{widest} bastaría</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>In the way</source>
        <extracomment>_beside</extracomment>
        <translation>Estorban</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave {open}</source>
        <extracomment>_beside</extracomment>
        <translation>Dejan {open}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave nothing</source>
        <extracomment>_beside</extracomment>
        <translation>No dejan nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {most}</source>
        <extracomment>_beside</extracomment>
        <translation>Tomar {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{most} would do</source>
        <extracomment>_beside</extracomment>
        <translation>{most} bastaría</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never make up missed doses: go on with the next one.</source>
        <translation>Nunca compense dosis perdidas: siga con la próxima.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Test again within the week, and after every change of doses, batch or pump.</source>
        <translation>Mida de nuevo dentro de la semana, y tras cada cambio de dosis, preparación o bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Timetable of all pumps</source>
        <extracomment>page</extracomment>
        <translation>Horario de todas las bombas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Replace this sheet when the code of the timetable changes.</source>
        <extracomment>page</extracomment>
        <translation>Sustituya esta hoja cuando cambie el código del horario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Valid until {until}</source>
        <extracomment>page</extracomment>
        <translation>Válido hasta el {until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never more than {most} of {additive_name} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Nunca más de {most} de {additive_name} en 24 horas, todas las dosis juntas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if {parameter} reads above {stop_above}.</source>
        <extracomment>page</extracomment>
        <translation>Pare y mida de nuevo si {parameter} pasa de {stop_above}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if a value reads higher than it is usually kept.</source>
        <extracomment>page</extracomment>
        <translation>Pare y mida de nuevo si un valor sale más alto de lo que se suele mantener.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Every dose of the day in order of time, {rows} in all</source>
        <extracomment>page</extracomment>
        <translation>Cada dosis del día por orden de hora, {rows} en total</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id}. Its dose card says when they end; here is at which minute.</source>
        <extracomment>page</extracomment>
        <translation>Las dosis de {parameter} son las del plan {plan_id}. Su tarjeta de dosis dice cuándo terminan; aquí está en qué minuto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>After 30 days the tank uses something else: test and print it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Tras 30 días el acuario consume otra cosa: mida e imprímalo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the dose card of plan {plan_id} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Entonces termina la tarjeta de dosis del plan {plan_id}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the clocks on the wall are changed.</source>
        <extracomment>_valid</extracomment>
        <translation>Entonces cambian los relojes de la pared.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{first} and {second}: {nearest} apart at the nearest, never under {minutes}.</source>
        <extracomment>_separation</extracomment>
        <translation>{first} y {second}: separados {nearest} como mínimo aquí, nunca menos de {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Use another outlet for each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Use otra salida para cada uno, en la corriente. Nunca mezcle los concentrados.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source> or </source>
        <extracomment>_setting</extracomment>
        <translation> o </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{doses}{doses_2}
First at {minute}</source>
        <extracomment>_setting</extracomment>
        <translation>{doses}{doses_2}
Primera a las {minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{pump}: runs {runs} each time. {in_24_hours} in 24 hours.{carried}</source>
        <extracomment>_setting</extracomment>
        <translation>{pump}: funciona {runs} cada vez. {in_24_hours} en 24 horas.{carried}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>Plan {plan_id} for {parameter}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>Plan {plan_id} para {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} cannot be read. End it on the Correct sheet.</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} no se puede leer. Termínelo en la hoja Corrección.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} must not be followed on. {plan_said}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} no debe seguirse más. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>“{name}” is chosen for {parameter} and for {parameter_2}. A pump head gives from one jug: </source>
        <extracomment>names_of</extracomment>
        <translation>«{name}» está elegida para {parameter} y para {parameter_2}. Un cabezal da de un solo bidón: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>{said}choose another pump for one of them.</source>
        <extracomment>names_of</extracomment>
        <translation>{said}elija otra bomba para uno de ellos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Let alkalinity and calcium flow in at different places, where the water moves.</source>
        <translation>Deje entrar alcalinidad y calcio en sitios distintos, donde el agua se mueve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>The pumps' clocks stay as they were set when the clocks on the wall are changed.</source>
        <translation>Los relojes de las bombas quedan como se pusieron cuando cambian los relojes de la pared.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>To set the pumps' clocks again in autumn, stop the pumps for the hour that comes twice.</source>
        <translation>Para poner en hora los relojes de las bombas en otoño, pare las bombas durante la hora que viene dos veces.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>, on some days {more} more</source>
        <extracomment>_lines</extracomment>
        <translation>, algunos días {more} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{first} and {second}: {nearest} apart, at least {minutes}</source>
        <extracomment>_lines</extracomment>
        <translation>{first} y {second}: separados {nearest}, al menos {minutes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>Note: {remark}</source>
        <extracomment>_lines</extracomment>
        <translation>Nota: {remark}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{n} doses</source>
        <comment>in words</comment>
        <extracomment>for 1: one dose; pump_line</extracomment>
        <translation>
            <numerusform>una dosis</numerusform>
            <numerusform>{n} dosis</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{pump}: {how_many} a day{apart}, {in_day} in all, running {runs}</source>
        <extracomment>pump_line</extracomment>
        <translation>{pump}: {how_many} al día{apart}, {in_day} en total, en marcha {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every {shortest}</source>
        <extracomment>_interval</extracomment>
        <translation>cada {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{shortest} to {longest} from one to the next</source>
        <extracomment>_interval</extracomment>
        <translation>{shortest} a {longest} de una a la siguiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days {more} more</source>
        <extracomment>_row</extracomment>
        <translation>algunos días {more} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin}, then {run}</source>
        <extracomment>_when</extracomment>
        <translation>{begin}, luego {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin} to {minute}, {intervals}</source>
        <extracomment>_when</extracomment>
        <translation>{begin} a {minute}, {intervals}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every hour</source>
        <extracomment>_interval</extracomment>
        <translation>cada hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{shortest} to {longest} apart</source>
        <extracomment>_interval</extracomment>
        <translation>separadas {shortest} a {longest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} of {dose}</source>
        <extracomment>_summary</extracomment>
        <translation>{count} de {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>up to {longest}</source>
        <extracomment>_summary</extracomment>
        <translation>hasta {longest}</translation>
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
        <translation>una dosis al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, the nearest {shortest} apart</source>
        <extracomment>_doses</extracomment>
        <translation>{count} dosis al día, separadas {shortest} como mínimo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, {shortest}</source>
        <extracomment>_doses</extracomment>
        <translation>{count} dosis al día, {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every day the same</source>
        <extracomment>_carried</extracomment>
        <translation>cada día igual</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days the first dose is {step} more: what is left of a step is carried into the next day</source>
        <extracomment>_carried</extracomment>
        <translation>algunos días la primera dosis es {step} mayor: lo que queda de un paso se lleva al día siguiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on {extra} of {days} days the first dose is {step} more; then the sum is exact</source>
        <extracomment>_carried</extracomment>
        <translation>{extra} de {days} días la primera dosis es {step} mayor; así la suma es exacta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{minute}: {dose}, runs {run_time}</source>
        <extracomment>lanes</extracomment>
        <translation>{minute}: {dose}, funciona {run_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{first} and {second} come {nearest} apart at the nearest; at least {minutes} are kept.</source>
        <extracomment>nearest_lines</extracomment>
        <translation>{first} y {second} vienen separados {nearest} como mínimo; se respetan al menos {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Wear goggles and gloves at the jugs. In the eyes: rinse for at least 15 minutes and get medical help.</source>
        <translation>Use gafas de protección y guantes junto a los bidones. En los ojos: enjuague al menos 15 minutos y busque atención médica.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Never mix the concentrates.</source>
        <translation>Nunca mezcle los concentrados.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>“{clean}” is not a clock time. Write it like 22:00.</source>
        <extracomment>clock_minute</extracomment>
        <translation>«{clean}» no es una hora. Escríbala como 22:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>00:00 to {minute}</source>
        <extracomment>Wishes.not_before</extracomment>
        <translation>00:00 a {minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours end as well.</source>
        <extracomment>read</extracomment>
        <translation>Escriba también cuándo terminan las horas de silencio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours begin as well.</source>
        <extracomment>read</extracomment>
        <translation>Escriba también cuándo empiezan las horas de silencio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Quiet hours that end when they begin leave nothing of the day.</source>
        <extracomment>read</extracomment>
        <translation>Unas horas de silencio que terminan cuando empiezan no dejan nada del día.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{n} doses a day</source>
        <extracomment>for 1: one dose a day; _doses</extracomment>
        <translation>
            <numerusform>una dosis al día</numerusform>
            <numerusform>{n} dosis al día</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{fewest} to {most} doses a day</source>
        <extracomment>_number</extracomment>
        <translation>{fewest} a {most} dosis al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Choose {would_do}</source>
        <extracomment>_would_do</extracomment>
        <translation>Elija {would_do}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {fewest} the smaller doses of {name} would be {small}, below the {least} it gives accurately.</source>
        <extracomment>_smallest</extracomment>
        <translation>Con {fewest}, las dosis menores de {name} serían de {small}, por debajo de los {least} que da con exactitud.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a weaker stock.</source>
        <extracomment>_smallest</extracomment>
        <translation>{head} {would_do}, o una solución más débil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {most} a dose of {name} would be {large}, more than the {largest} it may be.</source>
        <extracomment>_largest</extracomment>
        <translation>Con {most}, una dosis de {name} sería de {large}, más de los {largest} que puede ser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} {would_do}, o una solución más fuerte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} Use una solución más fuerte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No dose of {name} is both {smallest} or more and {largest} or less with {number}.</source>
        <extracomment>_between</extracomment>
        <translation>Ninguna dosis de {name} es a la vez de {smallest} o más y de {largest} o menos con {number}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a finer pump or another stock.</source>
        <extracomment>_between</extracomment>
        <translation>{head} Use una bomba más fina u otra solución.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No timetable of {names} {keeps} all wishes.</source>
        <extracomment>_none</extracomment>
        <translation>Para {names}, ningún horario {keeps} todos los deseos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>keeps</source>
        <extracomment>_none</extracomment>
        <translation>cumple</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>was found that keeps</source>
        <extracomment>_none</extracomment>
        <translation>se encontró que cumpla</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second}</source>
        <extracomment>_apart</extracomment>
        <translation>{first} y {second}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} Only if {pair} need not stay {minutes} apart is there one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Solo lo hay si {pair} no tienen que estar separados {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {widest} between {pair} instead of {minutes} there is one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Con {widest} entre {pair} en lugar de {minutes} sí lo hay.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the time that doses stay apart</source>
        <translation>el tiempo entre dosis opuestas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the quiet hours</source>
        <translation>las horas de silencio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>only one pump at a time</source>
        <translation>solo una bomba a la vez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>how near the doses of one pump may come</source>
        <translation>lo cerca que pueden venir las dosis de una bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} They run too long for one day. Use stronger stocks or faster pumps.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Funcionan demasiado tiempo para un solo día. Use soluciones más fuertes o bombas más rápidas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} In the way: {wishes}. Leaving it out alone is not enough: use stronger stocks or faster pumps as well.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Estorba: {wishes}. Quitarlo no basta: use además soluciones más fuertes o bombas más rápidas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} These stand in the way together: {said}. Give way in two of them.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Estorban juntos: {said}. Ceda en dos de ellos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Add a pump, with what it gives in a day and its flow.</source>
        <translation>Añada una bomba, con lo que da en un día y su caudal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>These are {count} pumps; {most} can be planned together. Leave some out.</source>
        <translation>Son {count} bombas; {most} se pueden planificar juntas. Deje alguna fuera.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{what}: one of the figures cannot be. Write them again.</source>
        <translation>{what}: una de las cifras no puede ser. Escríbalas de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Two pumps are called {name}. Give each a name of its own.</source>
        <translation>Dos bombas se llaman {name}. Dé a cada una su propio nombre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No pump is called {text}. There are: {choices}.</source>
        <translation>Ninguna bomba se llama {text}. Hay: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{text} are no hours. Write them like 22:00 to 07:00, several with a comma between them.</source>
        <translation>{text} no son horas. Escríbalas como 22:00 to 07:00, varias con una coma entre ellas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>For {name} {doses} are wished for, and {fewest} to {most} are allowed. Correct one of the three.</source>
        <translation>Para {name} se desean {doses}, y se permiten de {fewest} a {most}. Corrija una de las tres cifras.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} cannot be kept apart from itself. Name two pumps.</source>
        <translation>{name} no se puede separar de sí mismo. Nombre dos bombas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} fall out when they meet in the water. Keep them {least} apart or more, not {minutes}.</source>
        <translation>{first} y {second} precipitan si se juntan en el agua. Sepárelos {least} o más, no {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gives {per_day} a day, less than one step of {step}. Use a weaker stock or a finer pump.</source>
        <translation>{name} da {per_day} al día, menos que un paso de {step}. Use una solución más débil o una bomba más fina.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} is to give {per_day} a day, and can give {most} in {share} of the time. Use a stronger stock or a faster pump.</source>
        <translation>{name} debe dar {per_day} al día, y puede dar {most} en {share} del tiempo. Use una solución más fuerte o una bomba más rápida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave {open} of the day; without them there is one. Shorten them.</source>
        <translation>{none} Las horas de silencio dejan {open} del día; sin ellas sí lo hay. Acórtelas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave nothing of the day. Shorten them.</source>
        <translation>{none} Las horas de silencio no dejan nada del día. Acórtelas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {would_do} at most there is one.</source>
        <translation>{none} Con {would_do} como máximo sí lo hay.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when two pumps may run together.</source>
        <translation>{none} Lo hay si dos bombas pueden funcionar a la vez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when doses of {name} may come nearer than {minutes}.</source>
        <translation>{none} Lo hay si las dosis de {name} pueden venir a menos de {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The second reckoning does not agree with this timetable, so none is given. Please keep this question and report it.</source>
        <translation>El segundo cálculo no coincide con este horario, así que no se da ninguno. Guarde esta pregunta y comuníquela, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gets {given} instead of the {wished} wished for, which its other wishes leave no room for.</source>
        <translation>{name} recibe {given} en lugar de las {wished} deseadas, para las que sus otros deseos no dejan sitio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The doses of {name} could not be spaced evenly: they come {shortest} to {longest} apart.</source>
        <translation>Las dosis de {name} no se pudieron repartir por igual: vienen separadas {shortest} a {longest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>All doses of {name} come within {lasts} of the {open} in which it may run, so the water rises in that time. Fewer minutes apart, or shorter quiet hours, would spread them.</source>
        <translation>Todas las dosis de {name} vienen en {lasts} de las {open} en que puede funcionar, así que el valor sube en ese tiempo. Menos minutos de separación, u horas de silencio más cortas, las repartirían.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step, so on {extra} of {days} days the first dose is {step} more. The sum is then exact.</source>
        <translation>Lo que {name} da en un día no es múltiplo de su paso, así que {extra} de {days} días la primera dosis es {step} mayor. Así la suma es exacta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step. What is left is carried on: on some days the first dose is {step} more.</source>
        <translation>Lo que {name} da en un día no es múltiplo de su paso. Lo que queda se arrastra: algunos días la primera dosis es {step} mayor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} come {minutes} apart at the nearest; {better} are better. Fewer doses make room.</source>
        <translation>{first} y {second} vienen separados {minutes} como mínimo; {better} es mejor. Con menos dosis hay sitio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>The upkeep is not counted. {said}</source>
        <extracomment>_Gathering.together</extracomment>
        <translation>El mantenimiento no se cuenta. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} is over. {plan_said}</source>
        <extracomment>_Gathering._ramps</extracomment>
        <translation>{head} ha terminado. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>“{name}” cannot be read and is not counted. See the Foods sheet.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>«{name}» no se puede leer y no se cuenta. Vea la hoja Alimentos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>What the foods do to {found} is in what is used already, which was found by testing.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>Lo que los alimentos hacen a {found} ya está en el consumo, que se halló midiendo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: no reading, so only its change is known.</source>
        <extracomment>_Gathering._values</extracomment>
        <translation>{name}: sin lectura, así que solo se conoce su cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: nobody said when it was tested; it is taken for now's.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}: nadie dijo cuándo se midió; se toma por la de ahora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: the reading is {now} old.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}: la lectura tiene {now}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Only its change is known until it is tested.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Hasta que se mida solo se conoce su cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Test it again.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Draft, not to be followed</source>
        <translation>Borrador, no seguir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Everything that runs</source>
        <extracomment>page</extracomment>
        <translation>Todo lo que está en marcha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Replace this card when its code changes.</source>
        <extracomment>page</extracomment>
        <translation>Sustituya esta tarjeta cuando cambie su código.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never more than {most} of {each} for {parameter} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Nunca más de {most} de {each} para {parameter} en 24 horas, todas las dosis juntas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id} until {ends_at}; they make good the daily use as well. Then its upkeep begins: make this card again.</source>
        <extracomment>page</extracomment>
        <translation>Las dosis de {parameter} son las del plan {plan_id} hasta el {ends_at}; también compensan el consumo diario. Después empieza su mantenimiento: haga esta tarjeta de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run_time} each time. {in_24_hours}{each}</source>
        <extracomment>_upkeep</extracomment>
        <translation>{pump}: funciona {run_time} cada vez. {in_24_hours}{each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name} upkeep, {per_day}</source>
        <extracomment>_upkeep</extracomment>
        <translation>Mantenimiento {name}, {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> A full jug lasts until {empty_at}.</source>
        <extracomment>_empty</extracomment>
        <translation> Un bidón lleno dura hasta el {empty_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run} each time. {in_24_hours}</source>
        <extracomment>_ramps</extracomment>
        <translation>{pump}: funciona {run} cada vez. {in_24_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {name}</source>
        <extracomment>_ramps</extracomment>
        <translation>Bomba para {name}</translation>
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
        <translation>{in_24_hours} por hora, {in_24_hours_2} en 24 horas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: clear saturated solution, {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> En el bidón: solución saturada clara, {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: {said} made up to {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> En el bidón: {said} completado a {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Keep it cold.</source>
        <extracomment>_fed</extracomment>
        <translation>Guárdelo en frío.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Use it until {last_day}, then throw it away.</source>
        <extracomment>_fed</extracomment>
        <translation>Úselo hasta el {last_day}, luego tírelo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never make up a missed feeding.</source>
        <extracomment>_fed</extracomment>
        <translation>Nunca compense una toma perdida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Food, in a day</source>
        <extracomment>_fed</extracomment>
        <translation>Alimento, en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Old water out: {out} per day. New water in: {in_} per day.</source>
        <extracomment>_water</extracomment>
        <translation>Sale agua vieja: {out} al día. Entra agua nueva: {in_} al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Both pumps are matched; when one stops, stop the other.</source>
        <extracomment>_water</extracomment>
        <translation>Ambas bombas están igualadas; si una para, pare la otra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Watch the level.</source>
        <extracomment>_water</extracomment>
        <translation>Vigile el nivel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{alike} New water has a salinity of {salinity}.</source>
        <extracomment>_water</extracomment>
        <translation>{alike} El agua nueva tiene una salinidad de {salinity}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{names} and {names_2}: {apart} apart, by another outlet each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>{names} y {names_2}: separados {apart}, cada uno por otra salida, en la corriente. Nunca mezcle los concentrados.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>At which minute each pump doses stands on the timetable.</source>
        <extracomment>_separation</extracomment>
        <translation>En qué minuto dosifica cada bomba está en el horario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Stop dosing {name} and test again if it reads above {above}.</source>
        <extracomment>_stop</extracomment>
        <translation>Pare de dosificar {name} y mida de nuevo si pasa de {above}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name}: {due}, then every {stale_days}.</source>
        <extracomment>_tests</extracomment>
        <translation>{name}: {due}, luego cada {stale_days}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>by {due}</source>
        <extracomment>_tests</extracomment>
        <translation>antes del {due}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>, a test may say {low} to {high}</source>
        <extracomment>_between</extracomment>
        <translation>, una prueba puede decir {low} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>After 30 days the tank uses something else: test and make it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Tras 30 días el acuario consume otra cosa: mida y hágala de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then plan {plan_id} for {parameter} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Entonces termina el plan {plan_id} para {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then {parameter} would leave its range: change what moves it.</source>
        <extracomment>_valid</extracomment>
        <translation>Entonces {parameter} dejaría sus límites: cambie lo que mueve el valor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>stays there</source>
        <translation>se queda ahí</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing can be said yet.</source>
        <extracomment>view</extracomment>
        <translation>Todos los planes juntos: aún no se puede decir nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>What does not move: {still}.</source>
        <extracomment>view</extracomment>
        <translation>Lo que no se mueve: {still}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing moves.</source>
        <extracomment>_summary</extracomment>
        <translation>Todos los planes juntos: nada se mueve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said} and {said_2} more.</source>
        <extracomment>_summary</extracomment>
        <translation>Todos los planes juntos, en una semana: {said} y {said_2} más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said}.</source>
        <extracomment>_summary</extracomment>
        <translation>Todos los planes juntos, en una semana: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{said} values move.</source>
        <extracomment>_summary</extracomment>
        <translation>{said} valores se mueven.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a month</source>
        <extracomment>_spoken</extracomment>
        <translation>en un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>used up on {date_words}</source>
        <extracomment>_then</extracomment>
        <translation>agotado el {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>the usual </source>
        <extracomment>_then</extracomment>
        <translation>lo usual </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>settles at {settles}</source>
        <extracomment>_then</extracomment>
        <translation>se estabiliza en {settles}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} now</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} on {date_words}</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} el {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>up {rise}</source>
        <extracomment>_change</extracomment>
        <translation>sube {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>down {rise}</source>
        <extracomment>_change</extracomment>
        <translation>baja {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Together now</source>
        <extracomment>_budget</extracomment>
        <translation>Juntos ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>of {rise_hard} at the most</source>
        <extracomment>_limits</extracomment>
        <translation>de {rise_hard} como máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest rise in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Mayor subida en 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest fall in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Mayor bajada en 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>from {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>desde el {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>until {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>hasta el {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{named}, next {times} days</source>
        <extracomment>_course</extracomment>
        <translation>{named}, los próximos {times} días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the upkeep of {}</source>
        <translation>el mantenimiento: {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the correction of {}</source>
        <translation>la corrección: {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>used</source>
        <translation>consumido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>taken by skimmer, algae and media</source>
        <translation>lo que toman espumador, algas y medios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>water exchange</source>
        <translation>cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the new water</source>
        <extracomment>_plans</extracomment>
        <translation>el agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>below {low}</source>
        <extracomment>_bound</extracomment>
        <translation>por debajo de {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>above {high}</source>
        <extracomment>_bound</extracomment>
        <translation>por encima de {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound} and does not come back by itself. Correct it first.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name} está {bound}, y el valor no vuelve por sí solo. Corríjalo primero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Change what moves it before that.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name} pasa {bound} en {day}, donde ningún plan puede llevar el valor. Cambie antes lo que lo mueve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would rise {rise} in 24 hours, of {most} at the most</source>
        <extracomment>_too_fast</extracomment>
        <translation>{name} subiría {rise} en 24 horas, de {most} como máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}: no single plan does that. Let some of them wait.</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}: ningún plan solo lo hace. Haga esperar a algunos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Bring it nearer, or exchange more slowly.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Acérquela, o cambie más despacio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Give less of it.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Dé menos de ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}, by {plans}. {less}</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}, por {plans}. {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>All together {parameter} would rise {rise} in 24 hours, of {most} at the most: {plans} raise it, though each alone keeps the limit. Let one wait until the other is done, or make it slower.</source>
        <translation>Todo junto, {parameter} subiría {rise} en 24 horas, de {most} como máximo: {plans} suben el valor, aunque cada uno por sí solo respeta el límite. Haga esperar a uno hasta que el otro acabe, o hágalo más lento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would fall {fall} in 24 hours, of {most} at the most. Exchange more slowly, or bring the new water nearer.</source>
        <translation>{name} bajaría {fall} en 24 horas, de {most} como máximo. Cambie más despacio, o acerque el agua nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Test it before, and change what moves it.</source>
        <translation>{name} pasa {bound} en {day}, donde ningún plan puede llevar el valor. Mídalo antes, y cambie lo que lo mueve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound}, outside of what is usually kept.</source>
        <translation>{name} está {bound}, fuera de lo que se suele mantener.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, out of what is usually kept.</source>
        <translation>{name} pasa {bound} en {day}, fuera de lo que se suele mantener.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would be used up in {day}.</source>
        <translation>{name} se agotaría en {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is raised by {plans}: {rise} per day together.</source>
        <translation>Suben {name}: {plans}; {rise} al día juntos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would come to {comes_to} in {day}, not to the target of {target}: {plans} raise it as well. Plan it lower or slower, or let the other wait.</source>
        <translation>{name} llegaría a {comes_to} en {day}, no al valor objetivo de {target}: {plans} también suben el valor. Planifíquelo más bajo o más lento, o haga esperar al otro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Two ways to reckon all plans together differ for {what}, so nothing is said. Please report this log.</source>
        <translation>Dos maneras de calcular todos los planes juntos difieren en {what}, así que no se dice nada. Comunique este registro, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Doses at one moment</source>
        <translation>Dosis de un mismo momento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>nothing is dosed</source>
        <extracomment>view, UpkeepSheet._row</extracomment>
        <translation>no se dosifica nada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>a bottle, by its label</source>
        <extracomment>_row</extracomment>
        <translation>un frasco, según su etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{in_24_hours} per hour</source>
        <extracomment>_row</extracomment>
        <translation>{in_24_hours} por hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{share} of the use; the other additives bring the rest</source>
        <extracomment>_row</extracomment>
        <translation>{share} del consumo; los otros aditivos aportan el resto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>with {exchange_fraction} exchanged a day</source>
        <extracomment>_spans</extracomment>
        <translation>con {exchange_fraction} cambiado al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Salt left behind</source>
        <extracomment>_spans</extracomment>
        <translation>Sal que queda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Of it sodium chloride</source>
        <extracomment>_spans</extracomment>
        <translation>De ella cloruro de sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {steady} in the tank</source>
        <extracomment>_salt</extracomment>
        <translation>con {steady} en el acuario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} more</source>
        <extracomment>_change</extracomment>
        <translation>{amount} más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} less</source>
        <extracomment>_change</extracomment>
        <translation>{amount} menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{drift} than in the new water</source>
        <extracomment>_settles</extracomment>
        <translation>{drift} que en el agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {drift}</source>
        <extracomment>_settles</extracomment>
        <translation>en {drift}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>skeleton takes {of_skeleton}, one mole to two equivalents</source>
        <extracomment>_lines</extracomment>
        <translation>el esqueleto toma {of_skeleton}, un mol por dos equivalentes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as used</source>
        <extracomment>_lines</extracomment>
        <translation>Calcio y alcalinidad, consumidos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as dosed</source>
        <extracomment>_lines</extracomment>
        <translation>Calcio y alcalinidad, dosificados</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>what all doses bring of both</source>
        <extracomment>_lines</extracomment>
        <translation>lo que todas las dosis aportan de ambos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Left of the use of {parameter}</source>
        <extracomment>_lines</extracomment>
        <translation>Queda del consumo de {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>by rounding the dose down</source>
        <extracomment>_lines</extracomment>
        <translation>por redondear la dosis hacia abajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{short} per day</source>
        <extracomment>_lines</extracomment>
        <translation>{short} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Sodium chloride</source>
        <extracomment>_lines</extracomment>
        <translation>Cloruro de sodio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>one mole for every equivalent made good with a two-part</source>
        <extracomment>_lines</extracomment>
        <translation>un mol por cada equivalente compensado con dos bidones igualados</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Water with the doses of 24 hours</source>
        <extracomment>_lines</extracomment>
        <translation>Agua con las dosis de 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{ph_nbs} now, before the air has evened it out</source>
        <extracomment>_lines</extracomment>
        <translation>{ph_nbs} ahora, antes de que el aire lo iguale</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>pH after the doses of the fullest hour</source>
        <extracomment>_lines</extracomment>
        <translation>pH tras las dosis de la hora más llena</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{saturation} now</source>
        <extracomment>_lines</extracomment>
        <translation>{saturation} ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Aragonite saturation after them</source>
        <extracomment>_lines</extracomment>
        <translation>Saturación de aragonito tras ellas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} for {for_}</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} para {for_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>the bottle</source>
        <extracomment>_too_much</extracomment>
        <translation>el frasco</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} and the other additives bring</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} y los otros aditivos aportan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} brings</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} aporta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} {brought} of {name}, more than the {used} used. Choose another additive, or take {name} off the list and watch it rise.</source>
        <extracomment>_too_much</extracomment>
        <translation>{head} {brought} de {name}, más de los {used} consumidos. Elija otro aditivo, o quite {name} de la lista y vea cómo sube.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Each dose for {parameter} would be {dose}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Cada dosis para {parameter} sería de {dose}, por debajo de la dosis mínima exacta de la bomba, {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} would rise by {rise}, more than the {most} it may.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{parameter} subiría {rise}, más de los {most} que puede.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} The doses of the correction make good the daily use already: begin this upkeep when it is over.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Las dosis de la corrección ya compensan el consumo diario: empiece este mantenimiento cuando termine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose an additive that brings less of it.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Elija un aditivo que aporte menos de ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Keep the doses for {first} and for {second} at least {minutes} apart, and let them flow in at different places: together they fall out.</source>
        <extracomment>_apart</extracomment>
        <translation>Separe las dosis para {first} y para {second} al menos {minutes}, y deje que entren en sitios distintos: juntas precipitan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} With these doses a day they come no further apart than {widest}: choose the same number for both, {most_doses} or fewer.</source>
        <extracomment>_apart</extracomment>
        <translation>{head} Con estas dosis al día no se separan más de {widest}: elija el mismo número para ambas, {most_doses} o menos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Add a value to keep, with its use per day, its additive and its pump.</source>
        <translation>Añada un valor que mantener, con su consumo diario, su aditivo y su bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} stands twice on the list. Keep each value with one additive.</source>
        <translation>{parameter} está dos veces en la lista. Mantenga cada valor con un aditivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} has no use per day, so there is nothing to make good. Test it twice, some days apart, or take it off the list.</source>
        <translation>{parameter} no tiene consumo diario, así que no hay nada que compensar. Mida ese valor dos veces, con unos días entre ellas, o quítelo de la lista.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What is dosed for {first} and for {second} raises both in the same proportion, so one of them is enough. Take one off the list, or choose another additive.</source>
        <translation>Lo que se dosifica para {first} y para {second} sube ambos en la misma proporción, así que uno basta. Quite uno de la lista, o elija otro aditivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>No doses of these additives make good {parameters} at once. Choose additives that raise one value each.</source>
        <translation>Ninguna dosis de estos aditivos compensa a la vez {parameters}. Elija aditivos que suban un valor cada uno.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A dose of {single} for {parameter} rounded down to steps of {step} is nothing. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Una dosis de {single} para {parameter} redondeada hacia abajo a pasos de {step} no es nada. Elija menos dosis al día, un paso más fino o una solución más débil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} needs {needs} in 24 hours, and its pump can give {most}. Use a stronger stock or a faster pump.</source>
        <translation>{parameter} necesita {needs} en 24 horas, y su bomba puede dar {most}. Use una solución más fuerte o una bomba más rápida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one moment would raise {parameter} by {rise}, more than the {most} they may. Choose more doses a day.</source>
        <translation>Las dosis de un mismo momento subirían {parameter} {rise}, más de los {most} que pueden. Elija más dosis al día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of 24 hours are {in_day}, but only {most} evaporate. Use stronger stocks, or something stronger than limewater.</source>
        <translation>Las dosis de 24 horas son {in_day}, pero solo se evaporan {most}. Use soluciones más fuertes, o algo más fuerte que el agua de cal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one hour would lift pH by {rise}, more than the {most} they may. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Las dosis de una hora subirían el pH {rise}, más de los {most} que pueden. {per_day}El bicarbonato de sodio no lo sube de inmediato.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH is {now} now and would come to {ph} after the doses of one hour; they must not take it above {most}. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>El pH está ahora en {now} y llegaría a {ph} tras las dosis de una hora; no deben llevarlo por encima de {most}. {per_day}Use bicarbonato de sodio, o dosifique de noche y mida entonces el pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} after the doses of one hour. Above {most} calcium carbonate falls out. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>La saturación de aragonito está ahora en {now} y llegaría a {saturation} tras las dosis de una hora. Por encima de {most} precipita carbonato de calcio. {per_day}Use bicarbonato de sodio, o dosifique de noche y mida entonces el pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Calcium and alkalinity are used at {of_use}, but skeleton takes {of_skeleton}. A test may be wrong, or something falls out. Test both again.</source>
        <translation>Calcio y alcalinidad se consumen a {of_use}, pero el esqueleto toma {of_skeleton}. Una prueba puede estar mal, o algo precipita. Mida ambos de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A correction of {parameter} goes on for {days} more days. Its doses make good the daily use already: begin this upkeep when it is over.</source>
        <translation>Una corrección de {parameter} sigue {days} días más. Sus dosis ya compensan el consumo diario: empiece este mantenimiento cuando termine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The other additives bring all of the {parameter} that is used, so nothing is dosed for it.</source>
        <translation>Los otros aditivos aportan todo lo que se consume de {parameter}, así que no se dosifica nada para ello.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Skeleton takes calcium and alkalinity together: {parameter} falls by {falls}, and nothing on the list makes it good.</source>
        <translation>El esqueleto toma calcio y alcalinidad juntos: {parameter} baja {falls}, y nada en la lista lo compensa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Rounding down to steps of {step} leaves {lost} of the dose for {parameter} out. Use fewer doses a day or a finer step.</source>
        <translation>Redondear hacia abajo a pasos de {step} deja fuera {lost} de la dosis para {parameter}. Use menos dosis al día o un paso más fino.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What else is in the bottle for {parameter} is not known, so what it leaves behind is not counted.</source>
        <translation>No se sabe qué más hay en el frasco para {parameter}, así que no se cuenta lo que deja.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH was not measured, so {ph} is assumed, and only its rise in an hour is limited. Measure it.</source>
        <translation>No se midió el pH, así que se supone {ph}, y solo se limita su subida en una hora. Mídalo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This tank is invented and nothing of it is kept. Its alkalinity has fallen to 6.8 dKH and is to come back to 8.4, slowly. You type what the keeper knows, and see what follows.</source>
        <translation>Este acuario es inventado y nada de él se guarda. Su alcalinidad ha bajado a 6,8 dKH y debe volver a 8,4, despacio. Usted escribe lo que sabe el cuidador, y ve lo que sigue.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 6.8, what the test showed, and press Enter.</source>
        <translation>{field}: escriba 6,8, lo que mostró la prueba, y pulse Intro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type now. An old reading is no basis for a correction.</source>
        <translation>{field}: escriba ahora. Una lectura vieja no es base para una corrección.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 340, the litres of water without rock and sand.</source>
        <translation>{field}: escriba 340, los litros de agua sin roca ni arena.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 8.4, where it should come to rest.</source>
        <translation>{field}: escriba 8,4, donde debe estabilizarse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 0.9. So much the corals take out of the water in a day.</source>
        <translation>{field}: escriba 0,9. Eso toman los corales del agua en un día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: open the list with Space, go to {wanted} with the arrow keys, press Enter.</source>
        <translation>{field}: abra la lista con Espacio, vaya a {wanted} con las flechas, pulse Intro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Read the cautions first. {field}: type 106, the grams on the scale.</source>
        <translation>Lea antes las precauciones. {field}: escriba 106, los gramos de la báscula.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 1. The jug was filled up to the litre mark.</source>
        <translation>{field}: escriba 1. El bidón se llenó hasta la marca del litro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 24. So much came out of the pump in a minute.</source>
        <translation>{field}: escriba 24. Eso salió de la bomba en un minuto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This is the answer: {answer}. Below it stands which limit sets the pace, and on the chart what the water will do. Change a figure at the left and see the answer follow.</source>
        <translation>Esta es la respuesta: {answer}. Debajo está qué límite marca el ritmo, y en el gráfico lo que hará el agua. Cambie una cifra a la izquierda y vea cómo sigue la respuesta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Press {button}: the card that would hang on the stand. Close it again when you have read it.</source>
        <translation>Pulse {button}: la tarjeta que colgaría del mueble. Ciérrela cuando la haya leído.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>That was the main job. With your own tank the card is saved or printed from the same row of buttons. F1 in any field says why it is there.</source>
        <translation>Eso era lo principal. Con su propio acuario la tarjeta se guarda o se imprime desde la misma fila de botones. F1 en cualquier campo dice por qué está ahí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Invented tank, step {number} of {all}</source>
        <extracomment>counted</extracomment>
        <translation>Acuario inventado, paso {number} de {all}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {out} a day go out, {into} come in.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>La hoja Cambio de agua dice: salen {out} al día, entran {into}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {litres} a day, out and in alike.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>La hoja Cambio de agua dice: {litres} al día, tanto al salir como al entrar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet does not say yet how much; no exchange is reckoned with.</source>
        <translation>La hoja Cambio de agua aún no dice cuánto; no se cuenta con ningún cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{minutes}&#xa0;min ago</source>
        <extracomment>age_words</extracomment>
        <translation>hace {minutes}&#xa0;min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{hours}&#xa0;h ago</source>
        <extracomment>age_words</extracomment>
        <translation>hace {hours}&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{days}&#xa0;days ago</source>
        <extracomment>age_words</extracomment>
        <translation>hace {days}&#xa0;días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: which is the day and which the month? Write the date like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}»: ¿cuál es el día y cuál el mes? Escriba la fecha como 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: write the hour from 00 to 23, like today 18:30.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}»: escriba la hora de 00 a 23, como hoy 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” has no hour. Write it like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}» no tiene hora. Escríbala como 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” does not exist in the calendar or on the clock.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}» no existe en el calendario o en el reloj.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is still to come. Write when it was measured.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}» está por venir. Escriba cuándo se midió.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: today or yesterday?</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}»: ¿hoy o ayer?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” comes twice, or not at all, on the night the clocks change. Choose another minute.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}» viene dos veces, o ninguna, la noche en que cambian los relojes. Elija otro minuto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is not a time. Write today 08:00, yesterday 18:30 or 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«{text}» no es una hora. Escriba hoy 08:00, ayer 18:30 o 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>today</source>
        <comment>in a narrow field</comment>
        <extracomment>_short_today</extracomment>
        <translation>hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>more than {low}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>más de {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start}, up to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start}, hasta {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start} to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start} a {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{number} is outside what can be entered here: {joined}.</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{number} está fuera de lo que se puede escribir aquí: {joined}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is a value, not a rate. Write {per_day}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>«{unit}» es un valor, no un ritmo. Escriba {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is not a unit of this field. Write {choices}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>«{unit}» no es una unidad de este campo. Escriba {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill in {field_words}.</source>
        <translation>Rellene: {field_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a number. Write it like {example}.</source>
        <translation>«{text}» no es un número. Escríbalo como {example}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}”: write the number without spaces between its digits.</source>
        <translation>«{text}»: escriba el número sin espacios entre sus cifras.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” has more than one point or comma. Write one decimal mark and no thousands.</source>
        <translation>«{text}» tiene más de un punto o una coma. Escriba un solo signo decimal y ninguno de millares.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” ends with a decimal mark. Write the digits after it, or leave it out.</source>
        <translation>«{text}» termina con un signo decimal. Escriba las cifras que siguen, u omítalo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Write the value itself, without a plus sign.</source>
        <translation>Escriba el valor mismo, sin signo más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>That number has more digits than can be kept. Use 40 or fewer.</source>
        <translation>Ese número tiene más cifras de las que se pueden guardar. Use 40 o menos.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” can be read in two ways: {r}.</source>
        <extracomment>for 1: “{text}”: is {readings} meant? Write it without a thousands mark.</extracomment>
        <translation>
            <numerusform>«{text}»: ¿quería decir {readings}? Escríbalo sin signo de millares.</numerusform>
            <numerusform>«{text}» se puede leer de dos maneras: {r}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” must be a whole number.</source>
        <translation>«{text}» debe ser un número entero.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>The unit is missing. Write {choices} after the number.</source>
        <translation>Falta la unidad. Escriba {choices} tras el número.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which gallon? Write US gal (3.785&#xa0;L) or imperial gal (4.546&#xa0;L).</source>
        <translation>¿Qué galón? Escriba US gal (3,785&#xa0;L) o imperial gal (4,546&#xa0;L).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>At which temperatures? Write {choices}, as on the hydrometer.</source>
        <translation>¿A qué temperaturas? Escriba {choices}, como en el densímetro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” does not say as what it counts. Write {choices}.</source>
        <translation>«{unit}» no dice como qué cuenta. Escriba {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no unit. Write it in quotes with its unit.</source>
        <translation>{text} no tiene unidad. Escríbalo entre comillas con su unidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a time. Write it like 2026-11-25 08:00.</source>
        <translation>«{text}» no es una hora. Escríbala como 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no time zone. Write the offset, like 2026-11-25T08:00:00+00:00.</source>
        <translation>{text} no tiene zona horaria. Escriba el desfase, como 2026-11-25T08:00:00+00:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Write {choices}.</source>
        <translation>«{text}» no se conoce. Escriba {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not one of the choices. Write {choices}.</source>
        <translation>«{text}» no es una de las opciones. Escriba {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which “{text}”? The bag says one of: {choices}.</source>
        <translation>¿Qué «{text}»? La bolsa dice uno de: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{chemical} does not raise {parameter}. Choose another additive.</source>
        <translation>{chemical} no sube este valor ({parameter}). Elija otro aditivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>This bottle</source>
        <translation>Este frasco</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Known are: {choices}.</source>
        <translation>«{text}» no se conoce. Se conocen: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL of stock carries</source>
        <translation>1&#xa0;mL de solución lleva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL raises</source>
        <translation>1&#xa0;mL sube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the daily rise sets the pace</source>
        <translation>la subida diaria marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the size of a single dose sets the pace</source>
        <translation>el tamaño de una dosis marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump sets the pace</source>
        <translation>la bomba marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the rise of pH in an hour sets the pace</source>
        <translation>la subida del pH en una hora marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the highest pH sets the pace</source>
        <translation>el pH más alto marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>aragonite saturation sets the pace</source>
        <translation>la saturación de aragonito marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what evaporates sets the pace</source>
        <translation>lo que se evapora marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what was given already sets the pace</source>
        <translation>lo que ya se dio marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{measured} and {untested} untested</source>
        <extracomment>_from</extracomment>
        <translation>{measured} y {untested} sin medir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source> and {use} used</source>
        <extracomment>working</extracomment>
        <translation> y {use} consumido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Rise wanted</source>
        <extracomment>working</extracomment>
        <translation>Subida deseada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{target} less {answer}</source>
        <extracomment>working</extracomment>
        <translation>{target} menos {answer}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Pace</source>
        <extracomment>working</extracomment>
        <translation>Ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>limited by what else it raises</source>
        <extracomment>working</extracomment>
        <translation>limitado por lo que sube además</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} per day</source>
        <extracomment>working</extracomment>
        <translation>{rise} al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>To be given in 24 hours</source>
        <extracomment>working</extracomment>
        <translation>Por dar en 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} rise{used}</source>
        <extracomment>working</extracomment>
        <translation>{rise} de subida{used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{to_give} ÷ {per} per mL</source>
        <extracomment>working</extracomment>
        <translation>{to_give} ÷ {per} por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Each dose</source>
        <extracomment>working</extracomment>
        <translation>Cada dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{single_dose}, set {dose}</source>
        <extracomment>working</extracomment>
        <translation>{single_dose}, ajustado {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left after use</source>
        <extracomment>working</extracomment>
        <translation>Queda tras el consumo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what each dose leaves in the water until the next</source>
        <extracomment>working</extracomment>
        <translation>lo que cada dosis deja en el agua hasta la siguiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Number of doses</source>
        <extracomment>working</extracomment>
        <translation>Número de dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{climb} ÷ {net}, whole doses only</source>
        <extracomment>working</extracomment>
        <translation>{climb} ÷ {net}, solo dosis enteras</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left to the target</source>
        <extracomment>working</extracomment>
        <translation>Falta hasta el valor objetivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by rounding down</source>
        <extracomment>working</extracomment>
        <translation>por redondear hacia abajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump runs</source>
        <extracomment>working</extracomment>
        <translation>La bomba funciona</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{run_time} each</source>
        <extracomment>working</extracomment>
        <translation>{run_time} cada una</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Afterwards</source>
        <extracomment>working</extracomment>
        <translation>Después</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{use} used per day ÷ {per} per mL ÷ {with_unit}</source>
        <extracomment>working</extracomment>
        <translation>{use} consumido al día ÷ {per} por mL ÷ {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Second reckoning</source>
        <extracomment>working</extracomment>
        <translation>Segundo cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>all doses given one by one</source>
        <extracomment>working</extracomment>
        <translation>todas las dosis dadas una a una</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>ends at {end_value}</source>
        <extracomment>working</extracomment>
        <translation>termina en {end_value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>9 times in 10 it ends</source>
        <extracomment>working</extracomment>
        <translation>9 de cada 10 veces termina</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>in steps of {step}, rounded down</source>
        <extracomment>_rounding</extracomment>
        <translation>en pasos de {step}, redondeado hacia abajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses; one smaller dose fits the rise wanted, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} dosis; una dosis menor se ajusta a la subida deseada, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} dosis, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g of salt</source>
        <extracomment>_stock_line</extracomment>
        <translation>g de sal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{carried} per mL</source>
        <extracomment>_stock_line</extracomment>
        <translation>{carried} por mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{mass}; {grams} in {litres}{pure} × {each}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{mass}; {grams} en {litres}{pure} × {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{parts}, in {litres}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{parts}, en {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{dose} raise {water} by {rise}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{dose} suben {water} en {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by its label, {how}</source>
        <extracomment>_stock_line</extracomment>
        <translation>según su etiqueta, {how}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g per mol</source>
        <extracomment>_portion_words</extracomment>
        <translation>g por mol</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{unit} per g</source>
        <extracomment>_portion_words</extracomment>
        <translation>{unit} por g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ ({litres} × {water})</source>
        <extracomment>_spread_line</extracomment>
        <translation>eso ÷ ({litres} × {water})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres}</source>
        <extracomment>_spread_line</extracomment>
        <translation>eso ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres} × {factor} per {canonical}</source>
        <extracomment>_spread_line</extracomment>
        <translation>eso ÷ {litres} × {factor} por {canonical}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the volume</source>
        <extracomment>_largest_source</extracomment>
        <translation>el volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the strength</source>
        <extracomment>_largest_source</extracomment>
        <translation>la concentración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the largest part of the doubt ({share}) comes from {source}</source>
        <extracomment>_largest_source</extracomment>
        <translation>la mayor parte de la duda ({share}) viene de: {source}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Emergency card</source>
        <translation>Tarjeta de emergencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The way down</source>
        <translation>La bajada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Electricity</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <location filename="../chemicals.toml"/>
        <source>Danger</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>Peligro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The same in full</source>
        <translation>Lo mismo, completo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A6 landscape</source>
        <translation>A6 apaisado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A4 with two labels</source>
        <translation>A4 con dos etiquetas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>Letter with two labels</source>
        <translation>Letter con dos etiquetas</translation>
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
        <translation>{title}, {system}, plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>Contingency cards, {system}, plan {plan_id}</source>
        <extracomment>title_of</extracomment>
        <translation>Tarjetas de contingencia, {system}, plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>batch {batch}</source>
        <extracomment>title_of</extracomment>
        <translation>preparación {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Figure read</source>
        <translation>Cifra leída</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>goes on</source>
        <translation>sigue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Timetable</source>
        <translation>Horario</translation>
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
        <translation>Bomba y aditivo</translation>
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
        <translation>Relojes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>All plans</source>
        <translation>Todos los planes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>In a week</source>
        <translation>En una semana</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Goes on from the page before:</source>
        <translation>Sigue de la página anterior:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Handle with care</source>
        <translation>Manejar con cuidado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Test again</source>
        <translation>Medir de nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Refill</source>
        <translation>Rellenar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Totals</source>
        <translation>Totales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Whole jug</source>
        <translation>Bidón entero</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>50&#xa0;mm at full size</source>
        <translation>50&#xa0;mm reales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>h after the reading</source>
        <translation>h tras la lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>days after the reading</source>
        <translation>días tras la lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>{page} of {pages}</source>
        <extracomment>page_of</extracomment>
        <translation>{page} de {pages}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Before you leave</source>
        <translation>Antes de irse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away until</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Ausente hasta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>like 2026-12-20 18:00</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>como 2026-12-20 18:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Going away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Ausentarse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Due already</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Ya pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Falls into the time away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Cae en la ausencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away {until}.</source>
        <extracomment>AbsencePage.show_absence</extracomment>
        <translation>Ausente {until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>The question has changed</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>La pregunta ha cambiado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>How this was worked out</source>
        <translation>Cómo se calculó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide the working</source>
        <translation>Ocultar el cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide what else it does</source>
        <translation>Ocultar qué más hace</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>There is nothing to show yet.</source>
        <extracomment>AnswerPanel.set_stale</extracomment>
        <translation>Aún no hay nada que mostrar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_parts.py"/>
        <source>No figure yet</source>
        <extracomment>Figure.set_figure</extracomment>
        <translation>Aún sin cifra</translation>
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
        <translation>Cuándo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>What</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Qué</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Holds</source>
        <translation>Contiene</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Backups</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Copias</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Restore this copy</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Restaurar esta copia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Save a copy elsewhere</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Guardar una copia en otro sitio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Open the folder</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Abrir la carpeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>One log for several &amp;laptops</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Un registro para varios &amp;portátiles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Yes, restore it</source>
        <extracomment>BackupsWindow.__init__, NoticePage.__init__</extracomment>
        <translation>&amp;Sí, restaurarla</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Keep the log as it is</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Dejar el registro como está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Copies of the log</source>
        <extracomment>BackupsWindow._list</extracomment>
        <translation>Copias del registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Choose a copy of the list that can be read.</source>
        <extracomment>BackupsWindow._selected</extracomment>
        <translation>Elija de la lista una copia que se pueda leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Save a copy of the log</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Guardar una copia del registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Log (*.sqlite)</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Registro (*.sqlite)</translation>
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
        <translation>La medición {number} duró</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run {number} gave</source>
        <extracomment>Runs.__init__</extracomment>
        <translation>La medición {number} dio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run it {text}&#xa0;s</source>
        <extracomment>Runs.propose</extracomment>
        <translation>Hacerla funcionar {text}&#xa0;s</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Calibration</source>
        <extracomment>CalibrationStep.__init__, calibration</extracomment>
        <translation>Calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>&amp;New calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>&amp;Calibración nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Remove calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Retirar calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Running hours</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Horas de marcha</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Measured with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Medido con</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Finest line of the cylinder</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>División más fina</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Last digit of the scale</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Última cifra, báscula</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Water</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>its density counts</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>su densidad cuenta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>By</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Por</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Timed with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Cronometrado con</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Doses in a run</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Dosis por medición</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Air pressure</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Presión del aire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>The head has run {said}.</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>El cabezal ha funcionado {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Take {text}&#xa0;h</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>Tomar {text}&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>NOT A PLAN</source>
        <translation>NO ES UN PLAN</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Save card</source>
        <extracomment>CardActions.__init__, QuestionWindow.__init__</extracomment>
        <translation>&amp;Guardar tarjeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Save the dose card as a PDF file</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>Guardar la tarjeta de dosis como archivo PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Print card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>&amp;Imprimir tarjeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Look at card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>&amp;Ver tarjeta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>There is no plan yet: the sheet has no answer.</source>
        <extracomment>CardActions.__init__, CardActions.set_plan, CardActions.forget</extracomment>
        <translation>Aún no hay plan: la hoja no tiene respuesta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>dose card {plan_id}.pdf</source>
        <extracomment>CardActions._save</extracomment>
        <translation>tarjeta de dosis {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} saved as {path}. Take down the older one.</source>
        <extracomment>CardActions.write</extracomment>
        <translation>Tarjeta {plan_id} guardada como {path}. Descuelgue la anterior.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No printer is set up on this computer. Save the card as PDF instead.</source>
        <extracomment>CardActions._print</extracomment>
        <translation>No hay ninguna impresora en este ordenador. Guarde la tarjeta en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} sent to the printer. Take down the older one.</source>
        <extracomment>CardActions.send</extracomment>
        <translation>Tarjeta {plan_id} enviada a la impresora. Descuelgue la anterior.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No card is made. {why}</source>
        <extracomment>CardActions._allowed</extracomment>
        <translation>No se hace ninguna tarjeta. {why}</translation>
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
        <translation>Tarjeta de dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>Paper</source>
        <extracomment>CardPreview.__init__</extracomment>
        <translation>Papel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>As a copier sees it, &amp;black and white only</source>
        <extracomment>CardPreview.__init__</extracomment>
        <translation>Como la ve una copiadora, solo en &amp;blanco y negro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>The first {count} of {made} pages; all of them are printed and saved.</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Las primeras {count} de {made} páginas; todas se imprimen y se guardan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>Page {page} of {made}: {title}</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Página {page} de {made}: {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Drag the ring, or press Shift and an arrow key:</source>
        <translation>Arrastre el anillo, o pulse Mayús y una flecha:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Chart of the correction</source>
        <extracomment>RampChart.__init__</extracomment>
        <translation>Gráfico de la corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>This is the fastest allowed. </source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>Es lo más rápido permitido. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>{held}Reaches {target} on {ends}. Escape takes it back.</source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>{held}Llega a {target} el {ends}. Escape lo devuelve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>Wed 28 Nov</source>
        <extracomment>time_ticks</extracomment>
        <translation>mié 28 nov</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>May 2026</source>
        <extracomment>long_ticks</extracomment>
        <translation>mayo 2026</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;drawing (SVG)</source>
        <translation>Guardar como &amp;dibujo (SVG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;picture (PNG)</source>
        <translation>Guardar como &amp;imagen (PNG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save the &amp;figures (CSV)</source>
        <translation>Guardar las &amp;cifras (CSV)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Drawing (*.svg)</source>
        <translation>Dibujo (*.svg)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Picture (*.png)</source>
        <translation>Imagen (*.png)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Spreadsheet as CSV (*.csv)</source>
        <translation>Hoja de cálculo en CSV (*.csv)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart</source>
        <translation>Guardar este gráfico</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart as a drawing, a picture or its figures (Ctrl+Shift+S)</source>
        <translation>Guardar este gráfico como dibujo, imagen o cifras (Ctrl+Mayús+S)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Saved {name}.</source>
        <translation>Guardado: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>The chart could not be written there. Choose another folder.</source>
        <translation>El gráfico no se pudo escribir ahí. Elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_paint.py"/>
        <source>Title</source>
        <extracomment>picture</extracomment>
        <translation>Título</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_paint.py"/>
        <source>Description</source>
        <extracomment>picture</extracomment>
        <translation>Descripción</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <source>mL each dose</source>
        <extracomment>Picture.arrange</extracomment>
        <translation>mL por dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <source>aragonite</source>
        <extracomment>Picture._show_water</extracomment>
        <translation>aragonito</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines; Shift and an arrow key choose a slower pace.</source>
        <translation>Las flechas leen las líneas; Mayús y una flecha eligen un ritmo más lento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines.</source>
        <translation>Las flechas leen las líneas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>plan {plan} {view_unit} ({low} to {high})</source>
        <extracomment>reading_at</extracomment>
        <translation>plan {plan} {view_unit} ({low} a {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>pH {before}, after a dose {after}</source>
        <extracomment>_water_at</extracomment>
        <translation>pH {before}, tras una dosis {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{at} {m_value} {view_unit}, {place} the band</source>
        <extracomment>_retests</extracomment>
        <translation>{at} {m_value} {view_unit}, {place} de la banda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Readings: {said}. </source>
        <extracomment>_retests</extracomment>
        <translation>Lecturas: {said}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>No reading since the start. </source>
        <extracomment>_retests</extracomment>
        <translation>Ninguna lectura desde el inicio. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{title} from {measured} to {target} {view_unit}, reached on {ramp_end}, with {size} doses shown. At the end of the chart: {ends}. {view}{keys_followed}</source>
        <extracomment>in_words</extracomment>
        <translation>{title} de {measured} a {target} {view_unit}, alcanzado el {ramp_end}, con {size} dosis mostradas. Al final del gráfico: {ends}. {view}{keys_followed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/clock_field.py"/>
        <source>{quantity}, time of day</source>
        <extracomment>ClockField.set_spoken_name</extracomment>
        <translation>{quantity}, hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>There is no plan to follow now, so there are no contingency cards. Take down those of an older plan.</source>
        <translation>Ahora no hay ningún plan que seguir, así que no hay tarjetas de contingencia. Descuelgue las de un plan anterior.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Contingency cards</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>&amp;Tarjetas de contingencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Four cards for whoever looks after the tank: high test, missed days, failed pump, new batch.</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Cuatro tarjetas para quien cuida del acuario: prueba alta, días perdidos, bomba averiada, preparación nueva.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Save all as PDF</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>&amp;Guardar todo en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Print all</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>&amp;Imprimir todo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} saved as {path}. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.write</extracomment>
        <translation>Tarjetas de contingencia del plan {plan_id} guardadas como {path}. Cuélguelas junto a su tarjeta de dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} sent to the printer. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.send</extracomment>
        <translation>Tarjetas de contingencia del plan {plan_id} enviadas a la impresora. Cuélguelas junto a su tarjeta de dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>contingency cards {plan_id}.pdf</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>tarjetas de contingencia {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Save contingency cards as PDF</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>Guardar tarjetas de contingencia en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>No printer is set up on this computer. Save the cards as PDF instead.</source>
        <extracomment>ContingencyActions._print</extracomment>
        <translation>No hay ninguna impresora en este ordenador. Guarde las tarjetas en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The water</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>El agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Subir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>How the volume is known</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Cómo se conoce el volumen</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Measured</source>
        <extracomment>CorrectForm._water, LogForm._make_fields</extracomment>
        <translation>Medido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Net volume</source>
        <extracomment>CorrectForm._water, net volume</extracomment>
        <translation>Volumen neto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Within</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Más o menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Alkalinity now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Alcalinidad ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Calcium now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Calcio ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Evaporates</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Se evapora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Name of the system</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Nombre del sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The change</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>El cambio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise to</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Subir a</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>At most</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Como máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Used by the tank</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Consumido por el acuario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Needed only to go beyond the recommended rise; printed on the card.</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Solo hace falta para superar la subida recomendada; se imprime en la tarjeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Reason for a faster rise</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Razón de ir más rápido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The additive</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>El aditivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New &amp;jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>&amp;Bidón nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Retirar bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Jug on the shelf</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Bidón en el estante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>What is in it</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Qué contiene</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>And of the second</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Y del segundo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed on</source>
        <extracomment>CorrectForm._additive, StockForm._label</extracomment>
        <translation>Preparado el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>By its label, a dose of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Etiqueta: una dosis de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>in water of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>en agua de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>raises by</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>sube en</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Name of the jug</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Nombre del bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Pureza</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Coolest it gets</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Lo más frío que está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>The pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>La bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New p&amp;ump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>B&amp;omba nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Retirar bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Flow</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Caudal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Doses a day</source>
        <extracomment>CorrectForm._pump, PumpForm._pump, TimetableForm._make</extracomment>
        <translation>Dosis al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Step</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Paso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Runs at most</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Funciona como máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Name of the pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Nombre de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed jug</source>
        <translation>Bidón sin nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/foods_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed pump</source>
        <extracomment>FoodsRecords.pumps</extracomment>
        <translation>Bomba sin nombre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>This batch is not in the jug yet. Put it in on the Stocks sheet before a card is made.</source>
        <translation>Esta preparación aún no está en el bidón. Póngala en el bidón, en la hoja Soluciones, antes de hacer una tarjeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>The ramp appears here as soon as the question is complete.</source>
        <translation>La rampa aparece aquí en cuanto la pregunta esté completa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No jug is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>No se ha elegido ningún bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No pump is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>No se ha elegido ninguna bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Add a system to begin.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Añada un sistema para empezar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No plan, so no ramp.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Sin plan no hay rampa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Use {use}</source>
        <extracomment>CorrectSheet._offer_use</extracomment>
        <translation>Usar {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Spreadsheet as CSV (*.csv *.CSV *.tsv *.txt);;Every file (*)</source>
        <translation>Hoja de cálculo en CSV (*.csv *.CSV *.tsv *.txt);;Todos los archivos (*)</translation>
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
        <translation>Elegir una hoja de cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Calendar (*.ics)</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Calendario (*.ics)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Wrong</source>
        <translation>Mal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due soon</source>
        <translation>Pronto pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>What is wrong and what is due</source>
        <extracomment>DutyList.__init__</extracomment>
        <translation>Lo que está mal y lo que está pendiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Save card as PDF</source>
        <translation>&amp;Guardar tarjeta en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Save emergency card as PDF</source>
        <translation>Guardar tarjeta de emergencia en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Look at emergency card</source>
        <translation>Ver tarjeta de emergencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card</source>
        <extracomment>EmergencyActions.__init__</extracomment>
        <translation>tarjeta de emergencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card.pdf</source>
        <extracomment>EmergencyActions.file_name</extracomment>
        <translation>tarjeta de emergencia.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Nothing to show yet. What is exchanged is entered at the left.</source>
        <translation>Aún nada que mostrar. Lo que se cambia se escribe a la izquierda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>settles</source>
        <translation>se estabiliza</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Chart of the exchange</source>
        <extracomment>ExchangeChart.__init__</extracomment>
        <translation>Gráfico del cambio de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>{spoken} The arrow keys read it day by day.</source>
        <extracomment>ExchangeChart.render, TogetherChart.render</extracomment>
        <translation>{spoken} Las flechas lo leen día a día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>natural seawater, assumed</source>
        <translation>agua de mar natural, supuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>as the tank, assumed</source>
        <translation>como el acuario, supuesto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>How it is said</source>
        <extracomment>ExchangeForm.__init__</extracomment>
        <translation>Cómo se dice</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The two pumps</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Las dos bombas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Out and in, each</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Salida y entrada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Batch change</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Cambio de golpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Once in so many days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Una vez en tantos días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old water out</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Sale agua vieja</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Entra agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Bidón de agua vieja: cabe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Bidón de agua nueva: cabe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Look ahead, days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Mirar adelante, días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The new water</source>
        <extracomment>ExchangeForm._new_water</extracomment>
        <translation>El agua nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The mixing bucket</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>El cubo de mezcla</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in it</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Agua nueva en él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>By the label: salt mix</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Según la etiqueta: sales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>in so much water</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>en tanta agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>gives salinity</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>da una salinidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Salinity found</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Salinidad hallada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>when all is clear</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>cuando todo está claro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>What leaves besides</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>Lo que sale además</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>{name}, per day</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>{name}, al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>by skimmer, algae, media</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>por espumador, algas, medios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No system yet. Add one in the list at the left.</source>
        <translation>Aún no hay sistema. Añada uno en la lista de la izquierda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Enter what the two pumps move in a day.</source>
        <translation>Escriba lo que las dos bombas mueven en un día.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The Upkeep sheet has no plan for what is used, so no dosing is reckoned with.</source>
        <translation>La hoja Mantenimiento no tiene plan para lo que se consume, así que no se cuenta con ninguna dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No figures of {names} yet: nothing is reckoned of it. See the Foods sheet.</source>
        <translation>Aún no hay cifras de {names}: no se calcula nada de ello. Vea la hoja Alimentos.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Every value</source>
        <translation>Todos los valores</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The pair and its jugs</source>
        <translation>El par y sus bidones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>What the dosing plan becomes</source>
        <translation>Lo que pasa a ser el plan de dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To be known</source>
        <translation>Para saber</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>Now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>Ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Settles at</source>
        <translation>Se estabiliza en</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To keep it where it is</source>
        <translation>Para mantenerlo donde está</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>with it</source>
        <translation>con él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>a day</source>
        <translation>al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show</source>
        <extracomment>ExchangeSheet.__init__, LogSheet.__init__</extracomment>
        <translation>Mostrar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Open it on the &amp;Correct sheet</source>
        <extracomment>ExchangeSheet.__init__</extracomment>
        <translation>Abrir en la hoja &amp;Corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Correct {parameter}</source>
        <extracomment>FindActions._doings</extracomment>
        <translation>Corregir: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>on the {sheet} sheet</source>
        <extracomment>FindActions._elsewhere</extracomment>
        <translation>en la hoja {sheet}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Explain the field with the focus</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Explicar el campo activo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the glossary</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Mostrar el glosario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the guide</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Mostrar la guía</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Not possible now.</source>
        <extracomment>FindActions._why_not</extracomment>
        <translation>Ahora no es posible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Find an action, a sheet, a system, a jug, a pump or a word of the trade</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Encontrar una acción, hoja, sistema, bidón, bomba o palabra del oficio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>What was found</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Lo encontrado</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>{n} found</source>
        <extracomment>for 1: {n} found; FinderPanel._search</extracomment>
        <translation>
            <numerusform>{n} hallado</numerusform>
            <numerusform>{n} hallados</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Nothing has these words.</source>
        <extracomment>FinderPanel._search</extracomment>
        <translation>Nada tiene estas palabras.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>This plan was kept by another version and cannot be read, so it must not be followed. End it, then plan again from a fresh reading.</source>
        <translation>Este plan lo guardó otra versión y no se puede leer, así que no debe seguirse. Termínelo, y planifique de nuevo con una lectura reciente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show the &amp;plan</source>
        <translation>Mostrar el &amp;plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show a new &amp;correction</source>
        <translation>Mostrar una &amp;corrección nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Readings since the start</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Lecturas desde el inicio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Hide the readings</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Ocultar las lecturas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Chart of the plan that is followed</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Gráfico del plan que se sigue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;Note a reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>&amp;Anotar una lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan a&amp;gain from the reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>&amp;Nuevo plan con la lectura</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;End this plan</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>&amp;Terminar este plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>It is too high: see &amp;Recovery</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Demasiado alto: ver &amp;Recuperación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} cannot be read.</source>
        <extracomment>FollowPage._say</extracomment>
        <translation>El plan {plan_id} no se puede leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>There is no reading to go on from yet.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>Aún no hay lectura desde la que seguir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>No ramp can be drawn of it.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>No se puede dibujar ninguna rampa de él.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>The reading stands in the form. The plan goes on until another is started.</source>
        <extracomment>FollowPage._plan_again</extracomment>
        <translation>La lectura está en el formulario. El plan sigue hasta que empiece otro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>stop rule</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>regla de parada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>ended by hand</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>terminado a mano</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Ended plan {plan_id} for {parameter}: {reason}.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Terminado el plan {plan_id} para {parameter}: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} has ended. Take its card down and stop the pump.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>El plan {plan_id} ha terminado. Descuelgue su tarjeta y pare la bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>Chart of nitrate and phosphate</source>
        <extracomment>FoodsChart.__init__</extracomment>
        <translation>Gráfico de nitrato y fosfato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>{week}&#xa0;weeks</source>
        <extracomment>FoodsChart._paint</extracomment>
        <translation>{week}&#xa0;semanas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>El alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Name of the food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Nombre del alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What it is</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Qué es</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Opened on</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Abierto el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2026-11-25</source>
        <extracomment>FoodsForm._food, PumpForm._head, StockForm._label</extracomment>
        <translation>como 2026-11-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Keeps once opened, days</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Se conserva abierto, días</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as its label says</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>como dice su etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Kept cold</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>En frío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>In the jug when opened</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>En el bidón al abrirlo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The label says</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>La etiqueta dice</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Nitrógeno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>como N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Phosphorus</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Fósforo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as P, not as P2O5</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>como P, no como P2O5</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Proteína</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>÷ 6.25 is nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>÷ 6,25 es nitrógeno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen, if it says so</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Nitrógeno, si lo dice</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N; goes before protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>como N; antes que la proteína</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Density</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Densidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as heavy as water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>como el agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>It raises</source>
        <extracomment>FoodsForm._carries, StockForm._contents</extracomment>
        <translation>Sube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>So many mL</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Tantos mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>raise so much water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>suben tanta agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>El día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Given in a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Se da en un día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Feedings a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Tomas al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or the pump's doses a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>o las dosis al día de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Is it given</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Se da</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By which pump</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Con qué bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By hand, or another pump</source>
        <extracomment>FoodsForm._day, FoodsForm.set_pumps</extracomment>
        <translation>A mano, u otra bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The line</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>El tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, inside</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Tubo, interior</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or as its pump has it</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>o como lo tiene su bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, length</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Tubo, longitud</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>from jug to water</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>del bidón al agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>No food yet. Press Add a food.</source>
        <translation>Aún no hay alimento. Pulse Añadir un alimento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Foods of this system</source>
        <translation>Alimentos de este sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Jug and line</source>
        <translation>Bidón y tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>What all of them bring</source>
        <translation>Lo que aportan todos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Where food takes it, without doses and use</source>
        <translation>Adónde lo lleva el alimento, sin dosis ni consumo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Add a foo&amp;d</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>Añadir un &amp;alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Re&amp;move this food</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>&amp;Retirar este alimento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no system yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Aún no hay ningún sistema.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no food yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Aún no hay ningún alimento.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Answer</source>
        <extracomment>Column.__init__, QuestionWindow.__init__</extracomment>
        <translation>Respuesta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>There is no answer yet.</source>
        <extracomment>Column.focusInEvent, RecoverySheet._show_noted</extracomment>
        <translation>Aún no hay respuesta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More</source>
        <extracomment>Step.__init__, Step.open</extracomment>
        <translation>Más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More about {title}</source>
        <extracomment>Step.__init__</extracomment>
        <translation>Más sobre: {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>Less</source>
        <extracomment>Step.open</extracomment>
        <translation>Menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Glossary</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Glosario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Find a word</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Buscar una palabra</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Words of the trade</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Palabras del oficio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>See also</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Véase también</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>&amp;Back</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Back to the term before</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Volver al término anterior</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>No such word here.</source>
        <extracomment>GlossaryWindow._list</extracomment>
        <translation>Esa palabra no está aquí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>This is the first term that was looked at.</source>
        <extracomment>GlossaryWindow._chosen</extracomment>
        <translation>Es el primer término que se miró.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Show {term}</source>
        <extracomment>GlossaryWindow._show_links</extracomment>
        <translation>Mostrar {term}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Guide</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Guía</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Chapters</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Capítulos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Show the help</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Mostrar la ayuda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Help: glossary and guide. F1 in a field says why it is there.</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Ayuda: glosario y guía. F1 en un campo dice por qué está ahí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>&amp;Glossary</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>&amp;Glosario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>G&amp;uide</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>G&amp;uía</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>F1 in a field says why it is there</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>F1 en un campo dice por qué está ahí</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>Why this is asked (F1)</source>
        <extracomment>WhyMark.__init__</extracomment>
        <translation>Por qué se pregunta esto (F1)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>F1 again: glossary. Escape: close.</source>
        <extracomment>WhySlip.__init__</extracomment>
        <translation>F1 otra vez: glosario. Escape: cerrar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose a cell to read what becomes of it.</source>
        <translation>Elija una celda para leer en qué se convierte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Stopped. Nothing was imported.</source>
        <translation>Detenido. No se importó nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose another &amp;file</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Elegir otro &amp;archivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>What becomes of the chosen cell</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>En qué se convierte la celda elegida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Show only &amp;rows with something wrong</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Mostrar solo &amp;filas con fallos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>&amp;Stop</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>&amp;Parar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Importar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Close</source>
        <extracomment>ImportPage._make_parts, QuestionWindow.__init__</extracomment>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The file is being read.</source>
        <extracomment>ImportPage._look, ImportPage._came</extracomment>
        <translation>Se está leyendo el archivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>{done} of about {most} rows are read.</source>
        <extracomment>ImportPage._came</extracomment>
        <translation>Leídas {done} de unas {most} filas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing can be imported yet: see the questions at the left.</source>
        <extracomment>ImportPage._show_button</extracomment>
        <translation>Aún no se puede importar nada: vea las preguntas de la izquierda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The readings are being imported.</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>Se están importando las lecturas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing was imported. {reason}</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>No se importó nada. {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose these first</source>
        <translation>Elija primero esto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed. See whether it is right</source>
        <translation>Adivinado. Vea si está bien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>As the file says</source>
        <translation>Como dice el archivo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>To be chosen.</source>
        <translation>Por elegir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed.</source>
        <translation>Adivinado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Read in the file.</source>
        <translation>Leído en el archivo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Chosen by you.</source>
        <translation>Elegido por usted.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose</source>
        <extracomment>PointRow.__init__</extracomment>
        <translation>Elegir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What is wrong with it</source>
        <translation>Qué tiene de malo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not likely: </source>
        <translation>▲ Poco probable: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>There twice: </source>
        <translation>Está dos veces: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not taken: </source>
        <translation>▲ No tomado: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What the import would take</source>
        <extracomment>PreviewTable.__init__</extracomment>
        <translation>Lo que tomaría la importación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line {line}: {current}</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Línea {line}: {current}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Taken as it is shown.</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Tomado como se muestra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file cannot be opened. See whether it is still there, and may be read.</source>
        <translation>El archivo no se puede abrir. Vea si sigue ahí y si se puede leer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file could not be read to its end. Choose it again.</source>
        <translation>El archivo no se pudo leer hasta el final. Elíjalo de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>low</source>
        <extracomment>JugModel.data</extracomment>
        <translation>bajo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>All jugs, what is in them and how long they last</source>
        <extracomment>JugList.__init__</extracomment>
        <translation>Todos los bidones, qué hay en ellos y cuánto duran</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>No jug is on the shelf yet. Add one at the left.</source>
        <translation>Aún no hay bidones en el estante. Añada uno a la izquierda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Primed no&amp;w: liquid at the outlet</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>&amp;Cebado ahora: líquido en la salida</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Remove this level</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Retirar este nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>It holds, when full</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Cabe en él, lleno</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Below the intake</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Bajo la toma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>A level is read to</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Un nivel se lee con</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills of this jug</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Niveles y rellenados de este bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Read the level</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Leer el nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The jug itself</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>El propio bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Niveles y rellenados</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>else as its batch says</source>
        <extracomment>JugPage._render</extracomment>
        <translation>si no, como dice su preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>give or take; usually 1&#xa0;% of it</source>
        <extracomment>JugPage._render</extracomment>
        <translation>de error; suele ser 1&#xa0;% de él</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>what the pump cannot reach</source>
        <extracomment>JugPage._render</extracomment>
        <translation>lo que la bomba no alcanza</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Choose a level of the list first.</source>
        <extracomment>JugPage._chosen</extracomment>
        <translation>Elija antes un nivel de la lista.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is noted.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>El nivel está anotado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>El rellenado está anotado. Siga con la próxima dosis; no se compensa nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Prime the line before the next dose.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>El rellenado está anotado. Cebe el tubo antes de la próxima dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The line is primed. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._primed_now</extracomment>
        <translation>El tubo está cebado. Siga con la próxima dosis; no se compensa nada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is off the list. Undo brings it back.</source>
        <extracomment>JugPage._remove</extracomment>
        <translation>El nivel ya no está en la lista. Deshacer lo devuelve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>{pump} is set by the new flow.</source>
        <extracomment>JugPage._use_flow</extracomment>
        <translation>{pump}: ajustada con el nuevo caudal.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Cards {cards} are out of date: print again before the pump is set.</source>
        <extracomment>for 1: Card {cards} is out of date: print again before the pump is set.; JugPage._use_flow</extracomment>
        <translation>
            <numerusform>La tarjeta {cards} ya no está al día: imprima de nuevo antes de ajustar la bomba.</numerusform>
            <numerusform>Las tarjetas {cards} ya no están al día: imprima de nuevo antes de ajustar la bomba.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not looked at</source>
        <translation>Sin mirar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not known</source>
        <translation>Desconocido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>What the levels say of the pump</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Lo que los niveles dicen de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Look at this, in this order:</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Mire esto, en este orden:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>&amp;Use this flow</source>
        <extracomment>CheckPanel.__init__, PumpsSheet.__init__</extracomment>
        <translation>&amp;Usar este caudal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>If the whole jug ran in at once</source>
        <extracomment>RunInPanel.__init__</extracomment>
        <translation>Si todo el bidón se vaciara de golpe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Before the jug is connected</source>
        <extracomment>ChecklistPanel.__init__</extracomment>
        <translation>Antes de conectar el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No jug yet</source>
        <translation>Aún no hay bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>Plan an a&amp;bsence</source>
        <translation>Planificar una au&amp;sencia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>&amp;Back to the jug</source>
        <translation>&amp;Volver al bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs</source>
        <extracomment>JugsSheet.__init__, JugsSheet._headline</extracomment>
        <translation>Todos los bidones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>to stop</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>por parar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>with a pump off</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>con una bomba desviada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs: {said}</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>Todos los bidones: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Save label as PDF</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Guardar etiqueta en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Print label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Imprimir etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Look at label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Ver etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>There is no label yet: the batch is not complete.</source>
        <extracomment>LabelActions.__init__, LabelActions.set_label</extracomment>
        <translation>Aún no hay etiqueta: la preparación no está completa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label saved as {path}.</source>
        <extracomment>LabelActions.write</extracomment>
        <translation>Etiqueta guardada como {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label sent to the printer.</source>
        <extracomment>LabelActions.send</extracomment>
        <translation>Etiqueta enviada a la impresora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>jug label {batch}.pdf</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>etiqueta {batch}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>No printer is set up on this computer. Save the label as PDF instead.</source>
        <extracomment>LabelActions._print</extracomment>
        <translation>No hay ninguna impresora en este ordenador. Guarde la etiqueta en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Jug label</source>
        <extracomment>LabelActions._look</extracomment>
        <translation>Etiqueta del bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>This batch has no label yet.</source>
        <extracomment>LabelActions._show_preview</extracomment>
        <translation>Esta preparación aún no tiene etiqueta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Mixed anew? Put the new batch in the jug on the Stocks sheet as well: cards made for another strength become void there.</source>
        <translation>¿Preparado de nuevo? Ponga también la preparación nueva en el bidón en la hoja Soluciones: allí se anulan las tarjetas hechas para otra concentración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Is the line primed? Run the pump until liquid stands at the outlet.</source>
        <translation>¿Está cebado el tubo? Haga funcionar la bomba hasta que haya líquido en la salida.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level now</source>
        <extracomment>LevelForm.__init__, LevelForm._show_refill</extracomment>
        <translation>Nivel ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level before the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Nivel antes de rellenar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Who</source>
        <extracomment>LevelForm.__init__, LogForm._make_fields</extracomment>
        <translation>Quién</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>now, unless you say when</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>ahora, si no dice cuándo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Note this level</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Anotar este nivel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Jug &amp;refilled</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Bidón &amp;rellenado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Liquid at the &amp;outlet: note the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Líquido en la &amp;salida: anotar el rellenado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Not primed &amp;yet: note it so</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Aún sin cebar: anotarlo así</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Go back</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level after the refill</source>
        <extracomment>LevelForm._show_refill</extracomment>
        <translation>Nivel tras rellenar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>sets the pace</source>
        <translation>marca el ritmo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>over the limit</source>
        <translation>por encima del límite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>Far from their limits</source>
        <translation>Lejos de sus límites</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>How near each limit is</source>
        <extracomment>LimitBars.__init__</extracomment>
        <translation>Lo cerca que está cada límite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Quarter</source>
        <translation>Trimestre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>mL given</source>
        <translation>mL dados</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>No readings yet. What is noted at the left appears here.</source>
        <translation>Aún no hay lecturas. Lo que se anota a la izquierda aparece aquí.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Chart of the log</source>
        <extracomment>LogChart.__init__</extracomment>
        <translation>Gráfico del registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {size} water exchanges</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {size} cambios de agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {projected} plans drawn as dashed lines</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {projected} planes dibujados a trazos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>{title}: {size} readings, {size_2} doses{exchanges}{plans}. The last: {reading_words}. Plus and minus zoom, the arrow keys move, with Shift they read one reading after the other.</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>{title}: {size} lecturas, {size_2} dosis{exchanges}{plans}. La última: {reading_words}. Más y menos cambian la escala, las flechas mueven, con Mayús leen una lectura tras otra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Saved.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Guardado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Logged.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Anotado.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The spreadsheet could not be written there. Choose another folder.</source>
        <translation>La hoja de cálculo no se pudo escribir ahí. Elija otra carpeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The log could not be read to its end. No spreadsheet was written.</source>
        <translation>El registro no se pudo leer hasta el final. No se escribió ninguna hoja de cálculo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>There are no readings to save.</source>
        <translation>No hay lecturas que guardar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>Saved {readings} as {path}.</source>
        <extracomment>write</extracomment>
        <translation>Guardado: {readings}, como {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>&amp;Log it</source>
        <extracomment>LogForm.__init__, LogForm.show_entry</extracomment>
        <translation>&amp;Anotar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Leave it as it was</source>
        <extracomment>LogForm.__init__</extracomment>
        <translation>Dejarlo como estaba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note in the log</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Anotar en el registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>From the jug</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Del bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Exchanged</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Cambiado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Kit</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Kit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Sa&amp;ve the change</source>
        <extracomment>LogForm.show_entry</extracomment>
        <translation>&amp;Guardar el cambio</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Besides</source>
        <translation>Además</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Entries of the log</source>
        <extracomment>LogList.__init__</extracomment>
        <translation>Entradas del registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Show the plan</source>
        <translation>Mostrar el plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>{alike}, was noted {at}{by}. Is this another one?</source>
        <extracomment>LogQuestions.before</extracomment>
        <translation>{alike}, se anotó {at}{by}. ¿Es esta otra?</translation>
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
        <translation>Antes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Later</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Después</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to earlier readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Mover el gráfico a lecturas anteriores</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to later readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Mover el gráfico a lecturas posteriores</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show on the chart: {span}</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Mostrar en el gráfico: {span}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Change entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>&amp;Cambiar entrada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Remove entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>&amp;Retirar entrada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Use per day, learned from the log</source>
        <extracomment>LogSheet._lay_out</extracomment>
        <translation>Consumo diario, aprendido del registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Being worked out.</source>
        <extracomment>LogSheet._show_learned</extracomment>
        <translation>Calculando.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Choose an entry of the list first.</source>
        <extracomment>LogSheet._selected</extracomment>
        <translation>Elija antes una entrada de la lista.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Removed. Undo brings it back.</source>
        <extracomment>LogSheet._remove</extracomment>
        <translation>Retirado. Deshacer lo devuelve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>&amp;Import from a spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>&amp;Importar de una hoja de cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Save as &amp;spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>Guardar como &amp;hoja de cálculo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>{name} readings.csv</source>
        <extracomment>LogTransfer._ask_where</extracomment>
        <translation>{name} lecturas.csv</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>The readings are being read.</source>
        <extracomment>LogTransfer._save</extracomment>
        <translation>Se están leyendo las lecturas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Stopped. No spreadsheet was written.</source>
        <extracomment>LogTransfer._ended</extracomment>
        <translation>Detenido. No se escribió ninguna hoja de cálculo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/main_window.py"/>
        <source>Opening the fish room</source>
        <extracomment>MainWindow.__init__</extracomment>
        <translation>Abriendo la sala de acuarios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Try again</source>
        <extracomment>NoticePage.__init__</extracomment>
        <translation>&amp;Intentar de nuevo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Slower</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Más lento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Faster</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Más rápido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a slower pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Elegir un ritmo más lento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a faster pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Elegir un ritmo más rápido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>This is the fastest pace allowed.</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>Es el ritmo más rápido permitido.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {page} yet: the sheet has no answer.</source>
        <extracomment>PageActions._dress, PageActions.changed</extracomment>
        <translation>Aún no hay {page}: la hoja no tiene respuesta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>It is still being worked out.</source>
        <extracomment>PageActions.halt</extracomment>
        <translation>Aún se está calculando.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} saved as {path}.</source>
        <extracomment>PageActions.write</extracomment>
        <translation>Guardado: {named}, como {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} sent to the printer.</source>
        <extracomment>PageActions.send</extracomment>
        <translation>Enviado a la impresora: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>No printer is set up on this computer. Save the {named} as PDF instead.</source>
        <extracomment>PageActions._print</extracomment>
        <translation>No hay ninguna impresora en este ordenador. Guárdelo en PDF: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>Save {named} as PDF</source>
        <extracomment>PageActions._save</extracomment>
        <translation>Guardar en PDF: {named}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {named} now. Take down an older one.</source>
        <extracomment>PageActions._show_preview</extracomment>
        <translation>Ahora no hay {named}. Descuelgue lo anterior.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>S&amp;tart</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>&amp;Empezar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Follow this correction from now on, and note it in the log</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Seguir esta corrección desde ahora, y anotarlo en el registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Not started. {why}</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>No empezado. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>The card of this very plan is out of use. Change the question, or wait a minute, then start.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>La tarjeta de este mismo plan está fuera de uso. Cambie la pregunta, o espere un minuto, y empiece.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Plan {plan_id} is started. Hang its card on the stand and take down the older one.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>El plan {plan_id} ha empezado. Cuelgue su tarjeta del mueble y descuelgue la anterior.</translation>
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
        <translation>Caudal en uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head and line</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Cabezal y tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Outlet above the water</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Salida sobre el agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head fitted on</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Cabezal puesto el</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours it has run</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Horas funcionadas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>by now, where it counts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>hasta ahora, si las cuenta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours a head lasts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Horas que dura un cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Tubing</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Tubo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>No pump yet</source>
        <translation>Aún no hay bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>What follows</source>
        <translation>Lo que sigue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Before it runs by itself</source>
        <translation>Antes de que funcione sola</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today</source>
        <extracomment>PumpsSheet.__init__</extracomment>
        <translation>Usar el caudal &amp;esperado hoy</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Calibrations of this pump</source>
        <extracomment>PumpsSheet._lay_out</extracomment>
        <translation>Calibraciones de esta bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has no calibration yet.</source>
        <extracomment>PumpsSheet.recompute</extracomment>
        <translation>La bomba aún no tiene calibración.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has this flow already</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>La bomba ya tiene este caudal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Only the newest calibration counts</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Solo cuenta la última calibración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today, {expected}</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Usar el caudal &amp;esperado hoy, {expected}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Card {plan_id} must not be followed. {why} Print a new card.</source>
        <extracomment>PumpsSheet._notes, StocksSheet._note</extracomment>
        <translation>La tarjeta {plan_id} no debe seguirse. {why} Imprima una tarjeta nueva.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>With this flow, cards {cards} are no longer right. Print new ones after using it.</source>
        <extracomment>for 1: With this flow, card {cards} is no longer right. Print new ones after using it.; PumpsSheet._notes</extracomment>
        <translation>
            <numerusform>Con este caudal, la tarjeta {cards} ya no es correcta. Imprima una nueva tras usarlo.</numerusform>
            <numerusform>Con este caudal, las tarjetas {cards} ya no son correctas. Imprima nuevas tras usarlo.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>None yet. Press New calibration, or fill in the runs.</source>
        <extracomment>PumpsSheet._list_calibrations</extracomment>
        <translation>Aún ninguna. Pulse Calibración nueva, o rellene las mediciones.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Doses are reckoned with {flow}&#xa0;mL per min from now on.</source>
        <extracomment>PumpsSheet._take_over</extracomment>
        <translation>Las dosis se calculan desde ahora con {flow}&#xa0;mL por min.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Cards {cards} are out of date: print new ones.</source>
        <extracomment>for 1: Card {cards} is out of date: print new ones.; _down</extracomment>
        <translation>
            <numerusform>La tarjeta {cards} ya no está al día: imprima una nueva.</numerusform>
            <numerusform>Las tarjetas {cards} ya no están al día: imprima nuevas.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Not converted: correct the number first, or relabel it.</source>
        <translation>No convertido: corrija antes el número, o cambie solo la unidad.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Unit of {quantity}</source>
        <extracomment>QuantityField._show_units</extracomment>
        <translation>Unidad de {quantity}</translation>
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
        <translation>Respondido solo con este archivo. No se consultó su registro, así que no cuenta nada dosificado antes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>There is no plan, so there is no card.</source>
        <extracomment>QuestionWindow.__init__</extracomment>
        <translation>No hay plan, así que no hay tarjeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Saved: {file}</source>
        <extracomment>QuestionWindow.write_card</extracomment>
        <translation>Guardado: {file}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Fish room</source>
        <translation>Sala de acuarios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Systems</source>
        <translation>Sistemas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add system</source>
        <translation>Añadir sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove system</source>
        <translation>Retirar sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Jugs</source>
        <translation>Bidones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Pumps</source>
        <translation>Bombas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>&amp;Add</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>Retirar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>The list is empty.</source>
        <extracomment>RecordsPane._fill</extracomment>
        <translation>La lista está vacía.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The water is cl&amp;oudy</source>
        <translation>El agua está tu&amp;rbia</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>There is a white fil&amp;m</source>
        <translation>Hay una pe&amp;lícula blanca</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>empty before a test</source>
        <translation>vacío antes de una prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The &amp;whole jug ran in</source>
        <extracomment>RecoveryForm.__init__</extracomment>
        <translation>Se vació &amp;todo el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Lo que entró</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>How much ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Cuánto entró</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is too high</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Lo que está demasiado alto</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Tested since</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Medido desde entonces</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>To come down to</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Bajar hasta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is seen</source>
        <extracomment>RecoveryForm._seen</extracomment>
        <translation>Lo que se ve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What can be done</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Lo que se puede hacer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Exchanged in a day at most</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Máximo cambiado al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>never more than half of the tank</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>nunca más de la mitad del acuario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Hold {name} too</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Suspender también: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>None: a test shows it</source>
        <extracomment>RecoveryForm.set_jugs</extracomment>
        <translation>Ninguno: lo muestra una prueba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Choose first what is too high.</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>Elija antes qué está muy alto.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>usually kept</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>se suele mantener</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Hold only</source>
        <translation>&amp;Solo suspender</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>E&amp;xchange</source>
        <translation>&amp;Cambiar agua</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Both</source>
        <translation>A&amp;mbos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does</source>
        <translation>Lo que hace cada opción</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Of each value: its end, in brackets the lowest and highest it comes to wherever in its interval the net volume lies, and the most it moves in 24&#xa0;hours.</source>
        <translation>De cada valor: su final, entre paréntesis lo más bajo y lo más alto a que llega esté donde esté el volumen neto en su intervalo, y lo máximo que se mueve en 24&#xa0;horas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Hold only</source>
        <translation>Solo suspender</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Both</source>
        <translation>Ambos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>May move in 24&#xa0;h</source>
        <translation>Puede moverse en 24&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>First, in this order: </source>
        <extracomment>StopList.__init__</extracomment>
        <translation>Primero, en este orden: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Choose: {choose}</source>
        <extracomment>ChoicePanel.__init__</extracomment>
        <translation>Elegir: {choose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>, chosen</source>
        <extracomment>ChoicePanel.render</extracomment>
        <translation>, elegido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does to every value</source>
        <extracomment>Choices.__init__</extracomment>
        <translation>Lo que cada opción hace a cada valor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>now {now}, may move {most}</source>
        <extracomment>_in_two</extracomment>
        <translation>ahora {now}, puede moverse {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>{end} ({low} to {high})
moves {moves}{own}</source>
        <extracomment>_cells</extracomment>
        <translation>{end} ({low} a {high})
se mueve {moves}{own}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Choose the jug that ran in first.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Elija antes el bidón que se vació.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Nobody wrote down what is in this jug. Type in how much ran in.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Nadie anotó qué hay en este bidón. Escriba cuánto entró.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>its level as last read</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>su nivel, el último leído</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>what was made up</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>lo que se preparó</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{left} is {what}, less the doses logged since. Doses nobody logged are not taken off.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>{left}: {what}, menos las dosis anotadas desde entonces. Las dosis que nadie anotó no se restan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{amount} ran in from {document}{contents}. </source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>Entraron {amount} de {document}{contents}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Emergency, found {date_words}. {what}{said}</source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>Emergencia, hallada el {date_words}. {what}{said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Say at the left what ran in, or what is too high. The list above holds before any figure is known.</source>
        <translation>Diga a la izquierda qué entró, o qué está demasiado alto. La lista de arriba vale antes de conocer ninguna cifra.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Choose a way: then it stands here day by day, and on the emergency card.</source>
        <translation>Elija un camino: entonces está aquí día a día, y en la tarjeta de emergencia.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>&amp;Note it in the log</source>
        <translation>&amp;Anotarlo en el registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>No way down was chosen yet.</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Aún no se eligió ninguna bajada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Chosen: {title}. {takes}</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Elegido: {title}. {takes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>It is in the log already.</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>Ya está en el registro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Noted in the log</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>Anotado en el registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>The emergency is noted in the log. Undo takes it out again.</source>
        <extracomment>RecoverySheet._note</extracomment>
        <translation>La emergencia está anotada en el registro. Deshacer la retira.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Bac&amp;kups</source>
        <extracomment>Room._foot</extracomment>
        <translation>&amp;Copias</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the backups</source>
        <extracomment>Room._foot</extracomment>
        <translation>Mostrar las copias de seguridad</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the settings</source>
        <extracomment>Room._foot</extracomment>
        <translation>Mostrar los ajustes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Settings: colours and letters (Ctrl and comma)</source>
        <extracomment>Room._foot</extracomment>
        <translation>Ajustes: colores y letras (Ctrl y coma)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Print round sheet</source>
        <translation>&amp;Imprimir hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save round sheet as P&amp;DF</source>
        <translation>Guardar hoja de ronda en P&amp;DF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Look at round sheet</source>
        <translation>&amp;Ver hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>hoja de ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save &amp;reminders</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Guardar &amp;recordatorios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>For any calendar program, as an iCalendar file. Save them again after a change.</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Para cualquier calendario, como archivo iCalendar. Guárdelos de nuevo tras un cambio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>hoja de ronda.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet {date}.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>hoja de ronda {date}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>The reminders could not be written there. Choose another folder.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>Los recordatorios no se pudieron escribir ahí. Elija otra carpeta.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{n} reminders</source>
        <extracomment>for 1: 1 reminder; RoundActions._write_down</extracomment>
        <translation>
            <numerusform>1 recordatorio</numerusform>
            <numerusform>{n} recordatorios</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{said} saved as {file}. Open the file with your calendar.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>{said}: guardado como {file}. Abra el archivo con su calendario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>reminders {date}.ics</source>
        <extracomment>RoundActions._remind</extracomment>
        <translation>recordatorios {date}.ics</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_watch.py"/>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Its jug is empty or gone.</source>
        <extracomment>RoundWatch._why_not, VoidCards._of_jug</extracomment>
        <translation>Su bidón está vacío o ya no está.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>The fish room</source>
        <extracomment>RoundsSheet.__init__</extracomment>
        <translation>La sala de acuarios</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>Looking at the log of {unread} more systems.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation>Mirando el registro de {unread} sistemas más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source> Reckoning what {unplanned} more systems take from the jugs.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation> Calculando lo que {unplanned} sistemas más toman de los bidones.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>It was kept by another version. End it, then plan again from a fresh reading.</source>
        <extracomment>RoundsSheet._plans</extracomment>
        <translation>Lo guardó otra versión. Termínelo, y planifique de nuevo con una lectura reciente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Several laptops work on one log that lies on a server of your own (PostgreSQL). Nothing goes anywhere else. While the server does not answer, the last state is shown, and what you log is kept on this computer and sent later.</source>
        <translation>Varios portátiles trabajan en un registro que está en un servidor propio (PostgreSQL). Nada va a ningún otro sitio. Mientras el servidor no responde se muestra el último estado, y lo que anota se guarda en este ordenador y se envía después.</translation>
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
        <translation>Un registro para toda la instalación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Keep the password in this computer's keyring</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>&amp;Guardar la contraseña en el llavero de este ordenador</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Open this log</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>&amp;Abrir este registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Use the log on &amp;this computer</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Usar el registro de es&amp;te ordenador</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Address</source>
        <extracomment>ServerPage._lay_out</extracomment>
        <translation>&amp;Dirección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Password</source>
        <extracomment>ServerPage._lay_out</extracomment>
        <translation>&amp;Contraseña</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Asking the server</source>
        <extracomment>ServerPage.ask</extracomment>
        <translation>Preguntando al servidor</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the system &amp;has them</source>
        <translation>Como las &amp;tiene el sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High &amp;contrast, light</source>
        <translation>A&amp;lto contraste, claro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High contrast, d&amp;ark</source>
        <translation>Alto contraste, oscu&amp;ro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>{number}&#xa0;%</source>
        <translation>{number}&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the &amp;system speaks</source>
        <translation>Como habla el &amp;sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>From 150&#xa0;% on the sheets are read standing back from the tank. Ctrl with plus or minus changes the letters on every sheet, F11 takes the whole screen.</source>
        <translation>Desde 150&#xa0;% las hojas se leen a distancia del acuario. Ctrl con más o menos cambia las letras en cada hoja, F11 ocupa toda la pantalla.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>▲ The settings could not be written. They hold until the program is closed.</source>
        <translation>▲ Los ajustes no se pudieron escribir. Valen hasta cerrar el programa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>No system yet</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Aún no hay sistema</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>&amp;Fish room</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>&amp;Sala</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Show the lists of sheets, systems and jugs</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Mostrar las listas de hojas, sistemas y bidones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Deshacer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Redo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Rehacer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Find an action</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Buscar una acción</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>By some of its words; Ctrl and K</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Por algunas de sus palabras; Ctrl y K</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undone</source>
        <extracomment>SheetHeader._undo</extracomment>
        <translation>Deshecho</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Done again</source>
        <extracomment>SheetHeader._redo</extracomment>
        <translation>Hecho otra vez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Nothing was done yet that could be taken back or done again.</source>
        <extracomment>SheetHeader._show_state</extracomment>
        <translation>Aún no se ha hecho nada que se pueda deshacer o rehacer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Everything is saved again.</source>
        <extracomment>SheetHeader._save_restored</extracomment>
        <translation>Todo está guardado de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Rounds</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Upkeep</source>
        <extracomment>upkeep</extracomment>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Stocks</source>
        <translation>Soluciones</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Log</source>
        <translation>Registro</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Recovery</source>
        <extracomment>recovery</extracomment>
        <translation>Recuperación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Sheets</source>
        <extracomment>SheetList.__init__</extracomment>
        <translation>Hojas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>The jug</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>El bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>New &amp;batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>&amp;Preparación nueva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Remove batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Retirar preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Contents</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Contenido</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Its strength</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Su concentración</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>To match the jug</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Igualar al bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>A dose of</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Una dosis de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>is to raise it by</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>debe subirlo en</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>And of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Y del sulfato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Pureza del sulfato</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>On its label</source>
        <extracomment>StockForm._label</extracomment>
        <translation>En su etiqueta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed by</source>
        <extracomment>StockForm._label</extracomment>
        <translation>Preparado por</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2027-02-25</source>
        <extracomment>StockForm._label</extracomment>
        <translation>como 2027-02-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>This batch</source>
        <extracomment>StockRecords.outdated</extracomment>
        <translation>Esta preparación</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>What it carries</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Lo que lleva</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Put it in the &amp;jug</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Ponerla en el &amp;bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Enter as &amp;weighed</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Anotar como p&amp;esado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Batches of this jug</source>
        <extracomment>StocksSheet._lay_out</extracomment>
        <translation>Preparaciones de este bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The jug has no batch.</source>
        <extracomment>StocksSheet._fill</extracomment>
        <translation>El bidón no tiene preparación.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The recipe is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>La receta no está completa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>It is in the jug already</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Ya está en el bidón</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The batch is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>La preparación no está completa.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Used for: {used}.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Se usa para: {used}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No correction uses this jug.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Ninguna corrección usa este bidón.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>With this batch in the jug, card {plan_id} becomes void. {why}</source>
        <extracomment>StocksSheet._note</extracomment>
        <translation>Con esta preparación en el bidón, la tarjeta {plan_id} queda anulada. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source> Take down card {void}: void.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation> Descuelgue la tarjeta {void}: anulada.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is in the jug now.{down} Put its label on, and prime the line before the next dose.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation>Esta preparación está ahora en el bidón.{down} Pegue su etiqueta, y cebe el tubo antes de la próxima dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}, date and time</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}, fecha y hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>today 08:00</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>hoy 08:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}: now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}: ahora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Print timetable</source>
        <translation>&amp;Imprimir horario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Save timetable as PDF</source>
        <translation>&amp;Guardar horario en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Look at timetable</source>
        <translation>&amp;Ver horario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable</source>
        <extracomment>TimetableActions.__init__</extracomment>
        <translation>horario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable {code}.pdf</source>
        <extracomment>TimetableActions.file_name</extracomment>
        <translation>horario {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours from</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Horas de silencio desde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>no pump runs then</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>ninguna bomba funciona</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours to</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Horas de silencio hasta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Opposing doses apart</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Separar dosis opuestas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>at least, from the end of a dose</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>al menos, desde el final de una dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Only &amp;one pump at a time</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>&amp;Solo una bomba a la vez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>its plan says how many</source>
        <extracomment>TimetableForm.set_usual</extracomment>
        <translation>su plan dice cuántas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Open</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Abrir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open {parameter} on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>Abrir en la hoja Corrección: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open it on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>Abrir en la hoja Corrección</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>First dose not before</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Primera dosis no antes de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>any time</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>cualquier hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Fewest</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Mínimo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Most</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Máximo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Doses</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>Doses in order of time</source>
        <extracomment>TimetableList.__init__</extracomment>
        <translation>Dosis por orden de hora</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>No pump gives anything yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Ninguna bomba da nada aún. Escriba en la hoja Corrección lo que el acuario consume en un día, su bidón y su bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In 24 hours</source>
        <translation>En 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>The timetable could not be worked out. Please keep this log and report it.</source>
        <extracomment>TimetableSheet._failed</extracomment>
        <translation>No se pudo hacer el horario. Guarde este registro y comuníquelo, por favor.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In order of time · timetable {code}</source>
        <extracomment>TimetableSheet._show</extracomment>
        <translation>Por orden de hora · horario {code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>No timetable yet.</source>
        <translation>Aún no hay horario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Alkalinity: filled head, upwards.</source>
        <translation>Alcalinidad: cabeza llena, hacia arriba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Calcium: open head, downwards.</source>
        <translation>Calcio: cabeza abierta, hacia abajo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Doses of the day</source>
        <extracomment>TimetableStrip.__init__</extracomment>
        <translation>Dosis del día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Next at {at}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>Próxima a las {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{cursor}.  Then after {wait}&#xa0;min: {pump}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>{cursor}.  Luego tras {wait}&#xa0;min: {pump}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Hatched: no doses.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Rayado: sin dosis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Upright line: now.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Línea vertical: ahora.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{pump}, {additive}: {marks} doses</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{pump}, {additive}: {marks} dosis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>quiet hours {begin} to {end}</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>horas de silencio de {begin} a {end}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{join}. Left and right go from dose to dose, up and down from pump to pump.</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{join}. Izquierda y derecha van de dosis en dosis, arriba y abajo de bomba en bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Print card of all plans</source>
        <translation>Imprimir tarjeta de todos los planes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Save card of all plans as PDF</source>
        <translation>Guardar tarjeta de todos los planes en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Look at card of all plans</source>
        <translation>Ver tarjeta de todos los planes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>together card</source>
        <extracomment>TogetherActions.__init__</extracomment>
        <translation>tarjeta conjunta</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>There is no card yet.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>Aún no hay tarjeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Not while something must stop: see the card.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>No mientras algo deba parar: vea la tarjeta.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>todos los planes.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans {code}.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>todos los planes {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Without a reading there is no course to draw.</source>
        <translation>Sin lectura no hay curso que dibujar.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Chart of all plans together</source>
        <extracomment>TogetherChart.__init__</extracomment>
        <translation>Gráfico de todos los planes juntos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>All plans together</source>
        <translation>Todos los planes juntos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Fold all plans away</source>
        <translation>Plegar todos los planes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Together</source>
        <translation>Juntos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>then</source>
        <translation>después</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>What moves it</source>
        <translation>Lo que lo mueve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>per day</source>
        <translation>al día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Value to look at</source>
        <extracomment>TogetherPanel.__init__</extracomment>
        <translation>Valor que mirar</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Stop: {name}</source>
        <extracomment>_row</extracomment>
        <translation>Parar: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>What to do first, and how it comes down without harm</source>
        <extracomment>TooHigh.__init__</extracomment>
        <translation>Qué hacer primero, y cómo baja sin daño</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go &amp;back</source>
        <extracomment>UnsavedQuestion.__init__</extracomment>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>{edits} could not be saved.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>No se pudo guardar: {edits}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go back, make room on the disk or bring the folder back, and they are saved with the next edit. Closed now, they are lost.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>Vuelva, haga sitio en el disco o recupere la carpeta, y se guardan con el próximo cambio. Si cierra ahora, se pierden.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>&amp;Close and lose {edits}</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>&amp;Cerrar y perder: {edits}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Nothing is kept yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Aún no se mantiene nada. Escriba en la hoja Corrección lo que el acuario consume en un día, su bidón y su bomba.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>At which minute each pump doses, and in how many doses, stands on the Timetable sheet.</source>
        <translation>En qué minuto dosifica cada bomba, y en cuántas dosis, está en la hoja Horario.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Set on the pump</source>
        <translation>Ajuste de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>The jug is empty</source>
        <translation>Bidón vacío</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In time</source>
        <translation>Con el tiempo</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a week</source>
        <translation>una semana</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a month</source>
        <translation>un mes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a year</source>
        <translation>un año</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Water exchanged</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>Agua cambiada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>continuously; leave it empty for none</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>de forma continua; déjelo vacío si no hay</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>New water, {rest}</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>Agua nueva, {rest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{what}: {message} It stands on the Exchange sheet.</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>{what}: {message} Está en la hoja Cambio de agua.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>used: {use}</source>
        <extracomment>UpkeepSheet._used</extracomment>
        <translation>consumido: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{in_24_hours} in 24 hours</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>{in_24_hours} en 24 horas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>after {jug}</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>tras {jug}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>{why} Its pump now gives another flow.</source>
        <extracomment>of_pump</extracomment>
        <translation>{why} Su bomba da ahora otro caudal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} is void. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ La tarjeta {plan_id} está anulada. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} must not be followed. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ La tarjeta {plan_id} no debe seguirse. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source> And {void} more.</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation> Y {void} más.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>It is taken &amp;down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>Ya está &amp;descolgada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Card {plan_id} is taken down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>La tarjeta {plan_id} está descolgada</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>Lea&amp;ve (Escape)</source>
        <extracomment>WalkStrip.__init__</extracomment>
        <translation>&amp;Salir (Escape)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Next</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>Si&amp;guiente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Do it for me</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>&amp;Hacerlo por mí</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>No calibration with running hours yet. With two or more, the wear of the head shows here.</source>
        <translation>Aún no hay calibración con horas de marcha. Con dos o más se muestra aquí el desgaste del cabezal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>mL per min against running hours of the head</source>
        <translation>mL por min según las horas de marcha del cabezal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% less</source>
        <translation>5&#xa0;% menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% less</source>
        <translation>10&#xa0;% menos</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% more</source>
        <translation>5&#xa0;% más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% more</source>
        <translation>10&#xa0;% más</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>flow in use</source>
        <translation>caudal en uso</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>Chart of the pump's wear</source>
        <extracomment>WearChart.__init__</extracomment>
        <translation>Gráfico del desgaste de la bomba</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>{spoken} The arrow keys read them one by one.</source>
        <extracomment>WearChart.render</extracomment>
        <translation>{spoken} Las flechas los leen uno a uno.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Evenwater reckons how many mL per hour raise a value slowly and safely, draws what the water will do, and prints the card that hangs on the stand. Everything you type is kept on this computer and nowhere else, unless you open a log on a server of your own.</source>
        <translation>Evenwater calcula cuántos mL por hora suben un valor despacio y sin peligro, dibuja lo que hará el agua, e imprime la tarjeta que cuelga del mueble. Todo lo que escribe se guarda en este ordenador y en ningún otro sitio, salvo que abra un registro en un servidor propio.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>A wrong dose kills animals, and the stocks can hurt people. Read each bag's safety sheet, follow local rules, and when unsure dose less and test again.</source>
        <translation>Una dosis equivocada mata animales, y las soluciones pueden hacer daño a las personas. Lea la ficha de datos de seguridad de cada bolsa, siga las normas locales, y en caso de duda dosifique menos y mida de nuevo.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Your fish room is empty</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Su sala de acuarios está vacía</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Start with &amp;my own tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Empezar con &amp;mi acuario</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Be &amp;led through it on an invented tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>&amp;Guía paso a paso con un acuario inventado</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Look round an &amp;invented room of three systems</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Mirar una sala &amp;inventada de tres sistemas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Open the log of a &amp;facility, on its server</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Abrir el &amp;registro de una instalación, en su servidor</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>alkalinity</source>
        <extracomment>a name</extracomment>
        <translation>alcalinidad</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>calcium</source>
        <extracomment>a name</extracomment>
        <translation>calcio</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>magnesium</source>
        <extracomment>a name</extracomment>
        <translation>magnesio</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>potassium</source>
        <extracomment>a name</extracomment>
        <translation>potasio</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>strontium</source>
        <extracomment>a name</extracomment>
        <translation>estroncio</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>iodide</source>
        <extracomment>a name</extracomment>
        <translation>yoduro</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrato</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>phosphate</source>
        <extracomment>a name</extracomment>
        <translation>fosfato</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>salinity</source>
        <extracomment>a name</extracomment>
        <translation>salinidad</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>carbonato de sodio anhidro</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate anhydrous</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>CARBonato de sodio anhidro</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Warning</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Atención</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>WARNING</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>ATENCIÓN</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H319 causes serious eye irritation</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>H319 provoca irritación ocular grave</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear goggles and gloves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Use gafas de protección y guantes.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it warms as it dissolves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate</extracomment>
        <translation>Échelo al agua despacio, nunca el agua sobre la sal; se calienta al disolverse.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes and heats.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Mantenga lejos los ácidos: burbujea y se calienta.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Nunca lo mezcle con un concentrado de calcio.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it takes up water and cakes.</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>Guarde la bolsa hermética: toma agua y se apelmaza.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate monohydrate</source>
        <extracomment>a name</extracomment>
        <translation>carbonato de sodio monohidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate monohydrate</source>
        <extracomment>sodium carbonate monohydrate</extracomment>
        <translation>CARBonato de sodio monohidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>carbonato de sodio decahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate decahydrate</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>CARBonato de sodio decahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it cools as it dissolves.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Échelo al agua despacio, nunca el agua sobre la sal; se enfría al disolverse.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it loses water in dry air and then weighs too strong.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Guarde la bolsa hermética: pierde agua en aire seco y al pesarla sale demasiado fuerte.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium bicarbonate</source>
        <extracomment>a name</extracomment>
        <translation>bicarbonato de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium BICARBonate</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>BICARBonato de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear spectacles.</source>
        <extracomment>sodium bicarbonate, magnesium chloride hexahydrate, magnesium sulfate heptahydrate</extracomment>
        <translation>Use gafas.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>Mantenga lejos los ácidos: burbujea.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not heat it: heat turns it into sodium carbonate, 1.59 times as strong per gram.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>No lo caliente: el calor lo vuelve carbonato de sodio, 1,59 veces más fuerte por gramo.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>hidróxido de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium HYDROXide</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>HIDRÓXido de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>DANGER</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>PELIGRO</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H290 may be corrosive to metals</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>H290 puede ser corrosivo para los metales</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H314 causes severe skin burns and eye damage</source>
        <extracomment>sodium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H314 provoca quemaduras graves en la piel y lesiones oculares graves</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Restricted: use a carbonate instead unless you are trained to handle caustics.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Restringido: use en su lugar un carbonato, salvo que esté formado para manejar cáusticos.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear a face shield or goggles, chemical-proof gloves and an apron.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Use pantalla facial o gafas de protección, guantes resistentes a productos químicos y delantal.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to cold water in small portions, never water onto the solid; it heats strongly and can boil and spit.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Échelo en agua fría en porciones pequeñas, nunca el agua sobre el sólido; se calienta mucho y puede hervir y salpicar.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a heat-proof plastic vessel, never glass with a stopper and never aluminium.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Use un recipiente de plástico resistente al calor, nunca vidrio con tapón y nunca aluminio.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let it cool before topping up to the mark.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Deje que se enfríe antes de completar hasta la marca.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it airtight and away from acids.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Guárdelo hermético y lejos de los ácidos.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>hidróxido de calcio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium HYDROXide</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>HIDRÓXido de calcio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H315 causes skin irritation</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>H315 provoca irritación cutánea</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H318 causes serious eye damage</source>
        <extracomment>calcium hydroxide, strontium chloride hexahydrate</extracomment>
        <translation>H318 provoca lesiones oculares graves</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H335 may cause respiratory irritation</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H335 puede irritar las vías respiratorias</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Goggles or a face shield are mandatory; wear gloves.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Las gafas de protección o una pantalla facial son obligatorias; use guantes.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Raise no dust: the powder burns wet eyes and lungs, and clumps lodge under the lids.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>No levante polvo: el polvo quema los ojos húmedos y los pulmones, y los grumos quedan bajo los párpados.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>If swallowed, do not induce vomiting; get medical help.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>En caso de ingestión, no provoque el vómito; busque atención médica.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep strong acids away.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Mantenga lejos los ácidos fuertes.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let the slurry settle and dose only the clear water; never stir slurry into the tank.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Deje asentar la lechada y dosifique solo el agua clara; nunca remueva lechada hacia el acuario.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never dose limewater faster than the tank evaporates.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Nunca dosifique agua de cal más rápido de lo que evapora el acuario.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate or bicarbonate.</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Nunca lo mezcle con un concentrado de carbonato o bicarbonato.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de calcio anhidro</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide anhydrous</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>CLORuro de calcio anhidro</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H303 may be harmful if swallowed</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>H303 puede ser nocivo en caso de ingestión</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It heats strongly as it dissolves: add the salt slowly to cold water, never water onto the salt.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Se calienta mucho al disolverse: eche la sal despacio en agua fría, nunca el agua sobre la sal.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a vented, heat-proof vessel and let it cool before topping up to the mark.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Use un recipiente abierto y resistente al calor y deje que se enfríe antes de completar hasta la marca.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it draws water from the air.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate, magnesium chloride hexahydrate</extracomment>
        <translation>Guarde la bolsa hermética: toma agua del aire.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride dihydrate</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de calcio dihidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide dihydrate</source>
        <extracomment>calcium chloride dihydrate</extracomment>
        <translation>CLORuro de calcio dihidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de calcio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide hexahydrate</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>CLORuro de calcio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add the salt slowly to the water, never water onto the salt.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Eche la sal al agua despacio, nunca el agua sobre la sal.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It cools as it dissolves: top up to the mark only when it is at room temperature again.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Se enfría al disolverse: complete hasta la marca solo cuando vuelva a la temperatura de la habitación.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag cool and airtight: it melts in its own water at about 30 degrees Celsius.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Guarde la bolsa fresca y hermética: se funde en su propia agua hacia los 30 grados Celsius.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de magnesio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium CHLORide hexahydrate</source>
        <extracomment>magnesium chloride hexahydrate</extracomment>
        <translation>CLORuro de magnesio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium sulfate heptahydrate</source>
        <extracomment>a name</extracomment>
        <translation>sulfato de magnesio heptahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium SULFate heptahydrate</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>SULFato de magnesio heptahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Mop up spills: the floor becomes slippery.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Recoja lo derramado: el suelo se vuelve resbaladizo.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: gypsum falls out.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Nunca lo mezcle con un concentrado de calcio: precipita yeso.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium chloride</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium CHLORide</source>
        <extracomment>potassium chloride</extracomment>
        <translation>CLORuro de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not swallow.</source>
        <extracomment>potassium chloride</extracomment>
        <translation>No ingerir.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de estroncio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium CHLORide hexahydrate</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>CLORuro de estroncio hexahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly and raise no dust.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Échelo al agua despacio y no levante polvo.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate, bicarbonate or sulfate: strontium falls out.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Nunca lo mezcle con un concentrado de carbonato, bicarbonato o sulfato: precipita estroncio.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium iodide</source>
        <extracomment>a name</extracomment>
        <translation>yoduro de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium IODide</source>
        <extracomment>potassium iodide</extracomment>
        <translation>YODuro de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H372 causes damage to the thyroid through prolonged or repeated exposure</source>
        <extracomment>potassium iodide</extracomment>
        <translation>H372 provoca daños en la tiroides tras exposiciones prolongadas o repetidas</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves, raise no dust, and do not eat or drink at the bench.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Use guantes, no levante polvo, y no coma ni beba en el puesto de trabajo.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Make a dilute stock only: the doses are milligrams.</source>
        <extracomment>potassium iodide, potassium dihydrogen phosphate</extracomment>
        <translation>Haga solo una solución diluida: las dosis son miligramos.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it in a light-tight bottle.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Guárdelo en un frasco opaco.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrato de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium NITRate</source>
        <extracomment>sodium nitrate</extracomment>
        <translation>NITRato de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H272 may intensify fire; oxidiser</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>H272 puede agravar un incendio; comburente</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Oxidiser: keep it from paper, wood dust, sugar, oil and heat.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Comburente: guárdelo lejos de papel, polvo de madera, azúcar, aceite y calor.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a clean scoop and keep only a small pack.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Use una cuchara limpia y guarde solo un paquete pequeño.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Flood a fire with water.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Inunde con agua un incendio.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrato de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium NITRate</source>
        <extracomment>potassium nitrate</extracomment>
        <translation>NITRato de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen phosphate</source>
        <extracomment>a name</extracomment>
        <translation>dihidrogenofosfato de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen PHOSPHate</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>dihidrogenoFOSFato de potasio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: calcium phosphate falls out.</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>Nunca lo mezcle con un concentrado de calcio: precipita fosfato de calcio.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium chloride</source>
        <extracomment>a name</extracomment>
        <translation>cloruro de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CHLORide</source>
        <extracomment>sodium chloride</extracomment>
        <translation>CLORuro de sodio</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use salt without anti-caking agent or added iodine.</source>
        <extracomment>sodium chloride</extracomment>
        <translation>Use sal sin antiaglomerante ni yodo añadido.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>boric acid</source>
        <extracomment>a name</extracomment>
        <translation>ácido bórico</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>BORIC acid</source>
        <extracomment>boric acid</extracomment>
        <translation>ácido BÓRICo</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H360FD may damage fertility; may damage the unborn child</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>H360FD puede perjudicar a la fertilidad; puede dañar al feto</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves and goggles and raise no dust.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Use guantes y gafas de protección y no levante polvo.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Not to be handled by anyone who is or may become pregnant.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>No debe manejarlo quien esté o pueda estar embarazada.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wash hands afterwards.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Lávese las manos después.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraborate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>tetraborato de sodio decahidrato</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraBORate decahydrate</source>
        <extracomment>sodium tetraborate decahydrate</extracomment>
        <translation>tetraBORato de sodio decahidrato</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is too low and is to be raised. Each value of a tank has a correction of its own, which keeps its figures.</source>
        <extracomment>correction.parameter</extracomment>
        <translation>Lo que está demasiado bajo y se quiere subir. Cada valor de un acuario tiene su propia corrección, que guarda sus cifras.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What your test showed, in the unit printed on the kit: choose that unit rather than converting by head. The plan starts from this figure.</source>
        <extracomment>correction.measured</extracomment>
        <translation>Lo que mostró su prueba, en la unidad impresa en el kit: elija esa unidad en lugar de convertir de cabeza. El plan parte de esta cifra.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the test was made. A reading that is too old is no basis for a correction. Empty: its age is not checked, and the plan says so.</source>
        <extracomment>correction.measured_at</extracomment>
        <translation>Cuándo se hizo la prueba. Una lectura demasiado antigua no es base para una corrección. Vacío: no se comprueba su edad, y el plan lo dice.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where the value should come to rest. The line below names what is usually kept; aim for the middle of it when in doubt.</source>
        <extracomment>correction.target</extracomment>
        <translation>Dónde debe estabilizarse el valor. La línea de abajo nombra lo que se suele mantener; en caso de duda busque el medio.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most the value may rise in any 24 hours. Empty: the recommended rise. Beyond it a reason is asked for, and never more than the hard limit.</source>
        <extracomment>correction.fastest_rise</extracomment>
        <translation>Lo máximo que puede subir el valor en 24 horas. Vacío: la subida recomendada. Más allá se pide una razón, y nunca más que el límite estricto.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the value falls in a day when nothing is dosed: two tests a few days apart show it. Empty: none, so the water rises a little less than planned.</source>
        <extracomment>correction.daily_use</extracomment>
        <translation>Cuánto baja el valor en un día sin dosis: lo muestran dos pruebas con unos días entre ellas. Vacío: nada, así que el valor sube algo menos de lo previsto.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Why this once may go faster than recommended. It is printed on the card, for whoever reads it after you.</source>
        <extracomment>correction.reason</extracomment>
        <translation>Por qué esta vez puede ir más rápido de lo recomendado. Se imprime en la tarjeta, para quien la lea después.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this correction is dosed from. What is in it is shared by every plan that uses it.</source>
        <extracomment>correction.stock</extracomment>
        <translation>El bidón del que se dosifica esta corrección. Lo que hay en él lo comparten todos los planes que lo usan.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that doses this. Its flow turns millilitres into running time.</source>
        <extracomment>correction.pump</extracomment>
        <translation>La bomba que lo dosifica. Su caudal convierte los mililitros en tiempo de marcha.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call this tank. It stands on every card and label, so that nobody doses the wrong one.</source>
        <extracomment>system.name</extracomment>
        <translation>Cómo llama a este acuario. Está en cada tarjeta y etiqueta, para que nadie dosifique el equivocado.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>All the water that moves together: display and sump, without rock, sand and equipment. Not the size of the glass. Every dose is in proportion to it.</source>
        <extracomment>system.net_volume</extracomment>
        <translation>Toda el agua que se mueve junta: acuario y depósito, sin roca, arena ni equipo. No el tamaño del vidrio. Cada dosis va en proporción a ella.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How you found the net volume. Counted as within {filled}&#xa0;% by filling, {dosed}&#xa0;% by dose and test, {dimensions}&#xa0;% from dimensions. Unknown: its low end is taken, {unknown}&#xa0;% less.</source>
        <extracomment>system.volume_known</extracomment>
        <translation>Cómo halló el volumen neto. Se cuenta con {filled}&#xa0;% de error al llenar, {dosed}&#xa0;% dosificando y midiendo, {dimensions}&#xa0;% por las dimensiones. Desconocido: se toma su extremo bajo, {unknown}&#xa0;% menos.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the net volume may be off, either way. Empty: what is usual for how it was found. The band around the ramp comes from it.</source>
        <extracomment>system.volume_uncertainty</extracomment>
        <translation>Cuánto puede desviarse el volumen neto, en un sentido u otro. Vacío: lo usual según cómo se halló. De ahí viene la banda alrededor de la rampa.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How salty the tank is, from a refractometer, hydrometer or conductivity meter. Figures per kilogram and the pH need it. Empty: {salinity}.</source>
        <extracomment>system.salinity</extracomment>
        <translation>Lo salado que está el acuario, por refractómetro, densímetro o conductímetro. Lo necesitan las cifras por kilogramo y el pH. Vacío: {salinity}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, from its thermometer. Density and pH depend on it. Empty: {temperature}&#xa0;°C.</source>
        <extracomment>system.temperature</extracomment>
        <translation>Del acuario, por su termómetro. De ella dependen la densidad y el pH. Vacío: {temperature}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, in the morning, when it is lowest of the day. Empty: {ph} is taken for the rise of a dose, and no highest pH is held.</source>
        <extracomment>system.ph</extracomment>
        <translation>Del acuario, por la mañana, cuando está más bajo. Vacío: se toma {ph} para la subida de una dosis, y no se respeta ningún pH máximo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: it says how far a dose moves the pH. Empty: that of natural seawater.</source>
        <extracomment>system.alkalinity</extracomment>
        <translation>Solo se usa al corregir otra cosa: dice cuánto mueve el pH una dosis. Vacío: la del agua de mar natural.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: with alkalinity it says how near lime is to falling out. Empty: that of natural seawater.</source>
        <extracomment>system.calcium</extracomment>
        <translation>Solo se usa al corregir otra cosa: con la alcalinidad dice lo cerca que está la cal de precipitar. Vacío: el del agua de mar natural.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much fresh water replaces what evaporates in a day: mark the top-off jug and look a day later. Limewater never goes in faster than this. Empty: not checked, and the plan says so.</source>
        <extracomment>system.evaporation</extracomment>
        <translation>Cuánta agua dulce repone lo que se evapora en un día: marque el bidón de relleno y mire un día después. El agua de cal nunca entra más rápido. Vacío: no se comprueba, y el plan lo dice.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water goes out, and new water in, in a day. Upkeep, foods and recovery reckon with the same figure. Empty: none.</source>
        <extracomment>system.exchanged</extracomment>
        <translation>Cuánta agua sale, y agua nueva entra, en un día. Mantenimiento, alimentos y recuperación cuentan con la misma cifra. Vacío: ninguna.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug is called on the shelf, such as its colour and what is in it. It stands on its label and on every card.</source>
        <extracomment>stock.name</extracomment>
        <translation>Cómo se llama el bidón en el estante, por ejemplo su color y lo que contiene. Está en su etiqueta y en cada tarjeta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug takes when full. Needed to say how long it lasts, and what would happen if all of it ran in.</source>
        <extracomment>stock.holds</extracomment>
        <translation>Lo que cabe en el bidón lleno. Hace falta para decir cuánto dura, y qué pasaría si entrara todo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What stays in the jug below the end of its tube and is never pumped. Empty: none.</source>
        <extracomment>stock.unreachable</extracomment>
        <translation>Lo que queda en el bidón bajo el extremo de su tubo y nunca se bombea. Vacío: nada.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How closely you can read the level: half a line of its scale. Empty: {level}&#xa0;% of what it holds. The pump check is no finer than this.</source>
        <extracomment>stock.level_accuracy</extracomment>
        <translation>Con qué finura lee el nivel: media línea de su escala. Vacío: {level}&#xa0;% de lo que cabe. El control de la bomba no es más fino.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The words on the bag, water of crystallisation included: two salts of nearly the same name differ by a half or more in strength.</source>
        <extracomment>batch.chemical</extracomment>
        <translation>Las palabras de la bolsa, agua de cristalización incluida: dos sales de nombre casi igual difieren en la mitad o más de fuerza.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it was weighed into the jug.</source>
        <extracomment>batch.dissolved</extracomment>
        <translation>Cuánto de ello se pesó en el bidón.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of the second salt, magnesium sulfate, was weighed into the same jug.</source>
        <extracomment>batch.also_dissolved</extracomment>
        <translation>Cuánto de la segunda sal, sulfato de magnesio, se pesó en el mismo bidón.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>To what mark the jug was filled in the end, salt included. Not how much water went in.</source>
        <extracomment>batch.made_up_to</extracomment>
        <translation>Hasta qué marca se llenó al final el bidón, sal incluida. No cuánta agua se echó.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date it was mixed, for its label and card.</source>
        <extracomment>batch.mixed_on</extracomment>
        <translation>La fecha de preparación, para su etiqueta y su tarjeta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For a bottle known by its label only: the dose that the label speaks of, as in 'x mL raise y L by z'.</source>
        <extracomment>batch.label_dose</extracomment>
        <translation>Para un frasco conocido solo por su etiqueta: la dosis de que habla, como en «x mL suben y L en z».</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in that sentence of the label. Not your tank's.</source>
        <extracomment>batch.label_water</extracomment>
        <translation>El agua de esa frase de la etiqueta. No la de su acuario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in that sentence of the label, in the unit it uses.</source>
        <extracomment>batch.label_raises</extracomment>
        <translation>La subida de esa frase de la etiqueta, en su unidad.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bottle raises. One bottle, one value: take the label's sentence about the value you dose it for.</source>
        <extracomment>batch.label_parameter</extracomment>
        <translation>Lo que sube el frasco. Un frasco, un valor: tome la frase de la etiqueta sobre el valor para el que lo dosifica.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bag says; technical salts are often below 100&#xa0;%. Empty: 100&#xa0;%, so that a weaker salt does less than planned, never more.</source>
        <extracomment>batch.purity</extracomment>
        <translation>Lo que dice la bolsa; las sales técnicas suelen estar por debajo del 100&#xa0;%. Vacío: 100&#xa0;%, así que una sal más débil hace menos de lo previsto, nunca más.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the second salt, from its own bag. Empty: 100&#xa0;%.</source>
        <extracomment>batch.also_purity</extracomment>
        <translation>De la segunda sal, según su propia bolsa. Vacío: 100&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The coldest the jug will stand, as in a garage in winter. What just dissolves in the warm falls out in the cold. Empty: {room}&#xa0;°C.</source>
        <extracomment>batch.temperature</extracomment>
        <translation>Lo más frío que estará el bidón, como en un garaje en invierno. Lo que apenas se disuelve al calor precipita al frío. Vacío: {room}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you know: what you weighed, the strength you want, or the jug it is to match. The other figures are reckoned from it.</source>
        <extracomment>batch.recipe</extracomment>
        <translation>Lo que sabe: lo que pesó, la concentración que quiere, o el bidón al que debe igualarse. Las otras cifras se calculan de ello.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this one must match, so that equal millilitres of both keep alkalinity and calcium in step.</source>
        <extracomment>batch.partner</extracomment>
        <translation>El bidón al que debe igualarse este, para que mililitros iguales de ambos mantengan alcalinidad y calcio al mismo paso.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose that you want to be enough for the rise beside it.</source>
        <extracomment>batch.wanted_dose</extracomment>
        <translation>La dosis que quiere que baste para la subida de al lado.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water that this dose goes into, usually your net volume.</source>
        <extracomment>batch.wanted_water</extracomment>
        <translation>El agua a la que va esta dosis, normalmente su volumen neto.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far that one dose is to raise it. The amount to weigh out follows.</source>
        <extracomment>batch.wanted_raises</extracomment>
        <translation>Cuánto debe subirlo esa única dosis. De ahí sale la cantidad por pesar.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who mixed it, for the label.</source>
        <extracomment>batch.mixed_by</extracomment>
        <translation>Quién lo preparó, para la etiqueta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last day this batch is to be used; it stands on the label. Empty: none is printed.</source>
        <extracomment>batch.use_by</extracomment>
        <translation>El último día en que se debe usar esta preparación; está en la etiqueta. Vacío: no se imprime ninguno.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call the pump, such as where it hangs. It stands on every card.</source>
        <extracomment>pump.name</extracomment>
        <translation>Cómo llama a la bomba, por ejemplo dónde cuelga. Está en cada tarjeta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it really delivers while it runs, with its own line and jug: calibrate it on the Pumps sheet. The figure on its box is only a start.</source>
        <extracomment>pump.flow</extracomment>
        <translation>Lo que da de verdad cuando funciona, con su propio tubo y bidón: calíbrela en la hoja Bombas. La cifra de su caja es solo un comienzo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many times it runs in a day, evenly spread. Many small doses move the water least. Empty: {doses}.</source>
        <extracomment>pump.doses_per_day</extracomment>
        <translation>Cuántas veces funciona al día, repartidas por igual. Muchas dosis pequeñas mueven menos el agua. Vacío: {doses}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The least it gives reliably in one run, from its manual or your own tests. Empty: not checked.</source>
        <extracomment>pump.smallest_dose</extracomment>
        <translation>Lo mínimo que da de forma fiable de una vez, según su manual o sus propias pruebas. Vacío: no se comprueba.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The steps in which its dose can be set, as 0.1&#xa0;mL. Doses are rounded down to it. Empty: a tenth of a millilitre, finer for small doses.</source>
        <extracomment>pump.step</extracomment>
        <translation>Los pasos en que se ajusta su dosis, como 0,1&#xa0;mL. Las dosis se redondean hacia abajo a ellos. Vacío: una décima de mililitro, más fino para dosis pequeñas.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most it may run, as a share of the time: motors and heads need rest. Empty: {share}&#xa0;%.</source>
        <extracomment>pump.largest_share</extracomment>
        <translation>Lo máximo que puede funcionar, como parte del tiempo: motores y cabezales necesitan descanso. Vacío: {share}&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A brushed motor slows as it ages, a stepper motor keeps its pace. Empty: nothing is said about it.</source>
        <extracomment>pump.motor</extracomment>
        <translation>Un motor de escobillas se frena con los años, uno paso a paso mantiene su marcha. Vacío: no se dice nada.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How high the end of the line hangs above the water. Below the water, or with no air gap, the jug can siphon into the tank.</source>
        <extracomment>pump.outlet_height</extracomment>
        <translation>A qué altura sobre el agua cuelga el extremo del tubo. Bajo el agua, o sin espacio de aire, el bidón puede pasar por sifón al acuario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of the line, from the tubing's label. With its length it says how much must be primed after a refill.</source>
        <extracomment>pump.line_bore</extracomment>
        <translation>Diámetro interior del tubo, según su etiqueta. Con su longitud dice cuánto hay que cebar tras rellenar.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of the line from the jug to the water.</source>
        <extracomment>pump.line_length</extracomment>
        <translation>Longitud del tubo del bidón al agua.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date its head or tubing was last changed. Wear is counted from it.</source>
        <extracomment>pump.head_fitted</extracomment>
        <translation>La fecha en que se cambió por última vez su cabezal o tubo. Desde ella se cuenta el desgaste.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Hours this head has run by now, where the pump counts them. Wear goes with hours, not with age.</source>
        <extracomment>pump.head_hours</extracomment>
        <translation>Horas que ha funcionado este cabezal, si la bomba las cuenta. El desgaste va con las horas, no con la edad.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many running hours a head of this kind lasts. Empty: {life}, which is common practice.</source>
        <extracomment>pump.head_life</extracomment>
        <translation>Cuántas horas de marcha dura un cabezal así. Vacío: {life}, que es práctica común.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Kind and size of the tubing, so that the next one is the same.</source>
        <extracomment>pump.tubing</extracomment>
        <translation>Clase y tamaño del tubo, para que el próximo sea igual.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the runs were made. What is calibrated is what the pump gave that day.</source>
        <extracomment>calibration.at</extracomment>
        <translation>Cuándo se hicieron las mediciones. Lo que se calibra es lo que la bomba daba ese día.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump's hour counter showed, if it has one. A line through several calibrations then shows the wear.</source>
        <extracomment>calibration.hours</extracomment>
        <translation>Lo que mostraba el contador de horas de la bomba, si lo tiene. Una recta por varias calibraciones muestra entonces el desgaste.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the water was caught and measured with. A scale is usually closer than a cylinder for small amounts.</source>
        <extracomment>calibration.method</extracomment>
        <translation>Con qué se recogió y midió el agua. Para cantidades pequeñas una báscula suele ser más exacta que una probeta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The smallest step of the cylinder's scale. Empty: the last digit you wrote.</source>
        <extracomment>calibration.graduation</extracomment>
        <translation>La división más pequeña de la probeta. Vacío: la última cifra que escribió.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last digit the scale shows. Empty: the last digit you wrote.</source>
        <extracomment>calibration.readability</extracomment>
        <translation>La última cifra que muestra la báscula. Vacío: la última cifra que escribió.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the water that was weighed: warm water weighs less. Empty: an ordinary room, which widens the interval a little.</source>
        <extracomment>calibration.water_temperature</extracomment>
        <translation>Del agua que se pesó: el agua caliente pesa menos. Vacío: una habitación normal, lo que ensancha un poco el intervalo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who made the runs.</source>
        <extracomment>calibration.who</extracomment>
        <translation>Quién hizo las mediciones.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A hand on a stop watch is a little late or early each time; the pump's own clock is not. It counts in the interval.</source>
        <extracomment>calibration.timed</extracomment>
        <translation>Una mano en un cronómetro se adelanta o atrasa un poco cada vez; el reloj de la bomba no. Cuenta en el intervalo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many doses made up one run, where the pump cannot run without stopping. Empty: one.</source>
        <extracomment>calibration.doses</extracomment>
        <translation>Cuántas dosis formaban una medición, si la bomba no puede funcionar sin parar. Vacío: una.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Weighing only: air lifts a little. It matters high in the mountains. Empty: that of sea level, within a wide interval.</source>
        <extracomment>calibration.air_pressure</extracomment>
        <translation>Solo al pesar: el aire sostiene un poco. Importa en lo alto de las montañas. Vacío: la del nivel del mar, en un intervalo amplio.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long this run lasted. Run about as long as a dose in use, and longer for a weak pump. Empty: as the run before.</source>
        <extracomment>calibration.run_seconds</extracomment>
        <translation>Cuánto duró esta medición. Hágala durar más o menos como una dosis en uso, y más con una bomba débil. Vacío: como la medición anterior.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What came out in this run. {runs} runs show how well the pump repeats itself; prime the line before the first.</source>
        <extracomment>calibration.run_reads</extracomment>
        <translation>Lo que salió en esta medición. {runs} mediciones muestran lo bien que se repite la bomba; cebe el tubo antes de la primera.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call it. It stands on its label and in the plan of the day.</source>
        <extracomment>food.name</extracomment>
        <translation>Cómo lo llama. Está en su etiqueta y en el plan del día.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it is decides how it is handled and how long it may stand in a line. A liquid food spoils.</source>
        <extracomment>food.sort</extracomment>
        <translation>Lo que es decide cómo se maneja y cuánto puede estar en un tubo. Un alimento líquido se estropea.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The day it was opened. With how long it keeps it gives the day to throw it away.</source>
        <extracomment>food.opened_on</extracomment>
        <translation>El día en que se abrió. Con lo que se conserva da el día en que hay que tirarlo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Days it keeps once opened, from its label. Empty: no date is given.</source>
        <extracomment>food.keeps_days</extracomment>
        <translation>Días que se conserva una vez abierto, según su etiqueta. Vacío: no se da fecha.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it stands in the cold. A liquid food in the warm keeps {warm} day at most, which is common practice.</source>
        <extracomment>food.cold</extracomment>
        <translation>Si está en frío. Un alimento líquido al calor se conserva {warm} día como máximo, que es práctica común.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was in its jug when it was opened. It says when it runs out, and what is left when it must be thrown away.</source>
        <extracomment>food.jug_volume</extracomment>
        <translation>Cuánto había en su bidón al abrirlo. Dice cuándo se acaba, y lo que queda cuando hay que tirarlo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How its label speaks: what a millilitre carries, percent by mass, or what a dose does to so much water.</source>
        <extracomment>food.says</extracomment>
        <translation>Cómo habla su etiqueta: lo que lleva un mililitro, porcentaje en masa, o lo que hace una dosis a tanta agua.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Nitrogen in a millilitre, from the label or its maker. What the animals do not keep becomes nitrate. It is needed.</source>
        <extracomment>food.nitrogen</extracomment>
        <translation>Nitrógeno en un mililitro, según la etiqueta o su fabricante. Lo que los animales no retienen se vuelve nitrato. Hace falta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Phosphorus in a millilitre, as the element: a figure as P2O5 is more than twice as large. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus</extracomment>
        <translation>Fósforo en un mililitro, como elemento: una cifra como P2O5 es más del doble. Vacío: no se sigue el fosfato.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent protein on the label. Divided by {protein} it is nitrogen.</source>
        <extracomment>food.protein</extracomment>
        <translation>Porcentaje de proteína en la etiqueta. Dividido por {protein} es nitrógeno.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent nitrogen, where the label says so itself; it goes before the protein.</source>
        <extracomment>food.nitrogen_share</extracomment>
        <translation>Porcentaje de nitrógeno, si la etiqueta lo dice; va antes que la proteína.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent phosphorus by mass, as the element, not as P2O5. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus_share</extracomment>
        <translation>Porcentaje de fósforo en masa, como elemento, no como P2O5. Vacío: no se sigue el fosfato.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How heavy a millilitre is, to turn percent by mass into amounts. Empty: as heavy as water.</source>
        <extracomment>food.density</extracomment>
        <translation>Lo que pesa un mililitro, para pasar de porcentaje en masa a cantidades. Vacío: como el agua.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What its label says it raises.</source>
        <extracomment>food.label_parameter</extracomment>
        <translation>Lo que su etiqueta dice que sube.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose in the label's sentence.</source>
        <extracomment>food.label_dose</extracomment>
        <translation>La dosis de la frase de la etiqueta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in the label's sentence. Not your tank's.</source>
        <extracomment>food.label_water</extracomment>
        <translation>El agua de la frase de la etiqueta. No la de su acuario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in the label's sentence.</source>
        <extracomment>food.label_raises</extracomment>
        <translation>La subida de la frase de la etiqueta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it is given in a whole day, all feedings together.</source>
        <extracomment>food.per_day</extracomment>
        <translation>Cuánto se da en un día entero, todas las tomas juntas.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many portions. Empty: the doses a day of its pump, else one.</source>
        <extracomment>food.feedings</extracomment>
        <translation>En cuántas porciones. Vacío: las dosis al día de su bomba, si no una.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it is being given now. A paused food counts for nothing.</source>
        <extracomment>food.paused</extracomment>
        <translation>Si se está dando ahora. Un alimento en pausa no cuenta nada.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that gives it, if one does. A pump draws from one jug only.</source>
        <extracomment>food.pump</extracomment>
        <translation>La bomba que lo da, si la hay. Una bomba toma de un solo bidón.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of its line. Food that stands in a warm line spoils. Empty: that of its pump.</source>
        <extracomment>food.line_bore</extracomment>
        <translation>Diámetro interior de su tubo. El alimento que queda en un tubo caliente se estropea. Vacío: el de su bomba.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of its line. Empty: that of its pump.</source>
        <extracomment>food.line_length</extracomment>
        <translation>Longitud de su tubo. Vacío: la de su bomba.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>One figure for both pumps, what the exchange equals as a batch change, or each pump by itself where they differ.</source>
        <extracomment>water.way</extracomment>
        <translation>Una cifra para ambas bombas, a qué cambio de golpe equivale, o cada bomba por sí misma si difieren.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The share of the water you used to change at once. The continuous exchange is made as strong as that.</source>
        <extracomment>water.as_much_as</extracomment>
        <translation>La parte del agua que solía cambiar de golpe. El cambio continuo se hace igual de fuerte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How often you changed that much. Empty: every {week} days.</source>
        <extracomment>water.every_days</extracomment>
        <translation>Cada cuánto cambiaba tanto. Vacío: cada {week} días.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of old water takes out in a day, as calibrated. Top-off fills what is missing.</source>
        <extracomment>water.out</extracomment>
        <translation>Lo que la bomba de agua vieja saca en un día, según su calibración. El relleno repone lo que falta.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of new water brings in a day. If it differs from the other, salinity drifts.</source>
        <extracomment>water.in</extracomment>
        <translation>Lo que la bomba de agua nueva trae en un día. Si difiere de la otra, la salinidad se desvía.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of old water takes before it overflows. It says when to empty it.</source>
        <extracomment>water.old_jug</extracomment>
        <translation>Lo que cabe en el bidón de agua vieja antes de rebosar. Dice cuándo vaciarlo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of new water holds. It says when to fill it, and whether it could flood the tank.</source>
        <extracomment>water.new_jug</extracomment>
        <translation>Lo que cabe en el bidón de agua nueva. Dice cuándo llenarlo, y si podría desbordar el acuario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far ahead the values are followed. Empty: {ahead} days.</source>
        <extracomment>water.days</extracomment>
        <translation>Hasta dónde se siguen los valores. Vacío: {ahead} días.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water, tested when all salt is clear. Empty: that of the tank.</source>
        <extracomment>water.salinity</extracomment>
        <translation>Del agua nueva, medida cuando toda la sal está clara. Vacío: la del acuario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water as it goes in. Far from the tank's, and you are warned. Empty: not checked.</source>
        <extracomment>water.temperature</extracomment>
        <translation>Del agua nueva al entrar. Lejos de la del acuario, se le avisa. Vacío: no se comprueba.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the new water holds of this, from a test of it. Empty: that of natural seawater at the same salinity, which a salt mix may miss.</source>
        <extracomment>water.value</extracomment>
        <translation>Lo que tiene el agua nueva de esto, según una prueba. Vacío: lo del agua de mar natural a la misma salinidad, que una mezcla de sales puede no alcanzar.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much new water you mix at a time.</source>
        <extracomment>water.mix_volume</extracomment>
        <translation>Cuánta agua nueva prepara cada vez.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag of salt mix: how much of it the bag says to take.</source>
        <extracomment>water.label_mass</extracomment>
        <translation>De la bolsa de mezcla de sales: cuánto dice que se tome.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: for how much water that is.</source>
        <extracomment>water.label_water</extracomment>
        <translation>De la bolsa: para cuánta agua es eso.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: the salinity that it is said to give.</source>
        <extracomment>water.label_salinity</extracomment>
        <translation>De la bolsa: la salinidad que se dice que da.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you measured in the bucket when all was clear. What to add, salt or water, follows from it.</source>
        <extracomment>water.mix_measured</extracomment>
        <translation>Lo que midió en el cubo cuando todo estaba claro. De ahí sale qué añadir, sal o agua.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What skimmer, algae and media take out in a day, as a share. Empty: nothing leaves but by exchange.</source>
        <extracomment>water.nitrate_loss, water.phosphate_loss</extracomment>
        <translation>Lo que espumador, algas y medios retiran en un día, como parte. Vacío: nada sale salvo por el cambio de agua.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is in the jug now. Two levels show what the pump really took out of it.</source>
        <extracomment>level.level</extracomment>
        <translation>Lo que hay ahora en el bidón. Dos niveles muestran lo que la bomba tomó de verdad.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was left before you filled it up. Empty: nobody looked, and the time before is not checked.</source>
        <extracomment>level.before</extracomment>
        <translation>Lo que quedaba antes de rellenarlo. Vacío: nadie miró, y el tiempo anterior no se comprueba.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the level was read. Empty: now.</source>
        <extracomment>level.at</extracomment>
        <translation>Cuándo se leyó el nivel. Vacío: ahora.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who read it.</source>
        <extracomment>level.who</extracomment>
        <translation>Quién lo leyó.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When somebody is back at the tank. What must be filled before, and what falls due meanwhile, follows.</source>
        <extracomment>absence.until</extracomment>
        <translation>Cuándo vuelve alguien junto al acuario. De ahí sale lo que hay que rellenar antes, y lo que toca entretanto.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What happened: a test, a dose by hand, a water change, or only a note.</source>
        <extracomment>entry.kind</extracomment>
        <translation>Lo que pasó: una prueba, una dosis a mano, un cambio de agua, o solo una nota.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was tested.</source>
        <extracomment>entry.parameter</extracomment>
        <translation>Lo que se midió.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the test showed, in the unit of the kit. Note every test, good ones too: the use per day is learned from them.</source>
        <extracomment>entry.value</extracomment>
        <translation>Lo que mostró la prueba, en la unidad del kit. Anote cada prueba, también las buenas: de ellas se aprende el consumo diario.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug the dose came from. What its batch carried is kept with the dose.</source>
        <extracomment>entry.stock</extracomment>
        <translation>El bidón del que vino la dosis. Lo que llevaba su preparación se guarda con la dosis.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was given, all of it at this one time.</source>
        <extracomment>entry.amount</extracomment>
        <translation>Cuánto se dio, todo en este único momento.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water was changed at once.</source>
        <extracomment>entry.litres</extracomment>
        <translation>Cuánta agua se cambió de golpe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Anything worth finding again: a lost coral, a new lamp, a cleaned pump.</source>
        <extracomment>entry.text</extracomment>
        <translation>Lo que merece encontrarse otra vez: un coral perdido, una lámpara nueva, una bomba limpiada.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When it was. Empty: now.</source>
        <extracomment>entry.at</extracomment>
        <translation>Cuándo fue. Vacío: ahora.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which kit or meter, so that a jump can be laid at a new kit's door.</source>
        <extracomment>entry.kit</extracomment>
        <translation>Qué kit o medidor, para que un salto pueda achacarse a un kit nuevo.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who did it, so that two people do not dose twice.</source>
        <extracomment>entry.who</extracomment>
        <translation>Quién lo hizo, para que dos personas no dosifiquen dos veces.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From when nobody wants to hear a pump. Empty: pumps may run at any time.</source>
        <extracomment>timetable.quiet_from</extracomment>
        <translation>Desde cuándo nadie quiere oír una bomba. Vacío: las bombas pueden funcionar a cualquier hora.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Until when it is to be quiet. Over midnight is fine.</source>
        <extracomment>timetable.quiet_to</extracomment>
        <translation>Hasta cuándo debe haber silencio. Puede pasar de medianoche.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long doses of alkalinity and of calcium stay apart, so that they do not meet undiluted. Empty: {apart} minutes; never less than {least_apart}. Common practice.</source>
        <extracomment>timetable.apart</extracomment>
        <translation>Cuánto tiempo se separan las dosis de alcalinidad y de calcio, para que no se junten sin diluir. Vacío: {apart} minutos; nunca menos de {least_apart}. Práctica común.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For pumps on one supply or outlet: no two run at once.</source>
        <extracomment>timetable.one_at_a_time</extracomment>
        <translation>Para bombas en una misma alimentación o salida: nunca dos a la vez.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many doses the day's amount is given. Empty: as the pump is set, or fewer where the quiet hours leave less room.</source>
        <extracomment>timetable.doses_wanted</extracomment>
        <translation>En cuántas dosis se da la cantidad del día. Vacío: como está ajustada la bomba, o menos donde las horas de silencio dejan menos sitio.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>No dose of this pump before that time of day. Empty: any time.</source>
        <extracomment>timetable.first_at</extracomment>
        <translation>Ninguna dosis de esta bomba antes de esa hora. Vacío: cualquier hora.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The fewest doses you would accept where the wanted number does not fit. Empty: no bound.</source>
        <extracomment>timetable.doses_fewest</extracomment>
        <translation>Las dosis mínimas que aceptaría si no cabe el número deseado. Vacío: sin límite.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most doses you would accept. Empty: no bound.</source>
        <extracomment>timetable.doses_most</extracomment>
        <translation>Las dosis máximas que aceptaría. Vacío: sin límite.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that ran in. None, if a test alone shows that a value is too high.</source>
        <extracomment>recovery.stock</extracomment>
        <translation>El bidón que se vació en el acuario. Ninguno, si solo una prueba muestra que un valor está demasiado alto.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much ran in: what is missing from the jug. If unsure, take the most it can have been.</source>
        <extracomment>recovery.ran_in</extracomment>
        <translation>Cuánto entró: lo que falta en el bidón. En caso de duda tome lo máximo que pudo ser.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The value that is too high. What ran in may raise several; take the worst.</source>
        <extracomment>recovery.parameter</extracomment>
        <translation>El valor que está demasiado alto. Lo que entró puede subir varios; tome el peor.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What a test showed since. Empty: what ran in, on top of the last test before.</source>
        <extracomment>recovery.measured</extracomment>
        <translation>Lo que mostró una prueba desde entonces. Vacío: lo que entró, sobre la última prueba anterior.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where it is to come down to. Empty: the top of what is usually kept.</source>
        <extracomment>recovery.target</extracomment>
        <translation>Hasta dónde debe bajar. Vacío: el tope de lo que se suele mantener.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Milky water means that lime is falling out: what was dosed is leaving the water by itself, and a test is needed before anything else.</source>
        <extracomment>recovery.cloudy</extracomment>
        <translation>Agua lechosa significa que precipita cal: lo dosificado deja el agua por sí solo, y hace falta una prueba antes que nada.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>White film on glass or heaters is lime that has fallen out.</source>
        <extracomment>recovery.white_film</extracomment>
        <translation>Una película blanca en vidrio o calentadores es cal que ha precipitado.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most new water you can mix and bring in, in a day. Empty: {largest}&#xa0;% of the tank, which is the most in any case.</source>
        <extracomment>recovery.most_per_day</extracomment>
        <translation>Lo máximo de agua nueva que puede preparar y traer en un día. Vacío: {largest}&#xa0;% del acuario, que es el máximo en todo caso.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether doses of this one stop as well while the other value comes down. It then falls by what the animals use.</source>
        <extracomment>recovery.hold</extracomment>
        <translation>Si las dosis de este también paran mientras el otro valor baja. Entonces baja lo que consumen los animales.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which value the chart below shows. It changes nothing in the plan.</source>
        <extracomment>shown.parameter</extracomment>
        <translation>Qué valor muestra el gráfico de abajo. No cambia nada en el plan.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The paper in your printer. The letters keep their size; smaller paper takes more sheets.</source>
        <extracomment>printed.paper</extracomment>
        <translation>El papel de su impresora. Las letras mantienen su tamaño; un papel menor lleva más hojas.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Alkalinity</source>
        <extracomment>alkalinity</extracomment>
        <translation>Alcalinidad</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much acid the water can take up before its pH falls for good. Corals build skeleton from it: two equivalents for every calcium. Counted in dKH, meq per L or ppm as CaCO3.</source>
        <extracomment>alkalinity</extracomment>
        <translation>Cuánto ácido puede tomar el agua antes de que su pH baje de forma definitiva. Los corales hacen de ella su esqueleto: dos equivalentes por cada calcio. Se cuenta en dKH, meq por L o ppm como CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far the water is above the point at which lime dissolves. Corals need it above 1; where it is very high, lime falls out by itself.</source>
        <extracomment>aragonite saturation</extracomment>
        <translation>Cuánto supera el agua el punto en que se disuelve la cal. Los corales la necesitan por encima de 1; donde es muy alta, la cal precipita por sí sola.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What was mixed in a jug at one time. A new batch of another strength makes the cards of the old one void.</source>
        <extracomment>batch</extracomment>
        <translation>Lo que se preparó en un bidón de una vez. Una preparación nueva de otra concentración anula las tarjetas de la anterior.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Calcium</source>
        <extracomment>calcium</extracomment>
        <translation>Calcio</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>With alkalinity the material of coral skeleton. One meq of alkalinity used goes with 20.04 mg of calcium.</source>
        <extracomment>calcium</extracomment>
        <translation>Con la alcalinidad, el material del esqueleto de los corales. A un meq de alcalinidad consumida van 20,04 mg de calcio.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Finding out what a pump really gives: let it run for a known time, measure what came out, three times or more.</source>
        <extracomment>calibration</extracomment>
        <translation>Averiguar lo que da de verdad una bomba: dejarla funcionar un tiempo conocido, medir lo que salió, tres veces o más.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Correction</source>
        <extracomment>correction</extracomment>
        <translation>Corrección</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing back a value that has fallen, slowly, over days. A fast rise harms animals more than the low value did.</source>
        <extracomment>correction</extracomment>
        <translation>Devolver un valor que ha bajado, despacio, durante días. Una subida rápida daña a los animales más que el valor bajo.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>dKH (degrees of carbonate hardness)</source>
        <extracomment>dKH</extracomment>
        <translation>dKH (grados de dureza de carbonatos)</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A unit of alkalinity. 2.8 dKH are 1 meq per L, or 50 ppm as CaCO3.</source>
        <extracomment>dKH</extracomment>
        <translation>Una unidad de alcalinidad. 2,8 dKH son 1 meq por L, o 50 ppm como CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Dose and test</source>
        <extracomment>dose and test</extracomment>
        <translation>Dosificar y medir</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A way to find the net volume: give a known dose, test the rise, and see how much water it was spread through.</source>
        <extracomment>dose and test</extracomment>
        <translation>Una forma de hallar el volumen neto: dar una dosis conocida, medir la subida, y ver en cuánta agua se repartió.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The paper that hangs on the stand: how much of what, when, until which date, and when to stop.</source>
        <extracomment>dose card</extracomment>
        <translation>El papel que cuelga del mueble: cuánto de qué, cuándo, hasta qué fecha, y cuándo parar.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hard limit</source>
        <extracomment>hard limit</extracomment>
        <translation>Límite estricto</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A bound that no plan passes, whatever the reason. Inside it lies the recommended one, which may be passed with a written reason.</source>
        <extracomment>hard limit</extracomment>
        <translation>Un tope que ningún plan pasa, sea cual sea la razón. Dentro de él está el recomendado, que se puede pasar con una razón escrita.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hydrate</source>
        <extracomment>hydrate</extracomment>
        <translation>Hidrato</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt with water built into its crystals. A gram of it holds less of what you want: calcium chloride dihydrate is a quarter water.</source>
        <extracomment>hydrate</extracomment>
        <translation>Una sal con agua en sus cristales. Un gramo contiene menos de lo que quiere: el cloruro de calcio dihidrato es agua en una cuarta parte.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Limewater</source>
        <extracomment>limewater</extracomment>
        <translation>Agua de cal</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Water saturated with calcium hydroxide. It brings calcium and alkalinity in step and lifts the pH, so never more of it than evaporates.</source>
        <extracomment>limewater</extracomment>
        <translation>Agua saturada de hidróxido de calcio. Aporta calcio y alcalinidad al mismo paso y sube el pH, así que nunca más de lo que se evapora.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Filled with water until salt and water together reach the mark. A litre of water poured on the salt makes more than a litre.</source>
        <extracomment>made up to</extracomment>
        <translation>Llenado con agua hasta que sal y agua juntas llegan a la marca. Un litro de agua vertido sobre la sal da más de un litro.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Magnesium</source>
        <extracomment>magnesium</extracomment>
        <translation>Magnesio</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Keeps lime from falling out too readily. Set it right first, then calcium and alkalinity.</source>
        <extracomment>magnesium</extracomment>
        <translation>Evita que la cal precipite con demasiada facilidad. Ajústelo primero, luego calcio y alcalinidad.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Metering pump</source>
        <extracomment>metering pump</extracomment>
        <translation>Bomba dosificadora</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A pump that gives small known amounts. In most, rollers squeeze a soft tube, so that the jug's water touches nothing else.</source>
        <extracomment>metering pump</extracomment>
        <translation>Una bomba que da pequeñas cantidades conocidas. En la mayoría unos rodillos aprietan un tubo blando, así que el agua del bidón no toca nada más.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Natural seawater</source>
        <extracomment>natural seawater</extracomment>
        <translation>Agua de mar natural</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The open sea at salinity 35. What is not known of new water is taken to be so.</source>
        <extracomment>natural seawater</extracomment>
        <translation>El mar abierto a salinidad 35. Lo que no se sabe del agua nueva se toma así.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>All the water that moves together, without rock, sand and equipment. Often a quarter less than the glass would hold.</source>
        <extracomment>net volume</extracomment>
        <translation>Toda el agua que se mueve junta, sin roca, arena ni equipo. A menudo una cuarta parte menos de lo que cabría en el vidrio.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Nitrate</source>
        <extracomment>nitrate</extracomment>
        <translation>Nitrato</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the nitrogen in food. A little feeds corals and algae; much of it comes from feeding too much.</source>
        <extracomment>nitrate</extracomment>
        <translation>En lo que se convierte el nitrógeno del alimento. Un poco nutre corales y algas; mucho viene de dar demasiado alimento.</translation>
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
        <translation>Lo ácida o alcalina que es el agua. Oscila con la luz y el aire; ninguna dosis debería subirlo más de unos 0,2 en una hora.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Phosphate</source>
        <extracomment>phosphate</extracomment>
        <translation>Fosfato</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the phosphorus in food. Corals need a trace of it; a label in P2O5 or P must not be read as phosphate.</source>
        <extracomment>phosphate</extracomment>
        <translation>En lo que se convierte el fósforo del alimento. Los corales necesitan una traza; una etiqueta en P2O5 o P no debe leerse como fosfato.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Precipitation</source>
        <extracomment>precipitation</extracomment>
        <translation>Precipitación</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Lime falling out of the water: milky clouds, white films, crust on pumps. It takes calcium and alkalinity with it, so no figure holds any longer.</source>
        <extracomment>precipitation</extracomment>
        <translation>Cal que cae del agua: nubes lechosas, películas blancas, costra en las bombas. Se lleva calcio y alcalinidad, así que ninguna cifra vale ya.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Prime</source>
        <extracomment>prime</extracomment>
        <translation>Cebar</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Run the pump until liquid stands at the end of the line. Without it the first doses are air.</source>
        <extracomment>prime</extracomment>
        <translation>Hacer funcionar la bomba hasta que haya líquido al final del tubo. Sin ello las primeras dosis son aire.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Pump head</source>
        <extracomment>pump head</extracomment>
        <translation>Cabezal de bomba</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The part with rollers and tube that wears. A worn head turns as before and gives less.</source>
        <extracomment>pump head</extracomment>
        <translation>La parte con rodillos y tubo que se desgasta. Un cabezal gastado gira como antes y da menos.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Ramp</source>
        <extracomment>ramp</extracomment>
        <translation>Rampa</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The line on the chart that a value is to follow during a correction, with a band for what is not known exactly.</source>
        <extracomment>ramp</extracomment>
        <translation>La línea del gráfico que un valor debe seguir durante una corrección, con una banda para lo que no se sabe con exactitud.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What a test showed, with the time of the test. It is never exact: every kit has its plus and minus.</source>
        <extracomment>reading</extracomment>
        <translation>Lo que mostró una prueba, con la hora de la prueba. Nunca es exacta: cada kit tiene su más y su menos.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing down a value that is too high: stop the doses, change water, or both. Never by dosing something against it.</source>
        <extracomment>recovery</extracomment>
        <translation>Bajar un valor que está demasiado alto: parar las dosis, cambiar agua, o ambas cosas. Nunca dosificando algo en contra.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How salty the water is; open sea has about 35. Shown as ppt, practical salinity or specific gravity.</source>
        <extracomment>salinity</extracomment>
        <translation>Lo salada que es el agua; el mar abierto tiene unos 35. Se muestra en ppt, salinidad práctica o densidad relativa.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Siphon</source>
        <extracomment>siphon</extracomment>
        <translation>Sifón</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A jug emptying itself into the tank through its line. End the line above the water with an air gap, and stand the jug low.</source>
        <extracomment>siphon</extracomment>
        <translation>Un bidón que se vacía solo en el acuario por su tubo. Termine el tubo por encima del agua con un espacio de aire, y ponga el bidón bajo.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Solubility</source>
        <extracomment>solubility</extracomment>
        <translation>Solubilidad</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much of a salt will dissolve. In the cold most dissolve less; lime dissolves less in the warm.</source>
        <extracomment>solubility</extracomment>
        <translation>Cuánto se disuelve de una sal. En frío la mayoría se disuelve menos; la cal se disuelve menos en caliente.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Specific gravity</source>
        <extracomment>specific gravity</extracomment>
        <translation>Densidad relativa</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much heavier than fresh water the tank's water is, as a hydrometer shows it. It depends on temperature, so say at which.</source>
        <extracomment>specific gravity</extracomment>
        <translation>Cuánto más pesada que el agua dulce es la del acuario, como muestra un densímetro. Depende de la temperatura, así que diga a cuál.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stale reading</source>
        <extracomment>stale reading</extracomment>
        <translation>Lectura desactualizada</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A reading too old to dose from: alkalinity after 3 days, calcium after 7, magnesium after 14. Test again first.</source>
        <extracomment>stale reading</extracomment>
        <translation>Una lectura demasiado antigua para dosificar: alcalinidad tras 3 días, calcio tras 7, magnesio tras 14. Mida antes de nuevo.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stock solution</source>
        <extracomment>stock solution</extracomment>
        <translation>Solución madre</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt dissolved in water, strong enough to be dosed by the millilitre.</source>
        <extracomment>stock solution</extracomment>
        <translation>Una sal disuelta en agua, lo bastante fuerte para dosificarla por mililitros.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Top-off</source>
        <extracomment>top-off</extracomment>
        <translation>Relleno</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Fresh water that replaces what evaporates, so that salinity stays.</source>
        <extracomment>top-off</extracomment>
        <translation>Agua dulce que repone lo que se evapora, para que la salinidad se mantenga.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two-part</source>
        <extracomment>two-part</extracomment>
        <translation>Dos bidones igualados</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two jugs, one for alkalinity and one for calcium, so strong that equal millilitres keep both in step. They must never meet undiluted.</source>
        <extracomment>two-part</extracomment>
        <translation>Dos bidones, uno para la alcalinidad y otro para el calcio, tan fuertes que mililitros iguales mantienen ambos al mismo paso. Nunca deben juntarse sin diluir.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Uncertainty</source>
        <extracomment>uncertainty</extracomment>
        <translation>Incertidumbre</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far a figure may be off, either way. Nineteen in twenty true values lie within the ± that is shown.</source>
        <extracomment>uncertainty</extracomment>
        <translation>Cuánto puede desviarse una cifra, en un sentido u otro. Diecinueve de cada veinte valores verdaderos están dentro del ± que se muestra.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Giving back every day what the animals use in a day, so that values stay where they are.</source>
        <extracomment>upkeep</extracomment>
        <translation>Devolver cada día lo que los animales consumen en un día, para que los valores se queden donde están.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Use per day</source>
        <extracomment>use per day</extracomment>
        <translation>Consumo diario</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What the animals take out of the water in a day. It grows with the corals and falls when they suffer.</source>
        <extracomment>use per day</extracomment>
        <translation>Lo que los animales toman del agua en un día. Crece con los corales y baja cuando sufren.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Void card</source>
        <extracomment>void card</extracomment>
        <translation>Tarjeta anulada</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A card that must not be followed any more, since its plan or its jug has changed. Take it off the stand and say so in the window.</source>
        <extracomment>void card</extracomment>
        <translation>Una tarjeta que ya no debe seguirse, porque su plan o su bidón ha cambiado. Descuélguela del mueble y dígalo en la ventana.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Old water out, new water in, at once or slowly all day. A slow exchange of the whole volume leaves a little over a third of the old water.</source>
        <extracomment>water exchange</extracomment>
        <translation>Sale agua vieja, entra agua nueva, de golpe o despacio todo el día. Un cambio lento de todo el volumen deja algo más de un tercio del agua vieja.</translation>
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
        <translation>L por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>US gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>US gal por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>imperial gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>imperial gal por día</translation>
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
        <translation>mL por cm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per m3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>kg por m3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per 100 mL</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>g por 100 mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq por L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm como CaCO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como P</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq por L por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>dKH per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>dKH por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mmol por L por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm como CaCO3 por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por kg por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como NO3 por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como N por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como PO4 por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg por L como P por día</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppt per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppt por día</translation>
    </message>
</context>
</TS>
