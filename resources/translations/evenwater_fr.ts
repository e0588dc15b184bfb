<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>evenwater</name>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is not a date. Write it like 2026-12-20 or 2026-12-20 18:00.</source>
        <extracomment>read_return</extracomment>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une date. Écrivez-la comme 2026-12-20 ou 2026-12-20 18:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>“{text}” is more than a year away. Correct its year.</source>
        <extracomment>read_return</extracomment>
        <translation>«&#xa0;{text}&#xa0;» est dans plus d'un an. Corrigez l'année.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>until {back} {clock}, {timestamp} from now</source>
        <extracomment>view</extracomment>
        <translation>jusqu'au {back} {clock}, dans {timestamp}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: say what it holds, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}&#xa0;: dites ce qu'il contient, il pourra alors entrer dans le calcul.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jug}: read its level, then it can be reckoned with.</source>
        <extracomment>_unknown</extracomment>
        <translation>{jug}&#xa0;: lisez son niveau, il pourra alors entrer dans le calcul.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Every jug lasts until you are back.</source>
        <extracomment>_headline</extracomment>
        <translation>Chaque bidon dure jusqu'à votre retour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Nothing is known to be taken from any jug.</source>
        <extracomment>_headline</extracomment>
        <translation>On ne connaît aucun prélèvement dans les bidons.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> {count} more run out too.</source>
        <extracomment>_headline</extracomment>
        <translation> {count} autres se vident aussi.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{jugs} runs out first, on {out}.{more}</source>
        <extracomment>_headline</extracomment>
        <translation>{jugs} se vide en premier, le {out}.{more}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>{needed} are needed until you are back, {level} are in it.</source>
        <extracomment>_row</extracomment>
        <translation>{needed} sont nécessaires jusqu'à votre retour, {level} y sont.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Left as it is, it runs out on {left_alone_until}.</source>
        <extracomment>_row</extracomment>
        <translation> Laissé tel quel, il se vide le {left_alone_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Read its level first: far less is logged than the daily rate takes.</source>
        <extracomment>_row</extracomment>
        <translation> Lisez d'abord son niveau&#xa0;: bien moins est noté que ce que prend le rythme journalier.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source> Even full it lasts only until {lasts_until}; after that {n} doses are left out. Ask somebody to refill it.</source>
        <extracomment>for 1:  Even full it lasts only until {lasts_until}; after that 1 dose is left out. Ask somebody to refill it.; _row</extracomment>
        <translation>
            <numerusform> Même plein il ne dure que jusqu'au {lasts_until}&#xa0;; ensuite il manquera 1 dose. Demandez à quelqu'un de le remplir.</numerusform>
            <numerusform> Même plein il ne dure que jusqu'au {lasts_until}&#xa0;; ensuite il manquera {n} doses. Demandez à quelqu'un de le remplir.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Add {add}</source>
        <extracomment>_row</extracomment>
        <translation>Ajoutez {add}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Lasts</source>
        <extracomment>_row</extracomment>
        <translation>Dure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>Full, and too small</source>
        <extracomment>_row</extracomment>
        <translation>Plein, et trop petit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>test {parameter}, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>tester {parameter}, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>card {plan_id} for {parameter} is valid no longer, {place}</source>
        <extracomment>_dues</extracomment>
        <translation>la fiche {plan_id} pour {parameter} n'est plus valable, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>the batch in {jug} is to be used up</source>
        <extracomment>_dues</extracomment>
        <translation>la préparation dans {jug} est à finir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} asks to test {parameter}, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>le plan {plan_id} demande de tester {parameter}, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>plan {plan_id} for {parameter} ends with its card, {place}</source>
        <extracomment>_of_plan</extracomment>
        <translation>le plan {plan_id} pour {parameter} finit avec sa fiche, {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/absence_view.py"/>
        <source>and {found} more</source>
        <extracomment>_listed</extracomment>
        <translation>et {found} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Daily rise</source>
        <translation>Hausse par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>With what was given</source>
        <translation>Avec ce qui a été donné</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Single dose</source>
        <translation>Une dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Pump running</source>
        <translation>Marche de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Smallest dose</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Plus petite dose</translation>
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
        <translation>Bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Dissolved</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Dissous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Target</source>
        <translation>Valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Evaporation</source>
        <translation>Évaporation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Rise of pH in an hour</source>
        <translation>Hausse du pH en une heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Highest pH</source>
        <translation>pH le plus haut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../glossary.toml"/>
        <source>Aragonite saturation</source>
        <extracomment>_way, aragonite saturation</extracomment>
        <translation>Saturation en aragonite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>It was {number}</source>
        <extracomment>_offers</extracomment>
        <translation>C'était {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>mL per hour</source>
        <extracomment>per_hour, _answered, working</extracomment>
        <translation>mL par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>L (litres) per hour</source>
        <extracomment>per_hour</extracomment>
        <translation>L (litres) par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>{dose} {per_day} ({run_time}) · {in_24_hours} in 24 hours · {total} in all</source>
        <extracomment>_answered</extracomment>
        <translation>{dose} {per_day} ({run_time}) · {in_24_hours} en 24 heures · {total} en tout</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>for {lasts_days}, until {ends}</source>
        <extracomment>_answered</extracomment>
        <translation>pendant {lasts_days}, jusqu'au {ends}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>millilitres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>millilitres par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>litres per hour</source>
        <extracomment>_answered</extracomment>
        <translation>litres par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Read the bottle's own safety sheet first; it wins over this page.</source>
        <translation>Lisez d'abord la fiche de données de sécurité du flacon&#xa0;; elle l'emporte sur cette page.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../chemicals.toml"/>
        <source>If it gets in the eyes, rinse for at least 15 minutes and get medical help.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>En cas de contact avec les yeux, rincez au moins 15 minutes et consultez un médecin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>More doses a day would make it faster.</source>
        <translation>Plus de doses par jour iraient plus vite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A faster pump or a stronger stock would make it faster.</source>
        <translation>Une pompe plus rapide ou une solution plus forte irait plus vite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>Sodium bicarbonate, which does not lift pH at once, would make it faster.</source>
        <translation>Le bicarbonate de sodium, qui ne fait pas monter le pH tout de suite, irait plus vite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>A stronger additive than limewater would make it faster.</source>
        <translation>Un additif plus fort que l'eau de chaux irait plus vite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <source>What it does to {set_by} sets the pace</source>
        <extracomment>_set_by</extracomment>
        <translation>Son effet sur une autre valeur ({set_by}) fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source> too</source>
        <extracomment>_bar, _checked</extracomment>
        <translation> aussi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per L</source>
        <extracomment>_bar, _bars, a unit beside a figure</extracomment>
        <translation>g par L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value}, at least {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value}, au moins {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/answer.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{item_value} of {bound}</source>
        <extracomment>_bar</extracomment>
        <translation>{item_value} sur {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now</source>
        <translation>Le journal tel qu'il est maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before the first edit of the day</source>
        <translation>Avant la première modification du jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before an update of the program</source>
        <translation>Avant une mise à jour du programme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Before a copy was restored</source>
        <translation>Avant la restauration d'une copie</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;readings</source>
        <extracomment>for 1: {n}&#xa0;reading</extracomment>
        <translation>
            <numerusform>{n}&#xa0;relevé</numerusform>
            <numerusform>{n}&#xa0;relevés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;doses</source>
        <extracomment>for 1: {n}&#xa0;dose</extracomment>
        <translation>
            <numerusform>{n}&#xa0;dose</numerusform>
            <numerusform>{n}&#xa0;doses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;water exchanges</source>
        <extracomment>for 1: {n}&#xa0;water exchange</extracomment>
        <translation>
            <numerusform>{n}&#xa0;changement d'eau</numerusform>
            <numerusform>{n}&#xa0;changements d'eau</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;notes</source>
        <extracomment>for 1: {n}&#xa0;note</extracomment>
        <translation>
            <numerusform>{n}&#xa0;note</numerusform>
            <numerusform>{n}&#xa0;notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;calibrations</source>
        <extracomment>for 1: {n}&#xa0;calibration</extracomment>
        <translation>
            <numerusform>{n}&#xa0;étalonnage</numerusform>
            <numerusform>{n}&#xa0;étalonnages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;batches</source>
        <extracomment>for 1: {n}&#xa0;batch</extracomment>
        <translation>
            <numerusform>{n}&#xa0;préparation</numerusform>
            <numerusform>{n}&#xa0;préparations</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk is full</source>
        <translation>le disque est plein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder is read-only</source>
        <translation>son dossier est en lecture seule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>its folder cannot be written to</source>
        <translation>on ne peut pas écrire dans son dossier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the disk does not answer</source>
        <translation>le disque ne répond pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log is busy in another window or program</source>
        <translation>le journal est occupé dans une autre fenêtre ou un autre programme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>the log does not pass its check. Restore an older copy</source>
        <translation>le journal ne passe pas son contrôle. Restaurez une copie plus ancienne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The log as it is now is copied first. That copy can be restored in the same way.</source>
        <translation>Le journal tel qu'il est maintenant est d'abord copié. Cette copie peut être restaurée de la même façon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restoring cannot be undone with Undo. Undo then takes back what was done before the copy was made.</source>
        <translation>Restaurer ne s'annule pas avec Annuler. Annuler reprend alors ce qui a été fait avant la copie.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;systems</source>
        <extracomment>for 1: {n}&#xa0;system; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;système</numerusform>
            <numerusform>{n}&#xa0;systèmes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;entries</source>
        <extracomment>for 1: {n}&#xa0;entry; _holds</extracomment>
        <translation>
            <numerusform>{n}&#xa0;entrée</numerusform>
            <numerusform>{n}&#xa0;entrées</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> up to {newest}</source>
        <extracomment>_holds</extracomment>
        <translation> jusqu'au {newest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;changes</source>
        <extracomment>for 1: {n}&#xa0;change; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;changement</numerusform>
            <numerusform>{n}&#xa0;changements</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> of systems, jugs, pumps or corrections</source>
        <extracomment>lost</extracomment>
        <translation> de systèmes, bidons, pompes ou corrections</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>From the log would go: {parts}.</source>
        <extracomment>lost</extracomment>
        <translation>Du journal partiraient&#xa0;: {parts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Nothing that the log holds now would go.</source>
        <extracomment>lost</extracomment>
        <translation>Rien de ce que contient le journal maintenant ne partirait.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source> {cards} in use would be void: take them down.</source>
        <extracomment>for 1:  {cards} in use would be void: take it down.; lost</extracomment>
        <translation>
            <numerusform> {cards} en usage serait annulée&#xa0;: décrochez-la.</numerusform>
            <numerusform> {cards} en usage seraient annulées&#xa0;: décrochez-les.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>{n}&#xa0;cards</source>
        <extracomment>for 1: {n}&#xa0;card; lost</extracomment>
        <translation>
            <numerusform>{n}&#xa0;fiche</numerusform>
            <numerusform>{n}&#xa0;fiches</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Restore the copy of {made}?</source>
        <extracomment>asked</extracomment>
        <translation>Restaurer la copie du {made}&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>&amp;Restore the copy of {made}</source>
        <extracomment>offered</extracomment>
        <translation>&amp;Restaurer la copie du {made}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} holds {newest}. What was noted after that is lost. The damaged file is kept beside the copies. Close every other window of this log first.</source>
        <extracomment>damaged</extracomment>
        <translation>La copie du {made} contient {newest}. Ce qui a été noté ensuite est perdu. Le fichier abîmé est gardé à côté des copies. Fermez d'abord toute autre fenêtre de ce journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>The copy of {made} is restored. The log as it was is kept as {kept}.</source>
        <extracomment>restored</extracomment>
        <translation>La copie du {made} est restaurée. Le journal tel qu'il était est gardé sous {kept}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Saved as {place}.</source>
        <extracomment>carried</extracomment>
        <translation>Enregistré sous {place}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>Copies lie in {folder}. One is made before the first edit of a day, and the last ten of these are kept; besides, one before each update and before each restoration, which stay. A disk can fail: save a copy elsewhere now and then.</source>
        <extracomment>where</extracomment>
        <translation>Les copies sont dans {folder}. Une est faite avant la première modification d'un jour, et les dix dernières de celles-ci sont gardées&#xa0;; en outre une avant chaque mise à jour et avant chaque restauration, qui restent. Un disque peut lâcher&#xa0;: enregistrez de temps en temps une copie ailleurs.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>it could not be written</source>
        <extracomment>no_copy</extracomment>
        <translation>elle n'a pas pu être écrite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/backup_words.py"/>
        <source>No copy of the log could be made today: {cause}.</source>
        <extracomment>no_copy</extracomment>
        <translation>Aucune copie du journal n'a pu être faite aujourd'hui&#xa0;: {cause}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source> by {who}</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation> par {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{words}, was given at {when}{by}. Is this another one?</source>
        <extracomment>_again</extracomment>
        <translation>{words}, a déjà été donné&#xa0;: {when}{by}. Est-ce une autre fois&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Yes, log it too</source>
        <extracomment>_again, LogQuestions.before</extracomment>
        <translation>Oui, noter aussi</translation>
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
        <translation> et </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>{before}, was read on {when} as well. Was it tested again, with fresh reagent?</source>
        <extracomment>_flat</extracomment>
        <translation>{before}, a été lu aussi le {when}. Le test a-t-il été refait, avec un réactif frais&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>Yes, it was tested again</source>
        <extracomment>_flat</extracomment>
        <translation>Oui, le test a été refait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>, the plan that is followed included</source>
        <extracomment>_too_much</extracomment>
        <translation>, le plan suivi compris</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>With this, {name} rises by {given} within 24 hours{with_plan}; the most is {hard}. If it was really given: log it, stop the pump, and test {name}.</source>
        <extracomment>_too_much</extracomment>
        <translation>Avec ceci, {name} monte de {given} en 24 heures{with_plan}&#xa0;; le maximum est {hard}. Si cela a vraiment été donné&#xa0;: notez-le, arrêtez la pompe, et testez {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/before_logging.py"/>
        <source>It was given, log it</source>
        <extracomment>_too_much</extracomment>
        <translation>Cela a été donné, le noter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Good enough to dose by</source>
        <extracomment>_lines</extracomment>
        <translation>Assez bon pour doser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat the calibration</source>
        <extracomment>_lines</extracomment>
        <translation>Refaites l'étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{verdict}: the pump gives {best}.</source>
        <extracomment>_lines</extracomment>
        <translation>{verdict}&#xa0;: la pompe donne {best}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Repeat: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>À refaire&#xa0;: {reason}</translation>
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
        <translation>Remarque&#xa0;: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Against the {setting} it is set to: {bias_value} {more_or_less}.</source>
        <extracomment>_lines</extracomment>
        <translation>Face aux {setting} réglés&#xa0;: {bias_value} {more_or_less}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Z factor: {z_ml_per_g}.</source>
        <extracomment>_lines</extracomment>
        <translation>Facteur Z&#xa0;: {z_ml_per_g}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>mL per g</source>
        <extracomment>_lines</extracomment>
        <translation>mL par g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>A dose of {dose} takes {dose_seconds} at this flow.</source>
        <extracomment>_lines</extracomment>
        <translation>Une dose de {dose} prend {dose_seconds} à ce débit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The line holds {dead_volume}: after a refill run {at_most_seconds}, and see the liquid at its end.</source>
        <extracomment>_lines</extracomment>
        <translation>Le tuyau contient {dead_volume}&#xa0;: après un remplissage, faites tourner {at_most_seconds}, et voyez le liquide au bout.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>Over {window} it gave at worst from {low} {more_or_less} to {high} {more_or_less_2} than set.</source>
        <extracomment>_lines</extracomment>
        <translation>Sur {window} elle a donné au pire de {low} {more_or_less} à {high} {more_or_less_2} que réglé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>The head has {left} of its {life} left{at}.</source>
        <extracomment>_lines</extracomment>
        <translation>Il reste à la tête {left} de ses {life}{at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{mean} (from {mean_2} to {mean_3})</source>
        <extracomment>_interval</extracomment>
        <translation>{mean} (de {mean_2} à {mean_3})</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{n} runs</source>
        <extracomment>for 1: 1 run; _group, _runs</extracomment>
        <translation>
            <numerusform>1 essai</numerusform>
            <numerusform>{n} essais</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>, scattering by {cv}</source>
        <extracomment>_group</extracomment>
        <translation>, dispersion {cv}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>{runs} of {seconds}: {timed}{scatter}.</source>
        <extracomment>_group</extracomment>
        <translation>{runs} de {seconds}&#xa0;: {timed}{scatter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scale</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>cylinder</source>
        <extracomment>_needed, _instrument</extracomment>
        <translation>éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>No run is long enough for this {with_what} to be off by {wanted} at most: the water's temperature is not known well enough.</source>
        <extracomment>_needed</extracomment>
        <translation>Aucun essai n'est assez long pour être juste à {wanted} près avec cet instrument ({with_what})&#xa0;: la température de l'eau n'est pas assez bien connue.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>For this {with_what} and watch to be off by {wanted} at most, a run takes {seconds} or longer and brings {volume}.</source>
        <extracomment>_needed</extracomment>
        <translation>Pour être juste à {wanted} près avec cet instrument ({with_what}) et ce chronomètre, un essai dure {seconds} ou plus et donne {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>In {per_hours} the flow {rises} by {drift} (give or take {drift_half_width}). Expected now: {expected} (give or take {expected_half_width}).</source>
        <extracomment>_wear</extracomment>
        <translation>En {per_hours} le débit {rises} de {drift} (à {drift_half_width} près). Attendu maintenant&#xa0;: {expected} (à {expected_half_width} près).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>rises</source>
        <extracomment>_wear, _pace</extracomment>
        <translation>monte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>falls</source>
        <extracomment>_wear, _trend, _pace</extracomment>
        <translation>baisse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It is {limit} or more off already.</source>
        <extracomment>_leaves</extracomment>
        <translation>L'écart est déjà de {limit} ou plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_lines.py"/>
        <source>It will be {limit} off after {hours}{at}, at the earliest after {earliest_hours}{earliest_at}.</source>
        <extracomment>_leaves</extracomment>
        <translation>L'écart sera de {limit} après {hours}{at}, au plus tôt après {earliest_hours}{earliest_at}.</translation>
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
        <translation>mL par min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>more</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>less</source>
        <extracomment>more_or_less, _dosing, _checked</extracomment>
        <translation>de moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Run {runs}</source>
        <extracomment>_numbers</extracomment>
        <translation>Essai {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Runs {first} and {last}</source>
        <extracomment>_numbers</extracomment>
        <translation>Essais {first} et {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> each</source>
        <extracomment>_each</extracomment>
        <translation> chacun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This scale</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Cette balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>This cylinder</source>
        <extracomment>_too_coarse</extracomment>
        <translation>Cette éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{with_what} tells the flow of such a run to {share} only, and {most} is the least that is of use.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{with_what} ne donne le débit d'un tel essai qu'à {share} près, et {most} est le moins qui serve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Measure the temperature of the water, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Mesurez la température de l'eau, ou prenez plus fin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{head} Let the pump run for {seconds} or longer, or take a finer one.</source>
        <extracomment>_too_coarse</extracomment>
        <translation>{head} Faites tourner la pompe {seconds} ou plus, ou prenez plus fin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>There is no run yet. Let the pump run into a cylinder or onto a scale {fewest} times.</source>
        <translation>Il n'y a pas encore d'essai. Faites tourner la pompe {fewest} fois dans une éprouvette ou sur une balance.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump ran and nothing came out. Look for air in the line, crust at its end, a split tube or an empty jug, prime the line and calibrate again.</source>
        <translation>La pompe a tourné et rien n'est sorti. Cherchez de l'air dans le tuyau, une croûte à son bout, un tube fendu ou un bidon vide, amorcez le tuyau et étalonnez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These figures are no flow of a pump. Write them again.</source>
        <translation>Ces chiffres ne sont pas le débit d'une pompe. Écrivez-les de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} brought nothing. Look for air in the line, prime it and repeat.</source>
        <translation>{runs}&#xa0;: rien n'est sorti. Cherchez de l'air dans le tuyau, amorcez-le et recommencez.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{n} runs tell</source>
        <extracomment>for 1: A single run tells</extracomment>
        <translation>
            <numerusform>Un seul essai en dit</numerusform>
            <numerusform>{n} essais en disent</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source> too little. Repeat until there are {fewest} of {seconds} each.</source>
        <translation> trop peu. Recommencez jusqu'à {fewest} essais de {seconds} chacun.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The runs scatter by {spread}, and {most} is the most. Look for air in the line and a worn tube, prime it and repeat.</source>
        <translation>La dispersion des essais est de {spread}, et {most} est le maximum. Cherchez de l'air dans le tuyau et un tube usé, amorcez-le et recommencez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>These runs tell the flow to within {share} only; within {good} would be good. Find out what scatters, or make more runs.</source>
        <translation>Ces essais ne donnent le débit qu'à {share} près&#xa0;; à {good} près serait bon. Trouvez ce qui disperse, ou faites plus d'essais.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>{runs} lasted {seconds}{runs_2}, the others {others}: a short run gives another flow than a long one, so they do not count together. Make {fewest} of one length.</source>
        <translation>{runs}&#xa0;: durée {seconds}{runs_2}, les autres {others}. Un essai court donne un autre débit qu'un long&#xa0;: ils ne comptent donc pas ensemble. Faites-en {fewest} de même durée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Enter {flow} as its flow, and look at the tube.</source>
        <translation>La pompe donne {bias} {more_or_less} que les {setting} réglés. Saisissez {flow} comme débit, et regardez le tube.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The pump gives {bias} {more_or_less} than the {setting} it is set to. Do not dose on with that figure: look for a worn tube, air and crust, then calibrate again. Now it gives {flow}.</source>
        <translation>La pompe donne {bias} {more_or_less} que les {setting} réglés. Ne continuez pas à doser avec ce chiffre&#xa0;: cherchez un tube usé, de l'air et une croûte, puis étalonnez de nouveau. Maintenant elle donne {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>A dose of {dose} takes {dose_seconds}, but these runs lasted {seconds}. </source>
        <translation>Une dose de {dose} prend {dose_seconds}, mais ces essais ont duré {seconds}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Short doses are less accurate: collect several doses of that size and calibrate with them.</source>
        <translation>Les doses courtes sont moins justes&#xa0;: recueillez plusieurs doses de cette taille et étalonnez avec elles.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>Calibrate with runs as long as a dose.</source>
        <translation>Étalonnez avec des essais aussi longs qu'une dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>In {seconds} the pump gives {difference} {more_or_less} per minute than in {than}. Dose by the runs that are nearest to the dose in use.</source>
        <translation>En {seconds} la pompe donne {difference} {more_or_less} par minute qu'en {than}. Dosez d'après les essais les plus proches de la dose en service.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The cylinder's graduation is not said, so {graduation} is taken, the last digit that was read.</source>
        <translation>La graduation de l'éprouvette n'est pas dite&#xa0;: {graduation} est pris, le dernier chiffre lu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The scale's last digit is not said, so {grams} is taken, the last digit that was written.</source>
        <translation>Le dernier chiffre de la balance n'est pas dit&#xa0;: {grams} est pris, le dernier chiffre écrit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The water's temperature is not said, so {degc} is taken, give or take {off}.</source>
        <translation>La température de l'eau n'est pas dite&#xa0;: {degc} est pris, à {off} près.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibration of {at} is still to come. Correct the date, or leave it out.</source>
        <translation>L'étalonnage du {at} est encore à venir. Corrigez la date, ou omettez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The running hours go back from {before} to {after}. After a new head or a new tube the hours begin again: leave out what was measured before.</source>
        <translation>Les heures de marche reculent de {before} à {after}. Après une tête ou un tube neufs les heures recommencent&#xa0;: omettez ce qui a été mesuré avant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head ran from {before} to {after} while only {passed} went by. Correct the hours or the date.</source>
        <translation>La tête a tourné de {before} à {after} alors que seulement {passed} ont passé. Corrigez les heures ou la date.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>How the flow changes cannot be told from a single calibration.</source>
        <translation>Un seul étalonnage ne peut pas dire comment le débit change.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>All calibrations were made at {hours}, so nothing can be said of how the flow changes with running hours.</source>
        <translation>Tous les étalonnages ont été faits à {hours}&#xa0;: rien ne peut donc être dit du changement du débit avec les heures de marche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The line through the calibrations gives no flow at all. Look at the figures of the earlier ones again.</source>
        <translation>La droite à travers les étalonnages ne donne aucun débit. Regardez de nouveau les chiffres des plus anciens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>It is not clear yet that the flow changes: from {low} {more_or_less} to {high} {more_or_less_2} in {hours}, so no date is said. More calibrations will tell.</source>
        <translation>Il n'est pas encore clair que le débit change&#xa0;: de {low} {more_or_less} à {high} {more_or_less_2} en {hours}, donc aucune date n'est dite. D'autres étalonnages le diront.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The calibrations lie {factor} times further off the line than they should. Was the tube or the head changed between them, or air in the line?</source>
        <translation>Les étalonnages sont {factor} fois plus loin de la droite qu'ils ne devraient. Le tube ou la tête ont-ils été changés entre-temps, ou y avait-il de l'air dans le tuyau&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/calibration_words.py"/>
        <source>The head has run {hours} of the {life} that one lasts. Change the head or its tube, then calibrate again.</source>
        <translation>La tête a tourné {hours} sur les {life} que dure une tête. Changez la tête ou son tube, puis étalonnez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Date and time</source>
        <translation>Date et heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Days from now</source>
        <translation>Jours à partir de maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>Running hours (h)</source>
        <translation>Heures de marche (h)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, low end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, borne basse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>{name}, high end</source>
        <extracomment>of_ramp</extracomment>
        <translation>{name}, borne haute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>dose</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>reading</source>
        <extracomment>of_ramp, of_history</extracomment>
        <translation>relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH before a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH avant une dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>pH right after a dose</source>
        <extracomment>of_ramp</extracomment>
        <translation>pH juste après une dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>aragonite saturation</source>
        <extracomment>of_ramp</extracomment>
        <translation>saturation en aragonite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>new water</source>
        <extracomment>of_history, of_exchange</extracomment>
        <translation>eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected by plan {number}</source>
        <extracomment>of_history</extracomment>
        <translation>attendu par le plan {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>all together</source>
        <extracomment>of_together</extracomment>
        <translation>tout ensemble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>low end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>borne basse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>high end</source>
        <extracomment>of_together, of_wear, of_exchange</extracomment>
        <translation>borne haute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>without exchange</source>
        <extracomment>of_together, _spans</extracomment>
        <translation>sans renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>flow</source>
        <extracomment>of_wear</extracomment>
        <translation>débit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>counts</source>
        <extracomment>of_wear</extracomment>
        <translation>compte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>expected today</source>
        <extracomment>of_wear</extracomment>
        <translation>attendu aujourd'hui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <source>value</source>
        <extracomment>of_exchange</extracomment>
        <translation>valeur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chart_table.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Foods</source>
        <extracomment>of_foods</extracomment>
        <translation>Nourritures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Caution</source>
        <extracomment>_lines, _hazards, Given.hazards</extracomment>
        <translation>Prudence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Caution: {caution}</source>
        <extracomment>_lines, _hazards</extracomment>
        <translation>Prudence&#xa0;: {caution}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>Before: {before}</source>
        <extracomment>_lines</extracomment>
        <translation>Avant&#xa0;: {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>At once: {at_once}</source>
        <extracomment>_lines</extracomment>
        <translation>Tout de suite&#xa0;: {at_once}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>After gas exchange: {after_gas_exchange}</source>
        <extracomment>_lines</extracomment>
        <translation>Après l'échange avec l'air&#xa0;: {after_gas_exchange}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <source>pH {ph} ({scale} scale), aragonite saturation {saturation}, alkalinity {alkalinity}, dissolved inorganic carbon {dic}.</source>
        <extracomment>_moment</extracomment>
        <translation>pH {ph} (échelle {scale}), saturation en aragonite {saturation}, alcalinité {alkalinity}, carbone inorganique dissous {dic}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/chemistry_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L</source>
        <extracomment>_moment, _way, a unit beside a figure</extracomment>
        <translation>mmol par L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go on</source>
        <extracomment>clock_words</extracomment>
        <translation>avancent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>later</source>
        <extracomment>clock_words</extracomment>
        <translation>plus tard</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>go back</source>
        <extracomment>clock_words</extracomment>
        <translation>reculent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>earlier</source>
        <extracomment>clock_words</extracomment>
        <translation>plus tôt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>On {at} the clocks on the wall {how} by {by}; those of the pumps do not. </source>
        <extracomment>clock_words</extracomment>
        <translation>Le {at} les horloges au mur {how} de {by}&#xa0;; celles des pompes non. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>No dose is left out and none comes twice, but each comes {by} {comes} by the wall, and so do the quiet hours. </source>
        <extracomment>clock_words</extracomment>
        <translation>Aucune dose ne manque et aucune ne vient deux fois, mais chacune vient {by} {comes} d'après le mur, et les heures de calme aussi. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>Set the pumps' clocks by the wall the next day</source>
        <extracomment>clock_words</extracomment>
        <translation>Remettez les horloges des pompes à l'heure du mur le lendemain</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/clock_change.py"/>
        <source>{begin}{then}{again}: stop the pumps for the {by} that they then show twice.</source>
        <extracomment>clock_words</extracomment>
        <translation>{begin}{then}{again}&#xa0;: arrêtez les pompes pendant le temps ({by}) qu'elles montrent alors deux fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{parameter} used now: {use}.</source>
        <extracomment>_lines</extracomment>
        <translation>{parameter}, consommé maintenant&#xa0;: {use}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>It should now be at {value_value} ({low} to {high}).</source>
        <extracomment>_lines</extracomment>
        <translation>La valeur devrait être maintenant {value_value} ({low} à {high}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>just now</source>
        <extracomment>_lines, age_words</extracomment>
        <translation>à l'instant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{since_days} ago</source>
        <extracomment>_lines</extracomment>
        <translation>il y a {since_days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>From {readings} readings, the last one {age}.</source>
        <extracomment>_lines</extracomment>
        <translation>D'après {readings} relevés, le dernier {age}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>Not believed: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Non cru&#xa0;: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{use_value} (from {low} to {high})</source>
        <extracomment>per_day</extracomment>
        <translation>{use_value} (de {low} à {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In the last weeks use has been steady.</source>
        <extracomment>_trend</extracomment>
        <translation>Ces dernières semaines la consommation est restée stable.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>In a week use {grows} by {per_week} per day.</source>
        <extracomment>_trend</extracomment>
        <translation>En une semaine la consommation {grows} de {per_week} par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>grows</source>
        <extracomment>_trend</extracomment>
        <translation>croît</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_lines.py"/>
        <source>{start} to {end}: {use}</source>
        <extracomment>_period</extracomment>
        <translation>{start} à {end}&#xa0;: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>mg per meq</source>
        <extracomment>_per_meq, _ratio</extracomment>
        <translation>mg par meq</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is no reading yet.</source>
        <translation>Il n'y a pas encore de relevé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>There is only one reading.</source>
        <translation>Il n'y a qu'un relevé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source> To know what is used takes two at least, and more are better. Test again tomorrow.</source>
        <translation> Pour savoir ce qui est consommé, il en faut au moins deux, et plus valent mieux. Testez de nouveau demain.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>These are {count} readings; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Ce sont {count} relevés&#xa0;; {most} peuvent être regardés ensemble. Omettez les plus anciens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>All readings lie within {hours}. What is used in a day cannot be told from that. Test again tomorrow.</source>
        <translation>Tous les relevés tiennent en {hours}. On ne peut pas en tirer ce qui est consommé en un jour. Testez de nouveau demain.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>In {what} {number} a figure is no number or cannot be. Write it again.</source>
        <translation>Un chiffre n'est pas un nombre ou est impossible ({what} {number}). Écrivez-le de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last reading is {age_days} days old, and use may have changed in more than {stale_days} days. Test again.</source>
        <translation>Le dernier relevé a {age_days} jours, et la consommation peut avoir changé en plus de {stale_days} jours. Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The rise cannot be told from the scatter of the two tests, so it says nothing of the volume. Test more often, or after a larger correction.</source>
        <translation>La hausse ne se distingue pas de la dispersion des deux tests&#xa0;: elle ne dit donc rien du volume. Testez plus souvent, ou après une correction plus grande.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>For each meq of alkalinity {ratio} of calcium are used ({low} to {high}); skeletons take {expected}. Something is not as it seems.</source>
        <translation>Pour chaque meq d'alcalinité, {ratio} de calcium sont consommés ({low} à {high})&#xa0;; les squelettes prennent {expected}. Quelque chose n'est pas comme il paraît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>How much alkalinity is used is not known well enough to hold calcium against it.</source>
        <translation>La consommation d'alcalinité n'est pas assez bien connue pour lui comparer le calcium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>One of the two tests may be wrong: check both with a standard, or with another kit.</source>
        <translation>L'un des deux tests peut être faux&#xa0;: vérifiez les deux avec un étalon, ou avec un autre kit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may fall out without calcium, as magnesium hydroxide where a strong dose enters: look for white crust there.</source>
        <translation>L'alcalinité peut précipiter sans calcium, en hydroxyde de magnésium là où entre une dose forte&#xa0;: cherchez-y une croûte blanche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may go elsewhere: much food that turns into nitrate takes it, and skeletons that hold magnesium.</source>
        <translation>L'alcalinité peut partir ailleurs&#xa0;: beaucoup de nourriture qui devient nitrate en prend, et des squelettes qui contiennent du magnésium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Alkalinity may come from elsewhere: where nitrate is used up, or from a dose or an exchange that is not in the log.</source>
        <translation>L'alcalinité peut venir d'ailleurs&#xa0;: là où du nitrate est consommé, ou d'une dose ou d'un changement d'eau absents du journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>A reading of {at} is more than {years} years old. Leave it out, or correct the year.</source>
        <translation>Un relevé du {at} a plus de {years} ans. Omettez-le, ou corrigez l'année.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The {what} of {at} is still to come. Correct the time, or leave it out until it is done.</source>
        <translation>Encore à venir ({what}, {at}). Corrigez l'heure, ou omettez cette ligne jusqu'à ce que ce soit fait.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{value} on {at} is {off} {above} what the others say, so it is not counted.</source>
        <translation>{value} le {at} est de {off} {above} de ce que disent les autres&#xa0;: ce n'est donc pas compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>above</source>
        <extracomment>_leaving</extracomment>
        <translation>au-dessus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>below</source>
        <extracomment>_leaving</extracomment>
        <translation>au-dessous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Before {at} the value {rose} at once by {by}, which nothing in the log explains. Was a dose or an exchange not written down?</source>
        <translation>Avant le {at} la valeur {rose} d'un coup de {by}, ce que rien dans le journal n'explique. Une dose ou un changement d'eau n'ont-ils pas été notés&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>rose</source>
        <translation>a monté</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>fell</source>
        <translation>a baissé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>Use changed about {at}, from {before} to {after}. What was planned on the old use needs planning again.</source>
        <translation>La consommation a changé vers le {at}, de {before} à {after}. Ce qui a été planifié sur l'ancienne est à planifier de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>The last {count} readings all say {value}. Were they really tested, each with fresh reagent?</source>
        <translation>Les {count} derniers relevés disent tous {value}. Ont-ils vraiment été testés, chacun avec un réactif frais&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>More {parameter} is made in the tank than is used up: {per_day}.</source>
        <translation>Il s'en forme dans le bac plus qu'il n'en est consommé ({parameter})&#xa0;: {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>{parameter} rises by {per_day} more than the log explains. A dose is missing from the log, or is stronger than written.</source>
        <translation>{parameter} monte de {per_day} de plus que le journal n'explique. Une dose manque au journal, ou est plus forte qu'écrit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/consumption_words.py"/>
        <source>It is not clear yet that anything is used: {low} to {high}. More readings will tell.</source>
        <translation>Il n'est pas encore clair que quelque chose soit consommé&#xa0;: {low} à {high}. D'autres relevés le diront.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The test reads high</source>
        <translation>Le test est trop haut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Two days were missed</source>
        <translation>Deux jours sans dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The pump failed</source>
        <translation>La pompe est en panne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the tests read</source>
        <translation>Ce que disent les tests</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../glossary.toml"/>
        <source>Reading</source>
        <extracomment>_headings, card, reading</extracomment>
        <translation>Relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Initials</source>
        <extracomment>card</extracomment>
        <translation>Initiales</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>What the test read and what was set</source>
        <translation>Ce qu'a dit le test et ce qui a été réglé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reading or dose</source>
        <translation>Relevé ou dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>What was really given</source>
        <translation>Ce qui a vraiment été donné</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Amount given</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Quantité donnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {stop}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Prenez cette fiche quand {name} dépasse {stop}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when {name} reads above {early} before {by}, or above {stop} at any time.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Prenez cette fiche quand {name} dépasse {early} avant le {by}, ou {stop} à tout moment.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>At once</source>
        <extracomment>_reads_high, _days_missed, _pump_failed</extracomment>
        <translation>Tout de suite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump.</source>
        <extracomment>_reads_high, _days_missed, _bottle</extracomment>
        <translation>Arrêtez la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing else that raises {name}.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Ne donnez rien d'autre qui relève {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test again with a fresh kit. Let a second person do it, if there is one.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Testez de nouveau avec un kit neuf. Faites-le faire par une autre personne, s'il y en a une.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test not high</source>
        <extracomment>_reads_high</extracomment>
        <translation>Second test pas haut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Start the pump as it was set. The plan goes on. Make nothing up.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Remettez la pompe en marche comme elle était réglée. Le plan continue. Ne rattrapez rien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Second test high too</source>
        <extracomment>_reads_high</extracomment>
        <translation>Second test haut aussi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Laissez la pompe arrêtée. Appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads above {hard}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Au-dessus de {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Call the keeper at once. Exchange water only when the keeper says so.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Appelez tout de suite l'éleveur. Ne changez de l'eau que si l'éleveur le dit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every day</source>
        <extracomment>_reads_high, _days_missed, _steps</extracomment>
        <translation>Chaque jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} at the same hour. Write it down.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Testez {name} à la même heure. Notez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>It has fallen</source>
        <extracomment>_reads_high</extracomment>
        <translation>La valeur a baissé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>When it reads {target} or less, and less than the day before: </source>
        <extracomment>_reads_high</extracomment>
        <translation>Quand le test dit {target} ou moins, et moins que le jour d'avant&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>set the pump to the upkeep below.</source>
        <extracomment>_reads_high</extracomment>
        <translation>réglez la pompe sur l'entretien ci-dessous.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>call the keeper. Leave the pump off.</source>
        <extracomment>_reads_high</extracomment>
        <translation>appelez l'éleveur. Laissez la pompe arrêtée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No lower after a day</source>
        <extracomment>_reads_high</extracomment>
        <translation>Pas plus bas après un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off: the animals use nothing. Call the keeper.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Laissez la pompe arrêtée&#xa0;: les animaux ne consomment rien. Appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Only when it has fallen: {per_day}</source>
        <extracomment>_reads_high</extracomment>
        <translation>Seulement quand la valeur a baissé&#xa0;: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing that lowers {name}: no acid, no second chemical against the first.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Ne donnez rien qui abaisse {name}&#xa0;: pas d'acide, pas de second produit contre le premier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never make up missed doses.</source>
        <extracomment>_reads_high</extracomment>
        <translation>Ne rattrapez jamais les doses manquées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>How long</source>
        <extracomment>_falls, _facts</extracomment>
        <translation>Durée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>How fast it falls is not known: no use per day was entered. Test every day.</source>
        <extracomment>_falls</extracomment>
        <translation>La vitesse de la baisse n'est pas connue&#xa0;: aucune consommation journalière n'a été saisie. Testez chaque jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>From {value}</source>
        <extracomment>_falls</extracomment>
        <translation>De {value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>about {hours} without a dose, down to {target}</source>
        <extracomment>_falls</extracomment>
        <translation>environ {hours} sans dose, jusqu'à {target}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reckoned with {use} used.</source>
        <extracomment>_falls</extracomment>
        <translation>Calculé avec {use} consommé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Then</source>
        <extracomment>_days_missed, _pump_failed, _mixing</extracomment>
        <translation>Puis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below: the dose, and how many at most.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Cherchez ce relevé ci-dessous&#xa0;: la dose, et combien au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Not found below</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>Pas trouvé ci-dessous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off. Call the keeper. Test again the next day.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Laissez la pompe arrêtée. Appelez l'éleveur. Testez de nouveau le lendemain.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Look at the jug, the line and the outlet.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Testez {name}. Regardez le bidon, le tuyau et la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last dose</source>
        <extracomment>_days_missed</extracomment>
        <translation>Après la dernière dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Set the pump to the upkeep.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Réglez la pompe sur l'entretien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Switch the pump off.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Arrêtez la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave the pump off and call the keeper: a new plan is needed.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Laissez la pompe arrêtée et appelez l'éleveur&#xa0;: il faut un nouveau plan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name}. Write it down.</source>
        <extracomment>_days_missed, _pump_failed</extracomment>
        <translation>Testez {name}. Notez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After the last of them: {per_day}</source>
        <extracomment>_days_missed</extracomment>
        <translation>Après la dernière d'entre elles&#xa0;: {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when nothing was dosed for about two days.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Prenez cette fiche quand rien n'a été dosé pendant deux jours environ.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Do not give the missed doses, neither now nor later.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Ne donnez pas les doses manquées, ni maintenant ni plus tard.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find out why: no current, an empty jug, air in the line.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Cherchez pourquoi&#xa0;: pas de courant, un bidon vide, de l'air dans le tuyau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Test {name} twice. Take the higher reading. Write it down.</source>
        <extracomment>_days_missed</extracomment>
        <translation>Testez {name} deux fois. Prenez le relevé le plus haut. Notez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{per_day}, no more than:</source>
        <extracomment>_band_rows</extracomment>
        <translation>{per_day}, pas plus de&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{n} doses</source>
        <extracomment>for 1: {n} dose; _band_rows</extracomment>
        <translation>
            <numerusform>{n} dose</numerusform>
            <numerusform>{n} doses</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Reads {low} to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>Le test dit {low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Above {low}, up to {high}</source>
        <extracomment>_reads</extracomment>
        <translation>Au-dessus de {low}, jusqu'à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Dry your hands. Pull the pump's plug.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Séchez vos mains. Débranchez la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Take the line out of the jug: nothing may siphon.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Sortez le tuyau du bidon&#xa0;: rien ne doit se siphonner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call the keeper.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Every morning</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Chaque matin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>This additive is for trained people only: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Cet additif est réservé à des personnes formées&#xa0;: ne donnez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>No dose by hand is safe here: give</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Aucune dose à la main n'est sûre ici&#xa0;: ne donnez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Until the pump runs</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Jusqu'à ce que la pompe tourne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{why} nothing.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{why} rien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>The rest of this day</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Le reste de ce jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing. Begin tomorrow, when the pump was off for {pump_off} or longer.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Ne donnez rien. Commencez demain, quand la pompe aura été arrêtée {pump_off} ou plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Find that reading below. Its row is for this day only.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Cherchez ce relevé ci-dessous. Sa ligne vaut pour ce jour seulement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Give nothing on this day.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Ne donnez rien ce jour-là.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At each hour</source>
        <extracomment>_pump_failed</extracomment>
        <translation>À chaque heure nommée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Draw clear stock, exactly to the mark that the row names.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Prélevez de la solution claire, exactement jusqu'au trait que nomme la ligne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Pour it slowly into strong flow, away from the animals.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Versez-la lentement dans un fort courant, loin des animaux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Write it down at once, before anything else is done.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Notez-le tout de suite, avant toute autre chose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>An hour was missed</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Une heure a été manquée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Leave that dose out.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Ne donnez pas cette dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>After each dose</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Après chaque dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Rinse what it was measured with. Use it for nothing else.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>Rincez ce qui a servi à mesurer. Ne l'utilisez pour rien d'autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{maximum}, the pump's with them.</source>
        <extracomment>_pump_failed</extracomment>
        <translation>{maximum}, celles de la pompe comprises.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>Use this card when the pump does not run, or runs and nothing comes.</source>
        <translation>Prenez cette fiche quand la pompe ne tourne pas, ou tourne sans que rien ne vienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>At {first} and {last}</source>
        <extracomment>_hand_rows</extracomment>
        <translation>À {first} et {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency.py"/>
        <source>{holds} {tool}, to the mark of {dose}</source>
        <extracomment>_mark</extracomment>
        <translation>{tool} de {holds}, jusqu'au trait de {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>A new batch goes into the jug</source>
        <translation>Une nouvelle préparation va dans le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>this plan is void. Leave the pump off. Take this card and the dose card down. Call the keeper.</source>
        <translation>ce plan est annulé. Laissez la pompe arrêtée. Décrochez cette fiche et la fiche de dosage. Appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>three quarters</source>
        <translation>aux trois quarts</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>half</source>
        <translation>à moitié</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>What was mixed</source>
        <translation>Ce qui a été préparé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weighed</source>
        <translation>Pesé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Made up to</source>
        <extracomment>CorrectForm._additive, StockForm._contents, made up to</extracomment>
        <translation>Complété à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Bottles that were opened</source>
        <translation>Flacons ouverts</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Use by</source>
        <extracomment>_entries, StockForm._label</extracomment>
        <translation>À utiliser jusqu'au</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Words compared</source>
        <translation>Mots comparés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Run the pump into a cup until liquid comes without air. Do not pour the cup into the tank.</source>
        <translation>Faites tourner la pompe dans un gobelet jusqu'à ce que le liquide vienne sans air. Ne versez pas le gobelet dans le bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>At the end</source>
        <translation>À la fin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Start the pump as it was set. The doses stay the same; those in between are not made up.</source>
        <translation>Remettez la pompe en marche comme elle était réglée. Les doses restent les mêmes&#xa0;; celles d'entre-temps ne se rattrapent pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when the jug is filled again, to exactly this strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>Prenez cette fiche quand le bidon est rempli de nouveau, exactement à cette concentration.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another salt, another hydrate, another purity or other grams: {void}</source>
        <extracomment>new_batch</extracomment>
        <translation>Un autre sel, un autre hydrate, une autre pureté ou d'autres grammes&#xa0;: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Never add the rest of an old batch of another strength.</source>
        <extracomment>new_batch</extracomment>
        <translation>N'ajoutez jamais le reste d'une ancienne préparation d'une autre concentration.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Strength</source>
        <extracomment>new_batch</extracomment>
        <translation>Concentration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Before</source>
        <extracomment>_mixing, _limewater, _trained</extracomment>
        <translation>Avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug. Rinse the jug with fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Arrêtez la pompe. Sortez le tuyau du bidon. Rincez le bidon à l'eau douce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bags with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Comparez les mots des sacs avec les noms ci-dessus, l'eau de l'hydrate aussi.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the names above, the water of the hydrate too.</source>
        <extracomment>_mixing</extracomment>
        <translation>Comparez les mots du sac avec les noms ci-dessus, l'eau de l'hydrate aussi.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>First</source>
        <extracomment>_mixing, _limewater, _bottle</extracomment>
        <translation>D'abord</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug {batch} full with cool, purified fresh water.</source>
        <extracomment>_mixing</extracomment>
        <translation>Remplissez le bidon {batch} d'eau douce purifiée fraîche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the rows for {litres} say. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Pesez ce que disent les lignes pour {litres}. Ne mesurez pas à la cuillère.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Weigh what the row for {litres} says. Do not measure by the spoon.</source>
        <extracomment>_mixing</extracomment>
        <translation>Pesez ce que dit la ligne pour {litres}. Ne mesurez pas à la cuillère.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salts into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Versez lentement les sels dans l'eau, en remuant. Ne versez jamais l'eau sur le sel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put the salt into the water slowly, stirring. Never pour water onto the salt.</source>
        <extracomment>_mixing</extracomment>
        <translation>Versez lentement le sel dans l'eau, en remuant. Ne versez jamais l'eau sur le sel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it come to the warmth of the room.</source>
        <extracomment>_mixing</extracomment>
        <translation>Laissez venir à la température de la pièce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill up to {litres} with the same water. Stir.</source>
        <extracomment>_mixing</extracomment>
        <translation>Complétez à {litres} avec la même eau. Remuez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look</source>
        <extracomment>_mixing, _limewater</extracomment>
        <translation>Regardez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Nothing may lie on the ground, nothing may float, it must be clear. If not: stir longer, do not heat.</source>
        <extracomment>_mixing</extracomment>
        <translation>Rien ne doit être au fond, rien ne doit flotter, ce doit être clair. Sinon&#xa0;: remuez plus longtemps, ne chauffez pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Still not clear after an hour: do not use it. Call the keeper.</source>
        <extracomment>_mixing</extracomment>
        <translation>Toujours pas clair après une heure&#xa0;: ne l'utilisez pas. Appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Stop the pump. Take the line out of the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Arrêtez la pompe. Sortez le tuyau du bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the words on the bag with the name above.</source>
        <extracomment>_limewater</extracomment>
        <translation>Comparez les mots du sac avec le nom ci-dessus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill the jug with {litres} of purified fresh water.</source>
        <extracomment>_limewater</extracomment>
        <translation>Remplissez le bidon avec {litres} d'eau douce purifiée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Put in what the row says, without raising dust. Stir for a minute. Close the jug.</source>
        <extracomment>_limewater</extracomment>
        <translation>Mettez-y ce que dit la ligne, sans soulever de poussière. Remuez une minute. Fermez le bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Let it settle over night. Some must lie on the ground: it is more than can dissolve.</source>
        <extracomment>_limewater</extracomment>
        <translation>Laissez déposer pendant la nuit. Il doit en rester au fond&#xa0;: c'est plus qu'il ne peut s'en dissoudre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>The water above must be clear. Put the line into the clear water, well above the ground.</source>
        <extracomment>_limewater</extracomment>
        <translation>L'eau au-dessus doit être claire. Mettez le tuyau dans l'eau claire, bien au-dessus du fond.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Go on only if you are trained for this chemical. If not: stop the pump, call the keeper.</source>
        <extracomment>_trained</extracomment>
        <translation>Ne continuez que si vous êtes formé à ce produit. Sinon&#xa0;: arrêtez la pompe, appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>a third</source>
        <extracomment>_share</extracomment>
        <translation>au tiers</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>, the word {signal_word}</source>
        <extracomment>_finish</extracomment>
        <translation>, le mot {signal_word}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Label</source>
        <extracomment>_finish, _bottle</extracomment>
        <translation>Étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, strength, the date of today{word}.</source>
        <extracomment>_finish</extracomment>
        <translation>Écrivez sur le bidon&#xa0;: nom, concentration, date d'aujourd'hui{word}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Use this card when a new bottle is opened, with exactly these words on its label.</source>
        <extracomment>_bottle</extracomment>
        <translation>Prenez cette fiche quand un nouveau flacon est ouvert, avec exactement ces mots sur son étiquette.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Compare the label, word for word and number for number. It must say: {said}.</source>
        <extracomment>_bottle</extracomment>
        <translation>Comparez l'étiquette, mot pour mot et nombre pour nombre. Elle doit dire&#xa0;: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Look at the date on the bottle. Look that nothing lies on the ground of it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Regardez la date sur le flacon. Vérifiez que rien ne repose au fond.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Fill it in as it is. Do not thin it.</source>
        <extracomment>_bottle</extracomment>
        <translation>Versez-le tel quel. Ne le diluez pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Write on the jug: name, the words above, the date of today.</source>
        <extracomment>_bottle</extracomment>
        <translation>Écrivez sur le bidon&#xa0;: nom, les mots ci-dessus, date d'aujourd'hui.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Another name, another number or another unit on the label: {void}</source>
        <extracomment>_bottle</extracomment>
        <translation>Un autre nom, un autre nombre ou une autre unité sur l'étiquette&#xa0;: {void}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>, {purity} pure</source>
        <extracomment>_row, strength_words, _portion_words</extracomment>
        <translation>, pur à {purity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>For {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Pour {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>To make {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Pour faire {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>More than dissolves, so that some stays on the ground</source>
        <extracomment>_row</extracomment>
        <translation>Plus qu'il ne s'en dissout, pour qu'il en reste au fond</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_batch.py"/>
        <source>Made up to {litres}</source>
        <extracomment>_row</extracomment>
        <translation>Complété à {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>syringe</source>
        <translation>seringue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>measuring cylinder</source>
        <translation>éprouvette graduée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_doses.py"/>
        <source>by hand</source>
        <extracomment>_with</extracomment>
        <translation>à la main</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>The keeper's&#xa0;telephone:</source>
        <translation>Téléphone&#xa0;de l'éleveur&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <source>Goes with the dose card of this plan. After its last day: give nothing, test daily, call the keeper.</source>
        <extracomment>identity</extracomment>
        <translation>Va avec la fiche de dosage de ce plan. Après son dernier jour&#xa0;: ne donnez rien, testez chaque jour, appelez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/contingency_views.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Keep apart</source>
        <extracomment>apart</extracomment>
        <translation>Tenir séparés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{parameter} from {measured} to {target}, {number}</source>
        <extracomment>Plan.in_words</extracomment>
        <translation>{parameter} de {measured} à {target}, {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{low} to {high}</source>
        <extracomment>hints, _band, _answer</extracomment>
        <translation>{low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>half of a 95 % range</source>
        <extracomment>hints</extracomment>
        <translation>moitié d'un intervalle à 95 %</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual kit within {kit_accuracy}</source>
        <extracomment>hints</extracomment>
        <translation>kit usuel&#xa0;: à {kit_accuracy} près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usually kept: {kept}</source>
        <extracomment>hints</extracomment>
        <translation>tenu d'ordinaire&#xa0;: {kept}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>usual {recommended}, most {hard}</source>
        <extracomment>hints</extracomment>
        <translation>usuel {recommended}, au plus {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>what the animals take in a day</source>
        <extracomment>hints</extracomment>
        <translation>ce que prennent les animaux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>100 % when the bag does not say</source>
        <extracomment>hints</extracomment>
        <translation>100 % si le sac ne dit rien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Net volume {volume}.</source>
        <extracomment>volume_sentence</extracomment>
        <translation>Volume net {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>net volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>volume net pas encore connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>volume not known yet</source>
        <extracomment>volume_words</extracomment>
        <translation>volume pas encore connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words} net{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words} nets{said}, à {share} près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>{words}{said}, within {share}</source>
        <extracomment>volume_words</extracomment>
        <translation>{words}{said}, à {share} près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>Danger.</source>
        <extracomment>cautions</extracomment>
        <translation>Danger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/correct.py"/>
        <source>water only: no rock, no sand</source>
        <extracomment>_volume_hint</extracomment>
        <translation>eau seule&#xa0;: ni roches ni sable</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>Importer dans {system}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Import {number} into {system}</source>
        <extracomment>button_words</extracomment>
        <translation>Importer {number} dans {system}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>{n} readings</source>
        <extracomment>for 1: {n} reading; button_words, _said, write</extracomment>
        <translation>
            <numerusform>{n} relevé</numerusform>
            <numerusform>{n} relevés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Every reading is in the log already.</source>
        <extracomment>for 1: The reading is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>Le relevé est déjà dans le journal.</numerusform>
            <numerusform>Tous les relevés sont déjà dans le journal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} are in the log already.</source>
        <extracomment>for 1: {n} is in the log already.; there_words</extracomment>
        <translation>
            <numerusform>{n} est déjà dans le journal.</numerusform>
            <numerusform>{n} sont déjà dans le journal.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Nothing was imported. {of}</source>
        <extracomment>done_words</extracomment>
        <translation>Rien n'a été importé. {of}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Undo takes them out again.</source>
        <extracomment>for 1: Undo takes it out again.; done_words</extracomment>
        <translation>
            <numerusform>Annuler le retire.</numerusform>
            <numerusform>Annuler les retire.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>Imported {n} readings.</source>
        <extracomment>for 1: Imported {n} reading.; done_words</extracomment>
        <translation>
            <numerusform>{n} relevé importé.</numerusform>
            <numerusform>{n} relevés importés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_entries.py"/>
        <source>{n} were in the log already.</source>
        <extracomment>for 1: {n} was in the log already.; _were</extracomment>
        <translation>
            <numerusform>{n} était déjà dans le journal.</numerusform>
            <numerusform>{n} étaient déjà dans le journal.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>At {hour}</source>
        <translation>À {hour}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Western European, code page 1252</source>
        <translation>Europe de l'Ouest, page de code 1252</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Semicolon</source>
        <translation>Point-virgule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Comma</source>
        <translation>Virgule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Tab</source>
        <translation>Tabulation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Bar</source>
        <translation>Barre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Either, as typed by hand</source>
        <translation>L'un ou l'autre, comme tapé à la main</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Year, month, day</source>
        <translation>Année, mois, jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Day, month, year</source>
        <translation>Jour, mois, année</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Month, day, year</source>
        <translation>Mois, jour, année</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>24 hours</source>
        <translation>24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>12 hours with am and pm</source>
        <translation>12 heures avec am et pm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave them out</source>
        <translation>Les omettre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The first</source>
        <translation>La première</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The second</source>
        <translation>La seconde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Leave out</source>
        <extracomment>_series_points</extracomment>
        <translation>Omettre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Time of day</source>
        <translation>Heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Name of the parameter</source>
        <translation>Nom du paramètre</translation>
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
        <translation>Valeur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Unit</source>
        <extracomment>_long</extracomment>
        <translation>Unité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Test kit</source>
        <translation>Kit de test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Who tested</source>
        <translation>Qui a testé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note</source>
        <extracomment>row, LogForm._make_fields</extracomment>
        <translation>Note</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Encoding</source>
        <extracomment>sniff</extracomment>
        <translation>Encodage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Separator</source>
        <extracomment>sniff</extracomment>
        <translation>Séparateur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Decimal mark</source>
        <extracomment>sniff</extracomment>
        <translation>Marque décimale</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some readings are from the hour that came twice when the clocks went back.</source>
        <extracomment>twice_point</extracomment>
        <translation>Quelques relevés sont de l'heure qui est venue deux fois au changement d'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Hour that came twice</source>
        <extracomment>twice_point</extracomment>
        <translation>Heure venue deux fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Order of the date</source>
        <translation>Ordre de la date</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Clock</source>
        <translation>Horloge</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Readings without a time of day</source>
        <translation>Relevés sans heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The file is not in UTF-8. See whether names and signs look right.</source>
        <extracomment>_encoding</extracomment>
        <translation>Le fichier n'est pas en UTF-8. Voyez si noms et signes sont justes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>See whether the columns look right.</source>
        <extracomment>_separator</extracomment>
        <translation>Voyez si les colonnes sont justes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>None</source>
        <extracomment>_heading</extracomment>
        <translation>Aucun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Row {row}</source>
        <extracomment>_heading</extracomment>
        <translation>Ligne {row}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No headings were found.</source>
        <extracomment>_heading</extracomment>
        <translation>Aucun titre n'a été trouvé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>What stands above is left out.</source>
        <extracomment>_heading</extracomment>
        <translation>Ce qui est au-dessus est omis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Headings</source>
        <extracomment>_heading</extracomment>
        <translation>Titres</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates have</source>
        <extracomment>_times</extracomment>
        <translation>Les dates n'ont</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates have</source>
        <extracomment>_times</extracomment>
        <translation>Certaines dates n'ont</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{part} no time of day. Choose what they are taken as.</source>
        <extracomment>_times</extracomment>
        <translation>{part} pas d'heure. Choisissez comment les prendre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>No date was found. Choose the column and the order of its dates.</source>
        <extracomment>_order</extracomment>
        <translation>Aucune date n'a été trouvée. Choisissez la colonne et l'ordre de ses dates.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some dates fit only with the day first, and some only with the month first.</source>
        <extracomment>_order</extracomment>
        <translation>Certaines dates ne vont qu'avec le jour en premier, d'autres seulement avec le mois en premier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Dates with points begin with the day.</source>
        <extracomment>_order</extracomment>
        <translation>Les dates avec des points commencent par le jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Not every date would be one in another order.</source>
        <extracomment>_order</extracomment>
        <translation>Dans un autre ordre, toutes n'en seraient pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>“{unclear}”: which is the day and which the month?</source>
        <extracomment>_order</extracomment>
        <translation>«&#xa0;{unclear}&#xa0;»&#xa0;: où est le jour et où est le mois&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>The dates begin with the year.</source>
        <extracomment>_order</extracomment>
        <translation>Les dates commencent par l'année.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Some times say am or pm and some do not. Of those, are the hours counted to 24?</source>
        <extracomment>_clock</extracomment>
        <translation>Certaines heures disent am ou pm et d'autres non. Pour celles-ci, compte-t-on jusqu'à 24&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the heading is not known.</source>
        <extracomment>_column_points</extracomment>
        <translation>Omis&#xa0;: le titre n'est pas connu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out.</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>Omis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>{name}: unit</source>
        <extracomment>_column_points, _series_points</extracomment>
        <translation>{name}&#xa0;: unité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Left out: the name is not known.</source>
        <extracomment>_series_points</extracomment>
        <translation>Omis&#xa0;: le nom n'est pas connu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_guess.py"/>
        <source>Column {number}</source>
        <extracomment>_name</extracomment>
        <translation>Colonne {number}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Line {line}: </source>
        <extracomment>preview, ImportPage._show</extracomment>
        <translation>Ligne {line}&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>unit not chosen</source>
        <extracomment>_headings</extracomment>
        <translation>unité non choisie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which column holds the date, and which hold readings.</source>
        <extracomment>_hinders</extracomment>
        <translation>Choisissez la colonne qui contient la date, et celles qui contiennent des relevés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose what is still asked. Nothing is imported before.</source>
        <extracomment>_hinders</extracomment>
        <translation>Choisissez ce qui est encore demandé. Rien n'est importé avant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Choose which is meant of the hour that came twice.</source>
        <extracomment>_hinders</extracomment>
        <translation>Choisissez ce qui est voulu pour l'heure venue deux fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Not one reading can be taken.</source>
        <extracomment>_hinders</extracomment>
        <translation>Pas un relevé ne peut être pris.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{readings} in {rows}.</source>
        <extracomment>_said</extracomment>
        <translation>{readings} sur {rows}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} rows</source>
        <extracomment>for 1: {n} row; _said</extracomment>
        <translation>
            <numerusform>{n} ligne</numerusform>
            <numerusform>{n} lignes</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{refused} not taken.</source>
        <extracomment>_said</extracomment>
        <translation>Non pris&#xa0;: {refused}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} cells are</source>
        <extracomment>for 1: {n} cell is; _said</extracomment>
        <translation>
            <numerusform>{n} case</numerusform>
            <numerusform>{n} cases</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings stand</source>
        <extracomment>for 1: {n} reading stands; _said</extracomment>
        <translation>
            <numerusform>{n} relevé est</numerusform>
            <numerusform>{n} relevés sont</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{stand} in the file twice, and are taken once.</source>
        <extracomment>for 1: {stand} in the file twice, and is taken once.; _said</extracomment>
        <translation>
            <numerusform>{stand} deux fois dans le fichier, et n'est pris qu'une fois.</numerusform>
            <numerusform>{stand} deux fois dans le fichier, et ne sont pris qu'une fois.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{n} readings are</source>
        <extracomment>for 1: {n} reading is; _said</extracomment>
        <translation>
            <numerusform>{n} relevé n'est</numerusform>
            <numerusform>{n} relevés ne sont</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>{are} not likely, and taken as they stand.</source>
        <extracomment>for 1: {are} not likely, and taken as it stands.; _said</extracomment>
        <translation>
            <numerusform>{are} pas vraisemblable, et pris tel quel.</numerusform>
            <numerusform>{are} pas vraisemblables, et pris tels quels.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>Of {faulty} rows with a fault the first {faulty_rows} are shown.</source>
        <extracomment>_said</extracomment>
        <translation>Des {faulty} lignes avec un défaut, les {faulty_rows} premières sont montrées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The order of the date is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>L'ordre de la date est encore à choisir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The clock is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>L'horloge est encore à choisir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_preview.py"/>
        <source>The decimal mark is still to be chosen.</source>
        <extracomment>_open</extracomment>
        <translation>La marque décimale est encore à choisir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure is without a unit of its own.</source>
        <extracomment>unit_of</extracomment>
        <translation>Aucun chiffre n'est sans sa propre unité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}.</source>
        <extracomment>unit_of</extracomment>
        <translation>Le fichier dit {unit}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The file says {unit}, but the figures are likely as {better}.</source>
        <extracomment>unit_of</extracomment>
        <translation>Le fichier dit {unit}, mais les chiffres sont vraisemblables en {better}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>“{heading_said}” does not name one unit.</source>
        <extracomment>unit_of</extracomment>
        <translation>«&#xa0;{heading_said}&#xa0;» ne nomme pas une seule unité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No unit is said.</source>
        <extracomment>unit_of</extracomment>
        <translation>Aucune unité n'est dite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures are likely only as {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Les chiffres ne sont vraisemblables qu'en {likely}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} The figures may be in {likely}.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Les chiffres peuvent être en {likely}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>{start} In none of the likely units are the figures likely.</source>
        <extracomment>unit_of</extracomment>
        <translation>{start} Dans aucune des unités vraisemblables les chiffres ne le sont.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>This file was written by Evenwater, with a decimal point.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Ce fichier a été écrit par Evenwater, avec un point décimal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Some figures have a decimal point and some a decimal comma.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Certains chiffres ont un point décimal et d'autres une virgule décimale.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>No figure has a decimal mark.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Aucun chiffre n'a de marque décimale.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>The figures have a decimal {name}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Marque décimale des chiffres&#xa0;: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Most figures have a decimal {name}, but {example} would be unlikely so.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Marque décimale de la plupart des chiffres&#xa0;: {name}, mais {example} serait alors peu vraisemblable.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} are likely only with a decimal {only}.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Des chiffres comme {example} ne sont vraisemblables qu'avec cette marque décimale&#xa0;: {only}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>Figures like {example} can be read in two ways.</source>
        <extracomment>decimal_of</extracomment>
        <translation>Des chiffres comme {example} peuvent se lire de deux façons.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>point</source>
        <extracomment>_name</extracomment>
        <translation>point</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_units.py"/>
        <source>comma</source>
        <extracomment>_name</extracomment>
        <translation>virgule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is empty.</source>
        <translation>Le fichier est vide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is larger than {megabytes}. Split it by years.</source>
        <translation>Le fichier dépasse {megabytes}. Divisez-le par années.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>This is no text file. Save the sheet as CSV, in UTF-8.</source>
        <translation>Ce n'est pas un fichier texte. Enregistrez le tableau en CSV, en UTF-8.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file is not written in this encoding. Choose another one.</source>
        <translation>Le fichier n'est pas écrit dans cet encodage. Choisissez-en un autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A quotation mark is opened here and never closed.</source>
        <translation>Un guillemet est ouvert ici et jamais fermé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Text stands behind a closing quotation mark. Put a separator between them, or double the mark.</source>
        <translation>Du texte suit un guillemet fermant. Mettez un séparateur entre les deux, ou doublez le guillemet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A cell is longer than any note. Look for a quotation mark that is not closed.</source>
        <translation>Une case est plus longue que toute note. Cherchez un guillemet non fermé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The line is longer than any row of readings.</source>
        <translation>La ligne est plus longue que toute ligne de relevés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The file has more than {most} lines, more than a sheet has rows. Split it by years.</source>
        <translation>Le fichier a plus de {most} lignes, plus que n'en a un tableau. Divisez-le par années.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>A row has more than {most} cells. Delete what is no reading, and save the sheet again.</source>
        <translation>Une ligne a plus de {most} cases. Effacez ce qui n'est pas un relevé, et enregistrez de nouveau le tableau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>No columns were found. Save the sheet as CSV with a semicolon, a comma, a tab or a bar between the cells.</source>
        <translation>Aucune colonne n'a été trouvée. Enregistrez le tableau en CSV avec un point-virgule, une virgule, une tabulation ou une barre entre les cases.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>There is nothing below the headings.</source>
        <translation>Il n'y a rien sous les titres.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has {cells} cells, more than the {columns} of the headings. A comma inside a number needs quotation marks around it.</source>
        <translation>La ligne a {cells} cases, plus que les {columns} des titres. Une virgule dans un nombre demande des guillemets autour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The row has no date.</source>
        <translation>La ligne n'a pas de date.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25 08:00.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une date. Écrivez-la comme 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is no date in the order chosen for day, month and year.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une date dans l'ordre choisi pour jour, mois et année.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not in the calendar.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas dans le calendrier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has no time of day.</source>
        <translation>«&#xa0;{text}&#xa0;» n'a pas d'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is not a time of day. Write it like 18:30.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une heure. Écrivez-la comme 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}”: morning or evening? Write am or pm after it.</source>
        <translation>«&#xa0;{text}&#xa0;»&#xa0;: matin ou soir&#xa0;? Écrivez am ou pm après.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has a time of day, and the row has another one.</source>
        <translation>«&#xa0;{text}&#xa0;» a une heure, et la ligne en a une autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is too long ago. Correct the year.</source>
        <translation>{at} est trop ancien. Corrigez l'année.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} is still to come. Correct the date.</source>
        <translation>{at} est encore à venir. Corrigez la date.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} never was: the clocks went forward over it.</source>
        <translation>{at} n'a jamais été&#xa0;: le changement d'heure a sauté par-dessus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>{at} came twice, when the clocks went back.</source>
        <translation>{at} est venu deux fois, au changement d'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” is left out: no parameter is chosen for it.</source>
        <translation>«&#xa0;{text}&#xa0;» est omis&#xa0;: aucun paramètre n'est choisi pour lui.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The unit is still to be chosen.</source>
        <translation>L'unité est encore à choisir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>“{text}” has another decimal mark than this file.</source>
        <translation>«&#xa0;{text}&#xa0;» a une autre marque décimale que ce fichier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>The same reading stands in line {line}.</source>
        <translation>Le même relevé est à la ligne {line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_words.py"/>
        <source>Taken as it stands, but not a likely reading of {parameter}. Look at it again.</source>
        <translation>Pris tel quel, mais pas un relevé vraisemblable ({parameter}). Regardez-le de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/csv_writing.py"/>
        <source>Parameter</source>
        <extracomment>_long</extracomment>
        <translation>Paramètre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>measured by filling</source>
        <translation>mesuré par remplissage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>found by dose and test</source>
        <translation>trouvé en dosant et testant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>reckoned from dimensions</source>
        <translation>calculé d'après les dimensions</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>not known, low end used</source>
        <translation>inconnu, borne basse prise</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, measured {measured_at}</source>
        <extracomment>card</extracomment>
        <translation>, mesuré le {measured_at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Reason given for the limits set: {reason}</source>
        <extracomment>card</extracomment>
        <translation>Raison donnée pour les limites choisies&#xa0;: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Raise {name} from {measured} to {target}</source>
        <extracomment>card</extracomment>
        <translation>Relever {name} de {measured} à {target}</translation>
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
        <translation>Système sans nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Net volume {volume}{known}, within {percent}. Reading {measured}{reading}.</source>
        <extracomment>card</extracomment>
        <translation>Volume net {volume}{known}, à {percent} près. Relevé {measured}{reading}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Issued {date_words} {clock}</source>
        <extracomment>card, page</extracomment>
        <translation>Émise le {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Replace this card when the plan id changes.</source>
        <extracomment>card</extracomment>
        <translation>Remplacez cette fiche quand le code du plan change.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Valid until {valid_until}</source>
        <extracomment>card</extracomment>
        <translation>Valable jusqu'au {valid_until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>Bottle, by its label</source>
        <extracomment>card, _rows, _contents</extracomment>
        <translation>Flacon, d'après son étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Never more than {never_more} in 24 hours, all doses together.</source>
        <extracomment>card</extracomment>
        <translation>Jamais plus de {never_more} en 24 heures, toutes les doses ensemble.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Stop and test again if {name} reads above {stop_above}. Never make up missed doses.</source>
        <extracomment>card</extracomment>
        <translation>Arrêtez et testez de nouveau si {name} dépasse {stop_above}. Ne rattrapez jamais les doses manquées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Test {name} on {answer} at the latest, then once more at the end.</source>
        <extracomment>card</extracomment>
        <translation>Testez {name} le {answer} au plus tard, puis encore une fois à la fin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{in_24_hours} in 24 hours, {total} in all.</source>
        <extracomment>card</extracomment>
        <translation>{in_24_hours} en 24 heures, {total} en tout.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>If the whole jug ran in, {name} would reach {whole_jug}: keep the outlet above the water.</source>
        <extracomment>card</extracomment>
        <translation>Si tout le bidon se vidait, {name} atteindrait {whole_jug}&#xa0;: gardez la sortie au-dessus de l'eau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:</source>
        <extracomment>card</extracomment>
        <translation>Dans les yeux&#xa0;: rincez au moins 15 minutes et consultez un médecin. Centre antipoison&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {first} {per_day}, {n} doses, last {last}</source>
        <extracomment>for 1: From {first} {per_day}, {n} dose, last {last}; _rows</extracomment>
        <translation>
            <numerusform>Dès le {first} {per_day}, {n} dose, dernière le {last}</numerusform>
            <numerusform>Dès le {first} {per_day}, {n} doses, dernière le {last}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>From {after} {per_day}, to keep it there</source>
        <extracomment>_rows</extracomment>
        <translation>Dès le {after} {per_day}, pour y garder la valeur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Pump runs {run_time} at {flow_ml_per}</source>
        <extracomment>pump_setting</extracomment>
        <translation>La pompe tourne {run_time} à {flow_ml_per}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source> The jug's label says batch {batch_id}.</source>
        <extracomment>_strength</extracomment>
        <translation> L'étiquette du bidon dit préparation {batch_id}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, mixed {mixed_on}</source>
        <extracomment>_strength</extracomment>
        <translation>, préparé le {mixed_on}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>, date mixed: see the jug</source>
        <extracomment>_strength</extracomment>
        <translation>, date de préparation&#xa0;: voir le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength: {additive}{mixed}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Concentration&#xa0;: {additive}{mixed}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Strength by its label: {label}.{code}</source>
        <extracomment>_strength</extracomment>
        <translation>Concentration d'après son étiquette&#xa0;: {label}.{code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>{dose} raise {water} by {raises}</source>
        <extracomment>label_words</extracomment>
        <translation>{dose} relèvent {water} de {raises}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>saturated, {most} per {litre} at {coolest}</source>
        <extracomment>strength_words</extracomment>
        <translation>saturé, {most} par {litre} à {coolest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>dissolved {parts} per {litre}{pure}</source>
        <extracomment>strength_words</extracomment>
        <translation>dissous {parts} par {litre}{pure}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Look at the jug every day.</source>
        <extracomment>_refill</extracomment>
        <translation>Regardez le bidon chaque jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>A full jug is empty on {runs_out_at}: refill before then.</source>
        <extracomment>_refill</extracomment>
        <translation>Un bidon plein est vide le {runs_out_at}&#xa0;: remplissez-le avant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>calcium or magnesium</source>
        <extracomment>_separation</extracomment>
        <translation>calcium ou magnésium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <source>Keep 30 minutes and another outlet between this and any {opposite} dose. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Gardez 30 minutes entre ceci et toute dose opposée ({opposite}), et prenez une autre sortie. Ne mélangez jamais les concentrés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/dose_card.py"/>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The bag's own safety sheet and local rules come first.</source>
        <extracomment>_cautions</extracomment>
        <translation>La fiche de données de sécurité du sac et les règles locales passent d'abord.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Dry your hands before you touch a plug. Unplug before you reach into the water.</source>
        <translation>Séchez vos mains avant de toucher une prise. Débranchez avant de mettre la main dans l'eau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Water on a plug or a power strip: touch nothing, switch the circuit off at the board first.</source>
        <translation>De l'eau sur une prise ou une multiprise&#xa0;: ne touchez rien, coupez d'abord le circuit au tableau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Every circuit here needs residual-current protection that trips at 30&#xa0;mA or less.</source>
        <translation>Chaque circuit ici a besoin d'une protection différentielle qui déclenche à 30&#xa0;mA ou moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Give nothing that lowers it: no acid, no second chemical against the first.</source>
        <translation>Ne donnez rien qui l'abaisse&#xa0;: pas d'acide, pas de second produit contre le premier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Do not start the pump again before the keeper says so.</source>
        <translation>Ne remettez pas la pompe en marche avant que l'éleveur ne le dise.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>No way down was chosen. Hold all doses, test every day, and wait for the keeper.</source>
        <translation>Aucune descente n'a été choisie. Suspendez toutes les doses, testez chaque jour, et attendez l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{banner}: {name} too high</source>
        <extracomment>card</extracomment>
        <translation>{banner}&#xa0;: {name}, valeur trop haute</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Valid until {date_time}</source>
        <extracomment>card</extracomment>
        <translation>Valable jusqu'au {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Replace this card after the next test.</source>
        <extracomment>card</extracomment>
        <translation>Remplacez cette fiche après le prochain test.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Readings</source>
        <extracomment>card</extracomment>
        <translation>Relevés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Date, time</source>
        <extracomment>card</extracomment>
        <translation>Date, heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>What was tested</source>
        <extracomment>card</extracomment>
        <translation>Ce qui a été testé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>About {dose} ran in. </source>
        <extracomment>_happened</extracomment>
        <translation>Environ {dose} ont coulé. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{ran_in}{name} {now}, to come to {target}.</source>
        <extracomment>_happened</extracomment>
        <translation>{ran_in}{name} {now}, doit venir à {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>After a new test, on the first day</source>
        <extracomment>_rows</extracomment>
        <translation>Après un nouveau test, le premier jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>On the first day</source>
        <extracomment>_rows</extracomment>
        <translation>Le premier jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>new water in, as much old water out</source>
        <extracomment>_rows</extracomment>
        <translation>d'eau neuve entrent, autant d'eau usée sort</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>That is {first} an hour, far from the animals.</source>
        <extracomment>_rows</extracomment>
        <translation>Soit {first} par heure, loin des animaux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name} and everything else. Write it down.</source>
        <extracomment>_steps</extracomment>
        <translation>Testez {name} et tout le reste. Notez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Give nothing.</source>
        <extracomment>_steps</extracomment>
        <translation>Testez {name}. Ne donnez rien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Cloudy or white film</source>
        <extracomment>_steps</extracomment>
        <translation>Trouble ou film blanc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Wait. Tell the keeper the new tests: this card may not hold any more.</source>
        <extracomment>_steps</extracomment>
        <translation>Attendez. Dites à l'éleveur les nouveaux tests&#xa0;: cette fiche ne vaut peut-être plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test {name}. Still give nothing above {target}.</source>
        <extracomment>_steps</extracomment>
        <translation>Testez {name}. Ne donnez toujours rien au-dessus de {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>At {target} or below</source>
        <extracomment>_steps</extracomment>
        <translation>À {target} ou moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Tell the keeper. The doses begin again only as the keeper says.</source>
        <extracomment>_steps</extracomment>
        <translation>Dites-le à l'éleveur. Les doses ne reprennent que comme l'éleveur le dit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test and ask the keeper for a new card.</source>
        <extracomment>_steps</extracomment>
        <translation>Testez et demandez à l'éleveur une nouvelle fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>From {begins}</source>
        <extracomment>_steps</extracomment>
        <translation>Dès le {begins}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Test first. Then {much} of water in {days}: {stage} an hour. About {reached} after it.</source>
        <extracomment>_steps</extracomment>
        <translation>Testez d'abord. Puis {much} d'eau en {days}&#xa0;: {stage} par heure. Ensuite environ {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Still above</source>
        <extracomment>_steps</extracomment>
        <translation>Encore au-dessus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Go on with no more than {stages} an hour, test every day.</source>
        <extracomment>_steps</extracomment>
        <translation>Continuez avec au plus {stages} par heure, testez chaque jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop. Tell the keeper.</source>
        <extracomment>_steps</extracomment>
        <translation>Arrêtez. Dites-le à l'éleveur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Never exchange more than {most} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Ne renouvelez jamais plus de {most} en 24 heures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Stop and call if {name} falls by more than {said} in 24 hours.</source>
        <extracomment>_most</extracomment>
        <translation>Arrêtez et appelez si {name} baisse de plus de {said} en 24 heures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Held</source>
        <extracomment>_facts</extracomment>
        <translation>Suspendu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>: no doses.</source>
        <extracomment>_facts</extracomment>
        <translation>&#xa0;: pas de doses.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{how_long} to {how_long_2}</source>
        <extracomment>_facts</extracomment>
        <translation>{how_long} à {how_long_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>{now} now, {end} at the end; moves {moves} in 24 hours, {most} at most.</source>
        <extracomment>_facts</extracomment>
        <translation>{now} maintenant, {end} à la fin&#xa0;; bouge de {moves} en 24 heures, {most} au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>New water</source>
        <extracomment>_facts, _pair</extracomment>
        <translation>Eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/emergency_card.py"/>
        <source>Bring it to the tank's temperature and salinity first.</source>
        <extracomment>_facts</extracomment>
        <translation>Amenez-la d'abord à la température et à la salinité du bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Typed as {was}, shown as {shown}.</source>
        <extracomment>conversion_words</extracomment>
        <translation>Tapé {was}, montré {shown}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/entry.py"/>
        <source>Relabel: {was} becomes {number}</source>
        <extracomment>relabels</extracomment>
        <translation>Changer l'unité&#xa0;: {was} devient {number}</translation>
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
        <translation>maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>after {day}</source>
        <extracomment>CourseChart.words_at</extracomment>
        <translation>après {day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source> ({low} to {high})</source>
        <extracomment>CourseChart.words_at, TogetherChart.reading_words</extracomment>
        <translation> ({low} à {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>new water{assumed} {new_water}</source>
        <extracomment>_chart</extracomment>
        <translation>eau neuve{assumed} {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <source>, assumed</source>
        <extracomment>_chart, _water</extracomment>
        <translation>, supposé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source> It settles at {settles}.</source>
        <extracomment>_chart</extracomment>
        <translation> Elle se stabilise à {settles}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} in {unit} against days</source>
        <extracomment>_chart</extracomment>
        <translation>{name} en {unit} selon les jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_chart.py"/>
        <source>{name} goes from {first} to {last} in {days}, {new}.{goes}</source>
        <extracomment>_chart</extracomment>
        <translation>{name} va de {first} à {last} en {days}, {new}.{goes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both pumps alike</source>
        <translation>Les deux pompes pareilles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>As a batch change</source>
        <translation>Comme un changement d'un coup</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Each pump by itself</source>
        <translation>Chaque pompe pour elle-même</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Both outlets end above the water with an air gap: else a whole jug can siphon across.</source>
        <translation>Les deux sorties finissent au-dessus de l'eau avec une coupure d'air&#xa0;: sinon tout un bidon peut se siphonner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>A jug of 20&#xa0;L weighs 20&#xa0;kg: fill it where it stands, or lift it with two.</source>
        <translation>Un bidon de 20&#xa0;L pèse 20&#xa0;kg&#xa0;: remplissez-le à sa place, ou levez-le à deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>The bag's own sheet comes first.</source>
        <translation>La fiche du sac lui-même passe d'abord.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Salt into water, slowly, never water onto salt.</source>
        <translation>Le sel dans l'eau, lentement, jamais l'eau sur le sel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Stir and aerate until all of it is clear; a day is best, and only then test.</source>
        <translation>Remuez et aérez jusqu'à ce que tout soit clair&#xa0;; un jour est le mieux, et ne testez qu'alors.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Bring it to the tank's temperature before it goes in.</source>
        <translation>Amenez-la à la température du bac avant qu'elle n'entre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>Nothing for drinks or food is used for mixing.</source>
        <translation>Rien de ce qui sert à boire ou à manger ne sert au mélange.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water exchanged in a day</source>
        <translation>l'eau renouvelée en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how the exchange is said</source>
        <translation>la façon de dire le renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the batch change that the exchange equals</source>
        <translation>le changement d'un coup que vaut le renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the days between two batch changes</source>
        <translation>les jours entre deux changements d'un coup</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water taken out in a day</source>
        <translation>l'eau sortie en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in a day</source>
        <translation>l'eau neuve en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>how many days to look ahead</source>
        <translation>les jours à regarder en avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of old water holds</source>
        <translation>ce que tient le bidon d'eau usée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>what the jug of new water holds</source>
        <translation>ce que tient le bidon d'eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the new water in the bucket</source>
        <translation>l'eau neuve dans le seau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salt mix on the bag's label</source>
        <translation>le mélange de sel sur l'étiquette du sac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the water on the bag's label</source>
        <translation>l'eau sur l'étiquette du sac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity on the bag's label</source>
        <translation>la salinité sur l'étiquette du sac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the salinity found in the bucket</source>
        <translation>la salinité trouvée dans le seau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of nitrate lost in a day</source>
        <translation>la part de nitrate perdue en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the share of phosphate lost in a day</source>
        <translation>la part de phosphate perdue en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_fields.py"/>
        <source>the {name} of the new water</source>
        <translation>cette valeur dans l'eau neuve&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Danger: {reason}</source>
        <extracomment>_lines</extracomment>
        <translation>Danger&#xa0;: {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Caution: {line}</source>
        <extracomment>_lines</extracomment>
        <translation>Prudence&#xa0;: {line}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{out} a day go out, {in_} a day come in.</source>
        <extracomment>_lines</extracomment>
        <translation>{out} par jour sortent, {in_} par jour entrent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}, {left} of the old water are left ({low} to {high} by how well the volume is known). A batch change of {batch_whole} leaves as much.</source>
        <extracomment>_lines</extracomment>
        <translation>Après {days}, il reste {left} de l'eau usée ({low} à {high} selon que le volume est plus ou moins connu). Un changement d'un coup de {batch_whole} en laisse autant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The exchange of a week equals a batch change of {batch_weekly}.</source>
        <extracomment>_lines</extracomment>
        <translation>Le renouvellement d'une semaine vaut un changement d'un coup de {batch_weekly}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{name}: {points} at the start, new water {new_water}</source>
        <extracomment>_course</extracomment>
        <translation>{name}&#xa0;: {points} au début, eau neuve {new_water}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>After {days}: {end} ({low} to {high})</source>
        <extracomment>_course</extracomment>
        <translation>Après {days}&#xa0;: {end} ({low} à {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>Settles at {settles}; half of the way takes {half_way}</source>
        <extracomment>_course</extracomment>
        <translation>Se stabilise à {settles}&#xa0;; la moitié du chemin prend {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>In is {ratio} of out; {low} hold salinity within 0.5. With the level held by top-off it settles at {settles}.</source>
        <extracomment>_pair</extracomment>
        <translation>L'entrée vaut {ratio} de la sortie&#xa0;; {low} tiennent la salinité à 0,5 près. Niveau tenu par l'eau d'appoint, elle se stabilise à {settles}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of old water.</source>
        <extracomment>_pair</extracomment>
        <translation>Une semaine déplace {weekly} d'eau usée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug is full after {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> Le bidon est plein après {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>A week moves {weekly} of new water.</source>
        <extracomment>_pair</extracomment>
        <translation>Une semaine déplace {weekly} d'eau neuve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source> The jug lasts {lasts}.</source>
        <extracomment>_pair</extracomment>
        <translation> Le bidon dure {lasts}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{more} a day {less}</source>
        <extracomment>_dosing</extracomment>
        <translation>{more} par jour {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>To keep {name} where it is takes {with_exchange} of its stock a day with the exchange, {without} without: {how}.</source>
        <extracomment>_dosing</extracomment>
        <translation>Pour garder cette valeur ({name}) où elle est, il faut {with_exchange} de sa solution par jour avec le renouvellement, {without} sans&#xa0;: {how}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>{volume} of new water take {mix_g} of salt mix.</source>
        <extracomment>_bucket</extracomment>
        <translation>{volume} d'eau neuve prennent {mix_g} de mélange de sel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket lacks {salt_g} of sodium chloride.</source>
        <extracomment>_bucket</extracomment>
        <translation>Il manque au seau {salt_g} de chlorure de sodium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_lines.py"/>
        <source>The bucket takes {water} of fresh water.</source>
        <extracomment>_bucket</extracomment>
        <translation>Le seau prend {water} d'eau douce.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>from the system's own fields</source>
        <translation>des champs du système lui-même</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>not said when</source>
        <translation>sans date</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{age}: old</source>
        <extracomment>_value</extracomment>
        <translation>{age}&#xa0;: ancien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{new}
assumed</source>
        <extracomment>_value</extracomment>
        <translation>{new}
supposé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>used {use} a day{from_}</source>
        <extracomment>_moved_by</extracomment>
        <translation>consommé {use} par jour{from_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>, from the log</source>
        <extracomment>_moved_by</extracomment>
        <translation>, d'après le journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>added {added} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>ajouté {added} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>taken {loss} a day</source>
        <extracomment>_moved_by</extracomment>
        <translation>enlevé {loss} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>nothing left</source>
        <extracomment>_ends</extracomment>
        <translation>plus rien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{end}
{low} to {high}</source>
        <extracomment>_ends</extracomment>
        <translation>{end}
{low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never: nothing left after {runs_out}</source>
        <extracomment>_settles</extracomment>
        <translation>jamais&#xa0;: plus rien après {runs_out}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>stays</source>
        <extracomment>_settles</extracomment>
        <translation>reste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>never</source>
        <extracomment>_settles</extracomment>
        <translation>jamais</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
where it is</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
où elle est</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{value}
half way after {half_way}</source>
        <extracomment>_settles</extracomment>
        <translation>{value}
à mi-chemin après {half_way}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} by {change}</source>
        <extracomment>_pace</extracomment>
        <translation>{way} de {change}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>no change</source>
        <extracomment>_pace, _change</extracomment>
        <translation>pas de changement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Rise</source>
        <extracomment>_bars</extracomment>
        <translation>Hausse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fall</source>
        <extracomment>_bars</extracomment>
        <translation>Baisse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{change} of {hard}</source>
        <extracomment>_bars</extracomment>
        <translation>{change} sur {hard}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{way} of {name} in a day</source>
        <extracomment>_bars</extracomment>
        <translation>{way} en un jour&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water apart in {name}</source>
        <extracomment>_apart</extracomment>
        <translation>Écart de l'eau neuve&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{said} of {said_most}</source>
        <extracomment>_apart</extracomment>
        <translation>{said} sur {said_most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{low} hold salinity within 0.5</source>
        <extracomment>_pair</extracomment>
        <translation>{low} tiennent la salinité à 0,5 près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>New water to old water</source>
        <extracomment>_pair</extracomment>
        <translation>Eau neuve pour eau usée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>with the level held by top-off: {new_salinity} times {ratio}</source>
        <extracomment>_pair</extracomment>
        <translation>niveau tenu par l'eau d'appoint&#xa0;: {new_salinity} fois {ratio}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salinity settles, by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>La salinité se stabilise, par la paire seule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more in than out</source>
        <extracomment>_pair</extracomment>
        <translation>plus en entrée qu'en sortie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>more out than in</source>
        <extracomment>_pair</extracomment>
        <translation>plus en sortie qu'en entrée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Level by the pair alone</source>
        <extracomment>_pair</extracomment>
        <translation>Niveau par la paire seule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{kilo} a day evaporate</source>
        <extracomment>_pair</extracomment>
        <translation>{kilo} par jour s'évaporent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Top-off that holds the level</source>
        <extracomment>_pair</extracomment>
        <translation>Eau d'appoint qui tient le niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Old water</source>
        <extracomment>_pair</extracomment>
        <translation>Eau usée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>is full after</source>
        <extracomment>_pair</extracomment>
        <translation>est plein après</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>lasts</source>
        <extracomment>_pair</extracomment>
        <translation>dure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>a jug of {kilo} {does} {lasts}</source>
        <extracomment>_pair</extracomment>
        <translation>un bidon de {kilo} {does} {lasts}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{what}, jug for a week</source>
        <extracomment>_pair</extracomment>
        <translation>{what}, bidon pour une semaine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} less</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} de moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{volume} more</source>
        <extracomment>dosing</extracomment>
        <translation>{volume} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>by the label: {label_g} in {kilo} give {label_salinity}. {label_only}</source>
        <extracomment>_bucket</extracomment>
        <translation>d'après l'étiquette&#xa0;: {label_g} dans {kilo} donnent {label_salinity}. {label_only}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix for {kilo} at {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>Mélange de sel pour {kilo} à {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Temperature</source>
        <extracomment>_bucket, CorrectForm._water, ExchangeForm._new_water</extracomment>
        <translation>Température</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>found {measured}, wanted {new_salinity}</source>
        <extracomment>_bucket</extracomment>
        <translation>trouvé {measured}, voulu {new_salinity}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Salt mix still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Mélange de sel encore à ajouter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Or sodium chloride</source>
        <extracomment>_bucket</extracomment>
        <translation>Ou chlorure de sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>within 1 of what is wanted, since it shifts the balance</source>
        <extracomment>_bucket</extracomment>
        <translation>à 1 près de ce qui est voulu, car il décale l'équilibre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Fresh water still to add</source>
        <extracomment>_bucket</extracomment>
        <translation>Eau douce encore à ajouter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Salinity</source>
        <extracomment>_bucket, CorrectForm._water, salinity</extracomment>
        <translation>Salinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as wanted</source>
        <extracomment>_bucket</extracomment>
        <translation>comme voulu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; bring the bucket to it</source>
        <extracomment>_warm</extracomment>
        <translation>comme le bac&#xa0;; amenez-y le seau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>as the tank has; the new water has {new_temperature}</source>
        <extracomment>_warm</extracomment>
        <translation>comme le bac&#xa0;; l'eau neuve a {new_temperature}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>{name} ({read_at}, {stale_days} at most)</source>
        <extracomment>old_readings</extracomment>
        <translation>{name} ({read_at}, {stale_days} au plus)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Readings too old to go by: {old}. Test again.</source>
        <extracomment>old_readings</extracomment>
        <translation>Relevés trop anciens pour s'y fier&#xa0;: {old}. Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_parts.py"/>
        <source>Nobody said when this was measured: {undated}. Test again, or say when.</source>
        <extracomment>old_readings</extracomment>
        <translation>Personne n'a dit quand ceci a été mesuré&#xa0;: {undated}. Testez de nouveau, ou dites quand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Stands on the Correct sheet.</source>
        <translation>Figure sur la feuille Correction.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>of the old water are left after {days}</source>
        <extracomment>view</extracomment>
        <translation>de l'eau usée restent après {days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>{out} a day go out, {in_} come in: as much as a batch change of {batch_weekly} every week, or of {batch_whole} once in {days}. By how well the volume is known, {low} to {high} are left.</source>
        <extracomment>view</extracomment>
        <translation>{out} par jour sortent, {in_} entrent&#xa0;: autant qu'un changement d'un coup de {batch_weekly} chaque semaine, ou de {batch_whole} une fois en {days}. Selon que le volume est plus ou moins connu, il reste {low} à {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Nobody said how much {assumed} the new water has: natural seawater is assumed. Test it, or read the bag.</source>
        <extracomment>_remarks</extracomment>
        <translation>Personne n'a dit combien l'eau neuve en contient ({assumed})&#xa0;: l'eau de mer naturelle est supposée. Testez-la, ou lisez le sac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_sheet.py"/>
        <source>Should the jug of new water siphon across, {jug} run in: the system must hold that.</source>
        <extracomment>_remarks</extracomment>
        <translation>Si le bidon d'eau neuve se siphonnait, {jug} couleraient&#xa0;: le système doit pouvoir les tenir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>under {with_unit}</source>
        <extracomment>percent</extracomment>
        <translation>moins de {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{inside} to {inside_2}</source>
        <extracomment>between</extracomment>
        <translation>{inside} à {inside_2}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Two ways to reckon this exchange differ for {what}, so nothing is said. Please report this question.</source>
        <translation>Deux façons de calculer ce renouvellement diffèrent pour {what}, donc rien n'est dit. Signalez cette question, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>What is fed ({names}) counts as if all of it became nitrate and phosphate: the most it can bring. Growth and skimmer make it less.</source>
        <translation>Ce qui est donné à manger ({names}) compte comme si tout devenait nitrate et phosphate&#xa0;: le plus que cela peut apporter. La croissance et l'écumeur en font moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>without a name</source>
        <translation>sans nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} stands here twice. Leave one of them out.</source>
        <translation>{parameter} est ici deux fois. Omettez l'une des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} is not among the values looked at. Add it to them, or leave out the dose.</source>
        <translation>{parameter} n'est pas parmi les valeurs regardées. Ajoutez-la, ou omettez la dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>This dose comes after the {days} days looked at. Look further, or leave it out.</source>
        <translation>Cette dose vient après les {days} jours regardés. Regardez plus loin, ou omettez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>More comes in than goes out and evaporates: {per_day} a day, until the tank runs over. Set the pump for new water lower.</source>
        <translation>Il entre plus qu'il ne sort et s'évapore&#xa0;: {per_day} par jour, jusqu'à ce que le bac déborde. Réglez plus bas la pompe d'eau neuve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Fresh water needs no salt mix. Write the salinity that the new water should have.</source>
        <translation>De l'eau douce ne demande pas de mélange de sel. Écrivez la salinité que l'eau neuve doit avoir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>No old water is taken out, so nothing that gathers leaves the tank.</source>
        <translation>Aucune eau usée n'est sortie&#xa0;: rien de ce qui s'accumule ne quitte donc le bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The pumps are not matched: with the level held by top-off, salinity settles at {settles}, new water having {new}. To hold it within 0.5, the new water must be {low} of the old; it is {ratio}. Calibrate both pumps.</source>
        <translation>Les pompes ne sont pas accordées&#xa0;: niveau tenu par l'eau d'appoint, la salinité se stabilise à {settles}, l'eau neuve ayant {new}. Pour la tenir à 0,5 près, l'eau neuve doit valoir {low} de l'usée&#xa0;; elle vaut {ratio}. Étalonnez les deux pompes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more come in than go out. Unless as much evaporates, the tank runs over. Measure the evaporation.</source>
        <translation>{per_day} par jour entrent de plus qu'il n'en sort. Si autant ne s'évapore pas, le bac déborde. Mesurez l'évaporation.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{per_day} a day more go out than come in. Top-off makes that good with fresh water; without it the level falls.</source>
        <translation>{per_day} par jour sortent de plus qu'il n'en entre. L'eau d'appoint le compense avec de l'eau douce&#xa0;; sans elle le niveau baisse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has a salinity of {new}, the tank {tank}. Common practice: bring it within {most} of the tank before the exchange is started.</source>
        <translation>L'eau neuve a une salinité de {new}, le bac {tank}. Pratique courante&#xa0;: amenez-la à {most} d'écart au plus avec le bac avant de commencer le renouvellement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has {new}, the tank {tank}. Common practice: bring it within {most}, or make sure that the heater keeps up.</source>
        <translation>L'eau neuve a {new}, le bac {tank}. Pratique courante&#xa0;: amenez-la à {most} d'écart au plus avec le bac, ou assurez-vous que le chauffage suit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours, more than the {most} that no plan may pass. Exchange less, or bring the new water nearer.</source>
        <translation>{parameter} monterait de {rise} en 24 heures, plus que les {most} qu'aucun plan ne peut passer. Renouvelez moins, ou rapprochez l'eau neuve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would rise by {rise} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} monterait de {rise} en 24 heures&#xa0;; {most} est recommandé au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours, more than the {most} that no plan may pass. Exchange less, bring the new water nearer, or dose what is used.</source>
        <translation>{parameter} baisserait de {fall} en 24 heures, plus que les {most} qu'aucun plan ne peut passer. Renouvelez moins, rapprochez l'eau neuve, ou dosez ce qui est consommé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} would fall by {fall} in 24 hours; {most} is recommended at most.</source>
        <translation>{parameter} baisserait de {fall} en 24 heures&#xa0;; {most} est recommandé au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water has an alkalinity of {new}, the tank {tank}. Common practice: bring it within {most}, or keep the exchange slow and test often.</source>
        <translation>L'eau neuve a une alcalinité de {new}, le bac {tank}. Pratique courante&#xa0;: amenez-la à {most} d'écart au plus avec le bac, ou renouvelez lentement et testez souvent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>With this use nothing of {parameter} would be left after {days}. Dose it, or look whether the use is right.</source>
        <translation>Avec cette consommation il ne resterait rien ({parameter}) après {days}. Dosez, ou voyez si la consommation est juste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} never settles: nothing that gathers leaves the tank.</source>
        <translation>{parameter} ne se stabilise jamais&#xa0;: rien de ce qui s'accumule ne quitte le bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>{parameter} settles at {settles}, outside the {low} to {high} usually kept.</source>
        <translation>{parameter} se stabilise à {settles}, hors des {low} à {high} tenus d'ordinaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Nobody said how much {parameter} the new water has: natural seawater is assumed, {value}. Test it.</source>
        <translation>Personne n'a dit combien l'eau neuve en contient ({parameter})&#xa0;: l'eau de mer naturelle est supposée, {value}. Testez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The new water brings more {parameter} than is used, so that the value rises without any dose.</source>
        <translation>L'eau neuve apporte plus qu'il n'est consommé ({parameter})&#xa0;: la valeur monte donc sans aucune dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Test the bucket's salinity when all is dissolved and at the tank's temperature, before it is used.</source>
        <translation>Testez la salinité du seau quand tout est dissous et à la température du bac, avant de l'utiliser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>The bucket is {short} short. Common practice: sodium chloride makes good {most} at most, since it shifts the balance of the salts. Add salt mix instead.</source>
        <translation>Il manque {short} au seau. Pratique courante&#xa0;: le chlorure de sodium compense {most} au plus, car il décale l'équilibre des sels. Ajoutez plutôt du mélange de sel.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/exchange_words.py"/>
        <source>Salt mix is reckoned from the bag's own label only. Weigh it, and let all of it dissolve before testing.</source>
        <translation>Le mélange de sel est calculé d'après la seule étiquette du sac. Pesez-le, et laissez tout se dissoudre avant de tester.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what to raise</source>
        <translation>ce qu'il faut relever</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the reading</source>
        <extracomment>_largest_source</extracomment>
        <translation>le relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>when it was measured</source>
        <translation>quand il a été mesuré</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the net volume</source>
        <translation>le volume net</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how the volume is known</source>
        <translation>comment le volume est connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the volume is known</source>
        <translation>à quel point le volume est connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity</source>
        <translation>la salinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature</source>
        <translation>la température</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pH</source>
        <translation>le pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the alkalinity</source>
        <translation>l'alcalinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the partial pressure of carbon dioxide</source>
        <translation>la pression partielle de dioxyde de carbone</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale of the pH</source>
        <translation>l'échelle du pH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the calcium</source>
        <translation>le calcium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the evaporation</source>
        <translation>l'évaporation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical</source>
        <translation>le produit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the amount</source>
        <translation>la quantité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the system's name</source>
        <translation>le nom du système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the target</source>
        <translation>la valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the fastest rise</source>
        <translation>la hausse la plus rapide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the use per day</source>
        <extracomment>_largest_source</extracomment>
        <translation>la consommation journalière</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the reason</source>
        <translation>la raison</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved</source>
        <translation>combien a été dissous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume</source>
        <translation>le volume complété</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity</source>
        <translation>la pureté</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the second chemical</source>
        <translation>le second produit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how much of the second chemical was dissolved</source>
        <translation>combien du second produit a été dissous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the purity of the second chemical</source>
        <translation>la pureté du second produit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the coolest the jug gets</source>
        <translation>le plus froid où est le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>whether the jug is saturated</source>
        <translation>si le bidon est saturé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what the bottle raises</source>
        <translation>ce que relève le flacon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the dose on the label</source>
        <translation>la dose sur l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water on the label</source>
        <translation>l'eau sur l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise on the label</source>
        <translation>la hausse sur l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the stock</source>
        <translation>la température de la solution</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the stock is to raise</source>
        <translation>ce que la solution doit relever</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the wanted strength</source>
        <translation>la concentration voulue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the wanted dose</source>
        <translation>la dose voulue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the water that the dose goes into</source>
        <translation>l'eau dans laquelle va la dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the rise that the dose makes</source>
        <translation>la hausse que fait la dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the chemical of the other stock</source>
        <translation>le produit de l'autre solution</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much was dissolved in the other stock</source>
        <translation>combien a été dissous dans l'autre solution</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the made-up volume of the other stock</source>
        <translation>le volume complété de l'autre solution</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the purity of the other chemical</source>
        <translation>la pureté de l'autre produit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's flow</source>
        <translation>le débit de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's smallest dose</source>
        <translation>la plus petite dose de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's step</source>
        <translation>le pas de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the pump's largest share of the time</source>
        <translation>la part de temps maximale de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the doses per day</source>
        <translation>les doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the flow that the pump is set to</source>
        <translation>le débit réglé sur la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the dose in use</source>
        <translation>la dose en service</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours of the pump head</source>
        <translation>les heures de marche de la tête de pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the running hours in a day</source>
        <translation>les heures de marche en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the hours that a pump head lasts</source>
        <translation>les heures que dure une tête de pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the cylinder's graduation</source>
        <translation>la graduation de l'éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the cylinder's tolerance</source>
        <translation>la tolérance de l'éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>what the cylinder is made of</source>
        <translation>la matière de l'éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the scale's last digit</source>
        <translation>le dernier chiffre de la balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the scale's tolerance</source>
        <translation>la tolérance de la balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the temperature of the water</source>
        <translation>la température de l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the salinity of the water</source>
        <translation>la salinité de l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the temperature of the air</source>
        <translation>la température de l'air</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the air pressure</source>
        <translation>la pression de l'air</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the humidity</source>
        <translation>l'humidité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the density of the scale's weights</source>
        <translation>la densité des poids de la balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how far the time may be off</source>
        <translation>de combien le temps peut être faux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the inside diameter of the line</source>
        <translation>le diamètre intérieur du tuyau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the length of the line</source>
        <translation>la longueur du tuyau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>how much ran in</source>
        <translation>combien a coulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what the jug holds</source>
        <translation>ce que tient le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how much a centimetre of the jug holds</source>
        <translation>combien tient un centimètre du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was expected</source>
        <translation>la valeur attendue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the value that was measured</source>
        <translation>la valeur mesurée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>the time between two amounts</source>
        <translation>le temps entre deux quantités</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/field_words.py"/>
        <source>how well the flow is to be known</source>
        <translation>à quel point le débit doit être connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Action</source>
        <translation>Action</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Sheet</source>
        <translation>Feuille</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>System</source>
        <translation>Système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Word of the trade</source>
        <translation>Mot du métier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>due today, tests, chores, reminders, calendar, round sheet</source>
        <translation>à faire aujourd'hui, tests, tâches, rappels, calendrier, feuille de tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise, ramp, plan, dose, dose card, contingency cards, alk, KH</source>
        <translation>relever, rampe, plan, dose, fiche de dosage, fiches de secours, alca, KH</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>daily dose, maintenance, consumption, use per day, two-part, balance</source>
        <translation>dose du jour, maintien, consommation, consommation journalière, deux bidons, équilibre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>water change, new water, old water, salt mix, continuous exchange, bucket</source>
        <translation>changement d'eau, eau neuve, eau usée, mélange de sel, renouvellement continu, seau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>feeding, nutrients, amino acids, protein, phosphorus, nitrogen</source>
        <translation>nourrir, repas, nutriments, acides aminés, protéines, phosphore, azote</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>schedule, quiet hours, clock, times of day, minutes, day</source>
        <translation>programme, heures de calme, horloge, heures du jour, minutes, jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>calibration, doser, dosing head, tubing, flow, wear, peristaltic</source>
        <translation>étalonnage, doseuse, tête de dosage, tube, débit, usure, péristaltique</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>level, refill, container, reservoir, siphon, absence, holiday, days left</source>
        <translation>niveau, remplissage, récipient, réservoir, siphon, absence, vacances, jours restants</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>batch, recipe, solution, concentrate, mixing, limewater, kalk, kalkwasser, label, hydroxide</source>
        <translation>préparation, recette, solution, concentré, mélange, eau de chaux, kalk, kalkwasser, étiquette, hydroxyde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>reading, test, note, history, import, spreadsheet, CSV, entries, chart</source>
        <translation>relevé, test, note, historique, importer, tableau, CSV, entrées, graphique</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high, emergency, accident, ran in, cloudy</source>
        <translation>surdosage, trop haut, urgence, accident, a coulé, trouble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>kalk, kalkwasser, calcium hydroxide</source>
        <translation>kalk, kalkwasser, hydroxyde de calcium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>alk, KH, carbonate hardness</source>
        <translation>alca, KH, dureté carbonatée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>doser, dosing pump, peristaltic</source>
        <translation>doseuse, pompe doseuse, péristaltique</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>SG, hydrometer</source>
        <translation>SG, densimètre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>salt, ppt, refractometer</source>
        <translation>sel, ppt, réfractomètre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>overdose, too high</source>
        <translation>surdosage, trop haut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>raise slowly, course</source>
        <translation>relever lentement, cours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print round sheet</source>
        <translation>Imprimer la feuille de tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save round sheet as PDF</source>
        <translation>Enregistrer la feuille de tournée en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at round sheet</source>
        <translation>Voir la feuille de tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save reminders</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Enregistrer les rappels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Start this correction</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Commencer cette correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save card as PDF</source>
        <extracomment>CardActions.__init__, Dialogs.save_pdf</extracomment>
        <translation>Enregistrer la fiche en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print card</source>
        <translation>Imprimer la fiche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at card</source>
        <translation>Voir la fiche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards</source>
        <extracomment>ContingencyActions._look</extracomment>
        <translation>Fiches de secours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New jug</source>
        <translation>Nouveau bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New pump</source>
        <translation>Nouvelle pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Add a food</source>
        <translation>Ajouter une nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print timetable</source>
        <translation>Imprimer l'horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Save timetable as PDF</source>
        <translation>Enregistrer l'horaire en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at timetable</source>
        <translation>Voir l'horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New calibration</source>
        <translation>Nouvel étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add pump</source>
        <translation>Ajouter une pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Note this level</source>
        <translation>Noter ce niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Jug refilled</source>
        <translation>Bidon rempli</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Plan an absence</source>
        <translation>Prévoir une absence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>New batch</source>
        <translation>Nouvelle préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Print label</source>
        <translation>Imprimer l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Save label as PDF</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>Enregistrer l'étiquette en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Look at label</source>
        <translation>Voir l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add jug</source>
        <translation>Ajouter un bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>Log it</source>
        <translation>Noter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import from a spreadsheet</source>
        <extracomment>ImportPage.__init__</extracomment>
        <translation>Importer d'un tableau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Save as spreadsheet</source>
        <extracomment>Dialogs.save_csv</extracomment>
        <translation>Enregistrer en tableau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Print emergency card</source>
        <translation>Imprimer la fiche d'urgence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/finder.py"/>
        <source>The whole jug ran in</source>
        <translation>Tout le bidon s'est vidé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>inside the band</source>
        <translation>dans la bande</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>above the band</source>
        <translation>au-dessus de la bande</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>below the band</source>
        <translation>sous la bande</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Plan {plan_id} is followed since {since}. {said}</source>
        <extracomment>view</extracomment>
        <translation>Le plan {plan_id} est suivi depuis le {since}. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Its card was valid until {valid_until}. Test {name}, then end it or plan again.</source>
        <extracomment>verdict</extracomment>
        <translation>Sa fiche était valable jusqu'au {valid_until}. Testez {name}, puis terminez-le ou planifiez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The test of {name} is due now.</source>
        <extracomment>verdict</extracomment>
        <translation>{name}&#xa0;: test à faire maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>No reading since then. Test {name} by {due}.</source>
        <extracomment>verdict</extracomment>
        <translation>Aucun relevé depuis. Testez {name} avant le {due}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is {place_words} of {last}</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} est {place_words} de {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{last_value} is above {stop_above}, where the card says stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{last_value} est au-dessus de {stop_above}, où la fiche dit d'arrêter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{in_a_row} readings in a row lie above the band, the last {last_value} above {last}.</source>
        <extracomment>verdict</extracomment>
        <translation>{in_a_row} relevés de suite sont au-dessus de la bande, le dernier, {last_value}, au-dessus de {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Stop dosing {name} now. {why} The animals may use less than before.</source>
        <extracomment>verdict</extracomment>
        <translation>Arrêtez maintenant de doser {name}. {why} Les animaux consomment peut-être moins qu'avant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. Test again with a fresh kit before the next doses; a second reading above it means stop.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. Testez de nouveau avec un kit neuf avant les prochaines doses&#xa0;; un second relevé au-dessus veut dire arrêt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug</source>
        <extracomment>verdict</extracomment>
        <translation>Regardez tuyau, pompe et bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Look at line, pump and jug now</source>
        <extracomment>verdict</extracomment>
        <translation>Regardez maintenant tuyau, pompe et bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{reading}. {more}; the animals may use more than before. Never make up what is missing.</source>
        <extracomment>verdict</extracomment>
        <translation>{reading}. {more}&#xa0;; les animaux consomment peut-être plus qu'avant. Ne rattrapez jamais ce qui manque.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source> Test {name} now.</source>
        <extracomment>verdict</extracomment>
        <translation> Testez {name} maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Two</source>
        <extracomment>_times</extracomment>
        <translation>Deux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Three</source>
        <extracomment>_times</extracomment>
        <translation>Trois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/progress.py"/>
        <source>Stop</source>
        <extracomment>_answer, ProgressRow.__init__</extracomment>
        <translation>Arrêtez</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>dosing now</source>
        <extracomment>_answer</extracomment>
        <translation>de doser maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>The ramp is over, and nothing is dosed to keep the value.</source>
        <extracomment>_answer</extracomment>
        <translation>La rampe est finie, et rien n'est dosé pour garder la valeur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>until </source>
        <extracomment>_answer</extracomment>
        <translation>jusqu'au </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>to keep it there</source>
        <extracomment>_answer</extracomment>
        <translation>pour y garder la valeur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>By now {found}, {given}. The water should hold {expected} ({expected_2}).</source>
        <extracomment>_answer</extracomment>
        <translation>Jusqu'ici {found}, {given}. L'eau devrait avoir {expected} ({expected_2}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{doses_given} of {count} doses are due</source>
        <extracomment>_doses</extracomment>
        <translation>{doses_given} doses sur {count} étaient prévues</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>all {count} doses and {doses_given} of the upkeep are due</source>
        <extracomment>_doses</extracomment>
        <translation>toutes les {count} doses et {doses_given} de l'entretien étaient prévues</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{retest_value}, expected {retest}</source>
        <extracomment>_line</extracomment>
        <translation>{retest_value}, attendu {retest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if all doses arrived and the use is right; {used} was reckoned with</source>
        <extracomment>_volume</extracomment>
        <translation>si toutes les doses sont arrivées et si la consommation est juste&#xa0;; compté avec {used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>Net volume by this rise</source>
        <extracomment>_volume</extracomment>
        <translation>Volume net d'après cette hausse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>{said} ({low} to {high})</source>
        <extracomment>_volume</extracomment>
        <translation>{said} ({low} à {high})</translation>
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
        <translation>si la consommation s'arrête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <source>if dosing stops now</source>
        <extracomment>chart</extracomment>
        <translation>si le dosage s'arrête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_view.py"/>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>target</source>
        <extracomment>chart</extracomment>
        <translation>cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown. It is counted: the ramp starts at {start}. A new test would make it surer.</source>
        <translation>Depuis le relevé, {untested} ont été dosés qu'aucun test n'a montrés. C'est compté&#xa0;: la rampe part de {start}. Un nouveau test la rendrait plus sûre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>Since the reading {untested} was dosed that no test has shown, which may reach {target} already. Test {parameter} again before more is planned.</source>
        <translation>Depuis le relevé, {untested} ont été dosés qu'aucun test n'a montrés, ce qui atteint peut-être déjà {target}. Testez {parameter} de nouveau avant de planifier plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>The net volume is not known, so nobody can say what was raised since the reading. Test {parameter} again before more is planned.</source>
        <translation>Le volume net n'est pas connu&#xa0;: personne ne peut donc dire ce qui a été relevé depuis le test. Testez {parameter} de nouveau avant de planifier plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/following_words.py"/>
        <source>{given} was given already that counts in the same 24 hours, of {hard} at the most. Wait a day, then test again.</source>
        <translation>{given} ont déjà été donnés qui comptent dans les mêmes 24 heures, sur {hard} au plus. Attendez un jour, puis testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>with food</source>
        <translation>avec nourritures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>without</source>
        <translation>sans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>usual, at most</source>
        <translation>d'ordinaire, au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_chart.py"/>
        <source>{name} goes from {points} to {end} with these foods, to {end_2} without.</source>
        <extracomment>_panel</extracomment>
        <translation>{name} va de {points} à {end} avec ces nourritures, à {end_2} sans.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>Unnamed food</source>
        <translation>Nourriture sans nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_given.py"/>
        <source>nitrification of {each}</source>
        <extracomment>_additions</extracomment>
        <translation>nitrification de {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>“{text}” is not a date. Write it like 2026-11-25.</source>
        <extracomment>messages, date_messages</extracomment>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une date. Écrivez-la comme 2026-11-25.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>That day is still to come.</source>
        <extracomment>messages</extracomment>
        <translation>Ce jour est encore à venir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it stood warm</source>
        <extracomment>stop</extracomment>
        <translation>elle était au chaud</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>it keeps no longer</source>
        <extracomment>stop</extracomment>
        <translation>elle ne se garde pas plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The last day of {found} was {last_day}: {why}. Stop its pump, throw it away, rinse jug and line, and open a new one.</source>
        <extracomment>stop</extracomment>
        <translation>Le dernier jour de {found} était le {last_day}&#xa0;: {why}. Arrêtez sa pompe, jetez-la, rincez bidon et tuyau, et ouvrez-en une nouvelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>A feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Un repas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{times} in a day</source>
        <extracomment>_lines</extracomment>
        <translation>{times} en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened {opened}, keeps {keeps_days}{in_}</source>
        <extracomment>_lines</extracomment>
        <translation>ouverte le {opened}, se garde {keeps_days}{in_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> in the warm</source>
        <extracomment>_lines</extracomment>
        <translation> au chaud</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> (today)</source>
        <extracomment>_lines</extracomment>
        <translation> (aujourd'hui)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source> ({left} left)</source>
        <extracomment>_lines</extracomment>
        <translation> (reste {left})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Last day to use it</source>
        <extracomment>_lines</extracomment>
        <translation>Dernier jour d'emploi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts</source>
        <extracomment>_lines</extracomment>
        <translation>Le bidon dure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{jug} at {per_day} a day</source>
        <extracomment>_lines</extracomment>
        <translation>{jug} à {per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Empty on</source>
        <extracomment>_lines</extracomment>
        <translation>Vide le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>opened full, as much given every day</source>
        <extracomment>_lines</extracomment>
        <translation>ouvert plein, autant donné chaque jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The line holds</source>
        <extracomment>_lines, _line</extracomment>
        <translation>Le tuyau contient</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>π ÷ 4 × inside diameter × inside diameter × length</source>
        <extracomment>_lines</extracomment>
        <translation>π ÷ 4 × diamètre intérieur × diamètre intérieur × longueur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Food stands in it</source>
        <extracomment>_lines</extracomment>
        <translation>La nourriture y reste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>what it holds ÷ what is given in a day</source>
        <extracomment>_lines</extracomment>
        <translation>ce qu'il contient ÷ ce qui est donné en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>{rinses} × what it holds, fresh or salt water</source>
        <extracomment>_lines</extracomment>
        <translation>{rinses} × ce qu'il contient, eau douce ou salée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush after a feeding</source>
        <extracomment>_lines</extracomment>
        <translation>Rincer après un repas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Flush in a day</source>
        <extracomment>_lines</extracomment>
        <translation>Rinçage en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>of fresh water it is a part of the top-off</source>
        <extracomment>_lines</extracomment>
        <translation>d'eau douce, c'est une part de l'eau d'appoint</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>It is not kept cold: raw food in the warm keeps a day at most (common practice, no source).</source>
        <extracomment>_remarks</extracomment>
        <translation>Elle n'est pas gardée au froid&#xa0;: une nourriture crue au chaud se garde un jour au plus (pratique courante, sans source).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>The jug lasts {lasts} and keeps {keeps_days}: {thrown} would be thrown away. Open {largest} at a time, or less.</source>
        <extracomment>_remarks</extracomment>
        <translation>Le bidon dure {lasts} et se garde {keeps_days}&#xa0;: {thrown} seraient jetés. Ouvrez-en {largest} à la fois, ou moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>Without flushing, food stands in the line for {stands_days}. In a warm line it spoils within hours (common practice, no source): flush {flush} after each feeding, or bring the jug nearer.</source>
        <extracomment>_remarks</extracomment>
        <translation>Sans rinçage, la nourriture reste {stands_days} dans le tuyau. Dans un tuyau chaud elle se gâte en quelques heures (pratique courante, sans source)&#xa0;: rincez avec {flush} après chaque repas, ou rapprochez le bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <source>day</source>
        <extracomment>_days</extracomment>
        <translation>jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_jug.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>days</source>
        <extracomment>_days, ExchangeChart._paint_axes</extracomment>
        <translation>jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a week</source>
        <extracomment>_spoken</extracomment>
        <translation>dans une semaine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 4 weeks</source>
        <translation>dans 4 semaines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>in 8 weeks</source>
        <translation>dans 8 semaines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>settles at</source>
        <translation>se stabilise à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>In a day</source>
        <extracomment>table_heads</extracomment>
        <translation>En un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>given</source>
        <extracomment>table_heads</extracomment>
        <translation>donné</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>paused</source>
        <extracomment>row</extracomment>
        <translation>en pause</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no amount yet</source>
        <extracomment>row</extracomment>
        <translation>pas encore de quantité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{per_day} a day</source>
        <extracomment>row</extracomment>
        <translation>{per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>STOP: its last day is over</source>
        <extracomment>row</extracomment>
        <translation>STOP&#xa0;: son dernier jour est passé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>use until {last_day}</source>
        <extracomment>row</extracomment>
        <translation>à utiliser jusqu'au {last_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{each} cannot be read yet, so nothing of it is counted.</source>
        <extracomment>view</extracomment>
        <translation>{each} ne peut pas encore être lu&#xa0;: rien n'en est donc compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mL per day</source>
        <extracomment>_answer, a unit beside a figure</extracomment>
        <translation>mL par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Paused: nothing of it is counted.</source>
        <extracomment>_answer</extracomment>
        <translation>En pause&#xa0;: rien n'en est compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>feeding now</source>
        <extracomment>_answer</extracomment>
        <translation>nourriture en ce moment</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>At most {dose} a day of it beside the other foods, by the rise of {parameter}.</source>
        <extracomment>_answer</extracomment>
        <translation>Au plus {dose} par jour à côté des autres nourritures, d'après la hausse&#xa0;: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in {food_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Remplissez&#xa0;: {food_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Exchange</source>
        <extracomment>_elsewhere, UpkeepSheet._placed</extracomment>
        <translation>Renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Correct</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Fill in the net volume.</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Remplissez le volume net.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>On the {where} sheet: {said}</source>
        <extracomment>_elsewhere</extracomment>
        <translation>Sur la feuille {where}&#xa0;: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{unit} per day</source>
        <extracomment>_figure</extracomment>
        <translation>{unit} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>A day of it brings at most {said}.</source>
        <extracomment>_brings</extracomment>
        <translation>Un jour en apporte au plus {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>Nothing of it is counted.</source>
        <extracomment>_brings</extracomment>
        <translation>Rien n'en est compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{near_value} of {bound}</source>
        <extracomment>_bars</extracomment>
        <translation>{near_value} sur {bound}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{name} in a day</source>
        <extracomment>_bars, _working</extracomment>
        <translation>{name} en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>{dose} × {carried} in a mL × {per} ÷ {litres}</source>
        <extracomment>_working</extracomment>
        <translation>{dose} × {carried} dans un mL × {per} ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>All together</source>
        <extracomment>_rows</extracomment>
        <translation>Toutes ensemble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>none</source>
        <extracomment>_rise, _salt, TimetableForm.__init__</extracomment>
        <translation>aucun</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>takes {said}</source>
        <extracomment>_rise</extracomment>
        <translation>prend {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>with these foods</source>
        <extracomment>_course</extracomment>
        <translation>avec ces nourritures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>without food</source>
        <extracomment>_course</extracomment>
        <translation>sans nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>climbs on</source>
        <extracomment>_points</extracomment>
        <translation>monte toujours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source>no reading</source>
        <extracomment>_points</extracomment>
        <translation>pas de relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <source> Turning their nitrogen into nitrate alone takes {oxygen} in a day.</source>
        <extracomment>_notes</extracomment>
        <translation> Changer leur azote en nitrate prend à lui seul {oxygen} en un jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L</source>
        <extracomment>_notes, _pair, _figure</extracomment>
        <translation>mg par L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A liquid food</source>
        <translation>Une nourriture liquide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Amino acids</source>
        <translation>Des acides aminés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>A trace mix</source>
        <translation>Un mélange de traces</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What a mL carries</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Ce que porte un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Percent by mass</source>
        <translation>Pourcentage en masse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>So many mL raise so much water</source>
        <translation>Tant de mL relèvent tant d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Yes, kept cold</source>
        <translation>Oui, gardée au froid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>No, it stands in the room</source>
        <translation>Non, elle est dans la pièce</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Given</source>
        <translation>Donnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the name of the food</source>
        <translation>le nom de la nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the food is</source>
        <translation>ce qu'est la nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how much is given in a day</source>
        <translation>combien est donné en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the feedings in a day</source>
        <translation>les repas en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether the food is given</source>
        <translation>si la nourriture est donnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how the label says what it carries</source>
        <translation>comment l'étiquette dit ce qu'elle porte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen in a mL</source>
        <translation>l'azote dans un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus in a mL</source>
        <translation>le phosphore dans un mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the protein</source>
        <translation>les protéines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the nitrogen</source>
        <translation>l'azote</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the phosphorus</source>
        <translation>le phosphore</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the density</source>
        <translation>la densité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>what the label says it raises</source>
        <translation>ce que l'étiquette dit qu'elle relève</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>the date it was opened</source>
        <translation>la date d'ouverture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>how long it keeps</source>
        <translation>combien de temps elle se garde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>whether it is kept cold</source>
        <translation>si elle est gardée au froid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump</source>
        <extracomment>_primed, _flow, field_words</extracomment>
        <translation>la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Raw food: wash your hands before and after, and clean what it touched.</source>
        <translation>Nourriture crue&#xa0;: lavez-vous les mains avant et après, et nettoyez ce qu'elle a touché.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>In the fridge keep it closed and apart from people's food, labelled with its name and the date it was opened.</source>
        <translation>Au réfrigérateur, gardez-la fermée et séparée de la nourriture des gens, étiquetée avec son nom et la date d'ouverture.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>What smells off or was warm for a day is thrown away.</source>
        <translation>Ce qui sent mauvais ou a été un jour au chaud se jette.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Read the bottle's own label first; it wins over this page.</source>
        <translation>Lisez d'abord l'étiquette du flacon&#xa0;; elle l'emporte sur cette page.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Write the date it was opened on it. Nothing in drink bottles; keep it away from children.</source>
        <translation>Écrivez dessus la date d'ouverture. Rien dans des bouteilles de boisson&#xa0;; tenez hors de portée des enfants.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>As if all of it became nitrate and phosphate: the most it can bring. Skimmer and growth make it less; a test tells.</source>
        <translation>Comme si tout devenait nitrate et phosphate&#xa0;: le plus que cela peut apporter. L'écumeur et la croissance en font moins&#xa0;; un test le dit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Food, exchange and export alone are reckoned above: what is dosed besides, and what the animals use, is left out. All plans together follow below.</source>
        <translation>Seuls nourriture, renouvellement et export sont comptés ci-dessus&#xa0;: ce qui est dosé en outre, et ce que les animaux consomment, est laissé de côté. Tous les plans ensemble suivent plus bas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Decay takes oxygen, most at night. Feed less when the water is warm or the surface still, and not while the flow is off.</source>
        <translation>La décomposition prend de l'oxygène, surtout la nuit. Nourrissez moins quand l'eau est chaude ou la surface calme, et pas tant que le courant est arrêté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>Nitrogen and phosphorus together are more than the whole food. Look at the label again.</source>
        <translation>Azote et phosphore font ensemble plus que toute la nourriture. Regardez de nouveau l'étiquette.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day, more than the {most} that no plan may pass, reckoned for the low end of the net volume. Give at most {share} of it.</source>
        <translation>Toutes les nourritures ensemble peuvent apporter {rise} {parameter} par jour, plus que les {most} qu'aucun plan ne peut passer, calculé pour la borne basse du volume net. Donnez-en au plus {share}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>All foods together may bring {rise} {parameter} a day; {most} is recommended at most.</source>
        <translation>Toutes les nourritures ensemble peuvent apporter {rise} {parameter} par jour&#xa0;; {most} sont recommandés au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>With these foods {parameter} may settle at {settles}, above the {high} usually kept. Feed less, or take out more.</source>
        <translation>Avec ces nourritures, {parameter} peut se stabiliser à {settles}, au-dessus des {high} tenus d'ordinaire. Nourrissez moins, ou enlevez plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>{parameter} never settles: nothing is said to leave the tank, and up to {rise} come in a week. Say on the Exchange sheet what is exchanged, and what skimmer, algae and media take.</source>
        <translation>{parameter} ne se stabilise jamais&#xa0;: aucune sortie du bac n'est indiquée, et jusqu'à {rise} viennent en une semaine. Dites sur la feuille Renouvellement ce qui est renouvelé, et ce que prennent écumeur, algues et masses filtrantes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>The label of {name} says nothing of phosphorus, so none is counted. Nearly every food brings some: test phosphate.</source>
        <translation>L'étiquette de {name} ne dit rien du phosphore&#xa0;: aucun n'est donc compté. Presque toute nourriture en apporte&#xa0;: testez le phosphate.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/foods_words.py"/>
        <source>a food</source>
        <translation>une nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Common practice, no source.</source>
        <translation>Pratique courante, sans source.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/glossary.py"/>
        <source>Source: {source}.</source>
        <translation>Source&#xa0;: {source}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>No system takes from this jug yet, so there is no water it could run into.</source>
        <translation>Aucun système ne prend encore à ce bidon&#xa0;: il n'y a donc pas d'eau où il pourrait couler.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>What is in the jug is not complete, so nobody can say what it would do. Fill in its batch on the Stocks sheet.</source>
        <translation>Le contenu du bidon n'est pas complet&#xa0;: personne ne peut donc dire ce qu'il ferait. Remplissez sa préparation sur la feuille Solutions.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>taken for it, not tested</source>
        <extracomment>_row</extracomment>
        <translation>supposé, non testé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>as tested</source>
        <extracomment>_row, run_in, _lines</extracomment>
        <translation>d'après le test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>{name}: from {before} ({said}) to {after}</source>
        <extracomment>_row</extracomment>
        <translation>{name}&#xa0;: de {before} ({said}) à {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, above the {most} that no plan may aim for</source>
        <extracomment>_row</extracomment>
        <translation>, au-dessus des {most} qu'aucun plan ne peut viser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>too high already: none of it is safe</source>
        <extracomment>_row</extracomment>
        <translation>déjà trop haut&#xa0;: rien n'en est sûr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>largest safe jug {safe}, advised {safe_2} or less</source>
        <extracomment>_row</extracomment>
        <translation>plus grand bidon sûr {safe}, conseillé {safe_2} ou moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>, about {held} of running</source>
        <extracomment>_primed</extracomment>
        <translation>, environ {held} de marche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source>The line of {name} holds {held}{run}.</source>
        <extracomment>_primed</extracomment>
        <translation>Le tuyau de {name} contient {held}{run}.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_danger.py"/>
        <source> Not primed, the first {n} doses do not arrive whole.</source>
        <extracomment>for 1:  Not primed, the first dose does not arrive whole.; _primed</extracomment>
        <translation>
            <numerusform> Sans amorçage, la première dose n'arrive pas entière.</numerusform>
            <numerusform> Sans amorçage, les {n} premières doses n'arrivent pas entières.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Reckoning what is taken from the jugs.</source>
        <translation>Calcul de ce qui est pris aux bidons.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Nothing is known to be taken from this jug, so its levels say nothing of a pump.</source>
        <translation>On ne connaît aucun prélèvement dans ce bidon&#xa0;: ses niveaux ne disent donc rien d'une pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Say what the jug holds when it is full; then its levels can be compared.</source>
        <translation>Dites ce que le bidon tient quand il est plein&#xa0;; alors ses niveaux peuvent être comparés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>One level is noted. Read it again in a few days: two levels tell how the pump delivers.</source>
        <translation>Un niveau est noté. Relisez-le dans quelques jours&#xa0;: deux niveaux disent comment la pompe débite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>No level is noted yet. Read one now, and one more in a few days: two levels tell how the pump delivers.</source>
        <translation>Aucun niveau n'est encore noté. Lisez-en un maintenant, et un autre dans quelques jours&#xa0;: deux niveaux disent comment la pompe débite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>All is well: the pump delivers what it should.</source>
        <translation>Tout va bien&#xa0;: la pompe débite ce qu'elle doit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Far less is in the log than the daily rate takes. What was dosed by hand and not noted looks like a fault of the pump.</source>
        <translation>Il y a bien moins dans le journal que ce que prend le rythme journalier. Ce qui a été dosé à la main sans être noté ressemble à un défaut de la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>The level fell all the same. If no pump draws from this jug, it runs in by itself: lift the outlet out of the water at once and set the jug below it.</source>
        <extracomment>_fell</extracomment>
        <translation>Le niveau a baissé quand même. Si aucune pompe ne puise dans ce bidon, il se vide de lui-même&#xa0;: levez tout de suite la sortie hors de l'eau et posez le bidon plus bas qu'elle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>it may run in by itself</source>
        <extracomment>summary</extracomment>
        <translation>il se vide peut-être de lui-même</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} {way} (give or take {half})</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} {way} (à {half} près)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{real} left the jug from {since} to {until} (give or take {half}); {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>{real} sont sortis du bidon du {since} au {until} (à {half} près)&#xa0;; {expected} étaient attendus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>That is {off}: {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>C'est {off}&#xa0;: {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>To tell {percent}, read levels between which {clear_from} or more are dosed.</source>
        <extracomment>_checked</extracomment>
        <translation>Pour voir {percent}, lisez des niveaux entre lesquels {clear_from} ou plus sont dosés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Likely: {causes}.</source>
        <extracomment>_checked</extracomment>
        <translation>Vraisemblable&#xa0;: {causes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>Possible{too}: {others}.</source>
        <extracomment>_checked</extracomment>
        <translation>Possible{too}&#xa0;: {others}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{bias} too {much} delivered</source>
        <extracomment>_checked</extracomment>
        <translation>{bias} délivrés en {much}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>much</source>
        <extracomment>_checked</extracomment>
        <translation>trop</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>little</source>
        <extracomment>_checked</extracomment>
        <translation>moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_delivery.py"/>
        <source>{name} is set by a flow of {entered_number}. By these levels it gives {new} ({low} to {high}). Calibrate it first; use this only if the calibration says the same.</source>
        <extracomment>_flow</extracomment>
        <translation>{name} est réglée d'après un débit de {entered_number}. D'après ces niveaux elle donne {new} ({low} à {high}). Étalonnez-la d'abord&#xa0;; n'utilisez ceci que si l'étalonnage dit la même chose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>what lies below the intake</source>
        <translation>ce qui est sous la prise</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how well a level is read</source>
        <translation>la finesse de lecture du niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>how the jug stands</source>
        <translation>la position du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>whether the line is primed</source>
        <translation>si le tuyau est amorcé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_field_words.py"/>
        <source>the date of return</source>
        <translation>la date de retour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>In the eyes: rinse for at least 15 minutes and get medical help. Poison&#xa0;centre:</source>
        <translation>Dans les yeux&#xa0;: rincez au moins 15 minutes et consultez un médecin. Centre&#xa0;antipoison&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Keep away from children. Not for drinking.</source>
        <translation>Tenir hors de portée des enfants. Non potable.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>carbonate</source>
        <translation>carbonate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>bicarbonate</source>
        <translation>bicarbonate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>other alkalinity</source>
        <translation>autre alcalinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dissolved inorganic carbon</source>
        <translation>carbone inorganique dissous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>dry salt</source>
        <translation>sel sec</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Never mix with any {named} concentrate.</source>
        <extracomment>label</extracomment>
        <translation>Ne mélangez jamais avec un concentré ({named}).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>and </source>
        <extracomment>_contents</extracomment>
        <translation>et </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength by its label: {dose} raise {water} by {rise}.</source>
        <extracomment>_strength</extracomment>
        <translation>Concentration d'après son étiquette&#xa0;: {dose} relèvent {water} de {rise}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Saturated limewater, dose the clear water only. Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Eau de chaux saturée, ne dosez que l'eau claire. Concentration&#xa0;: {batch}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Strength: {batch}.</source>
        <extracomment>_strength</extracomment>
        <translation>Concentration&#xa0;: {batch}.</translation>
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
        <translation>{dose} porte {carried}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{parameter} by {amount}</source>
        <extracomment>_does</extracomment>
        <translation>{parameter} de {amount}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{dose} in {water} raises {rises}.</source>
        <extracomment>_does</extracomment>
        <translation>{dose} dans {water} relève {rises}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{first} or {last}</source>
        <extracomment>_any_of, listed</extracomment>
        <translation>{first} ou {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Filled</source>
        <extracomment>_entries</extracomment>
        <translation>Rempli</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Mixed</source>
        <extracomment>_entries</extracomment>
        <translation>Préparé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} on</source>
        <extracomment>_entries</extracomment>
        <translation>{done} le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>{done} by</source>
        <extracomment>_entries</extracomment>
        <translation>{done} par</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <source>Not colder than</source>
        <extracomment>_entries</extracomment>
        <translation>Pas plus froid que</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_label.py"/>
        <location filename="../../desktop/evenwater/card/label_parts.py"/>
        <location filename="../glossary.toml"/>
        <source>Batch</source>
        <extracomment>_entries, batch</extracomment>
        <translation>Préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>Read the level first, at eye height.</source>
        <extracomment>take</extracomment>
        <translation>Lisez d'abord le niveau, à hauteur d'œil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_levels.py"/>
        <source>A refill leaves more in the jug than before.</source>
        <extracomment>take</extracomment>
        <translation>Un remplissage laisse plus dans le bidon qu'avant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Largest jug that leaves every value in its hard range: {safe}. Advised: {advised} or less.</source>
        <extracomment>_lines</extracomment>
        <translation>Plus grand bidon qui laisse chaque valeur dans ses limites strictes&#xa0;: {safe}. Conseillé&#xa0;: {advised} ou moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>In the jug now: about {level}. The pumps take {per_day} a day.</source>
        <extracomment>_lasts</extracomment>
        <translation>Dans le bidon maintenant&#xa0;: environ {level}. Les pompes prennent {per_day} par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>At that it lasts more than ten years.</source>
        <extracomment>_lasts</extracomment>
        <translation>À ce rythme il dure plus de dix ans.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>It lasts {days_left}, until {last_full}. Refill it before {refill_before}.</source>
        <extracomment>_lasts</extracomment>
        <translation>Il dure {days_left}, jusqu'au {last_full}. Remplissez-le avant le {refill_before}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>By {earliest} if the level was read high and the pumps deliver as much more as their calibration leaves open.</source>
        <extracomment>_lasts</extracomment>
        <translation>Dès le {earliest} si le niveau a été lu trop haut et si les pompes débitent autant de plus que leur étalonnage le permet.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>the first {n} doses do</source>
        <extracomment>for 1: the first dose does; _lasts</extracomment>
        <translation>
            <numerusform>la première dose n'arrive</numerusform>
            <numerusform>les {n} premières doses n'arrivent</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The line holds {volume}: prime it after a refill, or {which} not arrive whole.</source>
        <extracomment>_lasts</extracomment>
        <translation>Le tuyau contient {volume}&#xa0;: amorcez-le après un remplissage, sinon {which} pas en entier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>assumed, not tested</source>
        <extracomment>run_in</extracomment>
        <translation>supposé, non testé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If the whole jug ran in, {name} would go from {before} ({said}) to {after}.</source>
        <extracomment>run_in</extracomment>
        <translation>Si tout le bidon se vidait, {name} passerait de {before} ({said}) à {after}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Jug check from {since} to {until}: {real} left the jug (give or take {real_half}), {expected} were expected.</source>
        <extracomment>_checked</extracomment>
        <translation>Contrôle du bidon du {since} au {until}&#xa0;: {real} en sont sortis (à {real_half} près), {expected} étaient attendus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>That is {bias} {way} (give or take {half}): {marks}.</source>
        <extracomment>_checked</extracomment>
        <translation>C'est {bias} {way} (à {half} près)&#xa0;: {marks}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source> Possible: {possible}.</source>
        <extracomment>_checked</extracomment>
        <translation> Possible&#xa0;: {possible}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>If a calibration says the same, multiply the pump's flow by {f_value} ({low} to {high}). Nothing is changed by itself.</source>
        <extracomment>_checked</extracomment>
        <translation>Si un étalonnage dit la même chose, multipliez le débit de la pompe par {f_value} ({low} à {high}). Rien n'est changé de soi-même.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>The flow would then be {flow}.</source>
        <extracomment>_checked</extracomment>
        <translation>Le débit serait alors {flow}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Away until {until}:</source>
        <extracomment>_away</extracomment>
        <translation>Absent jusqu'au {until}&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Left as it is, the jug misses doses from {left_alone_until} on.</source>
        <extracomment>_away</extracomment>
        <translation>Laissé tel quel, le bidon manque des doses à partir du {left_alone_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then. Add {add} before you leave.</source>
        <extracomment>_away</extracomment>
        <translation>{needed} sont nécessaires d'ici là. Ajoutez {add} avant de partir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>{needed} are needed until then, and there is enough.</source>
        <extracomment>_away</extracomment>
        <translation>{needed} sont nécessaires d'ici là, et il y en a assez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_lines.py"/>
        <source>Even full it lasts only until {lasts_until}: ask somebody to refill it.</source>
        <extracomment>_away</extracomment>
        <translation>Même plein il ne dure que jusqu'au {lasts_until}&#xa0;: demandez à quelqu'un de le remplir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {after}, more than the {most} no plan may aim for.</source>
        <extracomment>_would_harm</extracomment>
        <translation>Si tout le bidon se vidait, {parameter} atteindrait {after}, plus que les {most} qu'aucun plan ne peut viser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} It is too high already: dose none of it.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} C'est déjà trop haut&#xa0;: n'en dosez pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{head} A jug of {safe} or less would not.</source>
        <extracomment>_would_harm</extracomment>
        <translation>{head} Avec un bidon de {safe} ou moins, non.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level of the jug once at least. Two levels some days apart tell how its pump delivers.</source>
        <translation>Lisez au moins une fois le niveau du bidon. Deux niveaux à quelques jours d'écart disent comment sa pompe débite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug holds {holds}, and all of that is said to lie below the intake. Correct one of the two.</source>
        <translation>Le bidon tient {holds}, et tout cela serait sous la prise. Corrigez l'un des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A level of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Un niveau de {given} est plus que ce que tient le bidon, {holds}. Corrigez l'un des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>A refill of {given} is more than the jug holds, {holds}. Correct one of the two.</source>
        <translation>Un remplissage à {given} est plus que ce que tient le bidon, {holds}. Corrigez l'un des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this level is still to come. Correct it.</source>
        <translation>L'heure de ce niveau est encore à venir. Corrigez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The time of this refill is still to come. Correct it, or leave it out until it is done.</source>
        <translation>L'heure de ce remplissage est encore à venir. Corrigez-la, ou omettez-le jusqu'à ce qu'il soit fait.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The return lies before now. Correct its date.</source>
        <translation>Le retour est avant maintenant. Corrigez sa date.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>One level says nothing of the pump. Read it again in a few days.</source>
        <translation>Un seul niveau ne dit rien de la pompe. Relisez-le dans quelques jours.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>These are {count} levels; {most} can be looked at together. Leave out the oldest.</source>
        <translation>Ce sont {count} niveaux&#xa0;; {most} peuvent être regardés ensemble. Omettez les plus anciens.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Two levels have the same time, so nothing is said of the pump. Correct one of them.</source>
        <translation>Deux niveaux ont la même heure&#xa0;: rien n'est donc dit de la pompe. Corrigez l'un d'eux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No dose falls between these levels, so they say nothing of the pump.</source>
        <translation>Aucune dose ne tombe entre ces niveaux&#xa0;: ils ne disent donc rien de la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level fell without any dose. Lift the outlet out of the water at once: the jug may run in by itself.</source>
        <translation>Le niveau a baissé sans aucune dose. Levez tout de suite la sortie hors de l'eau&#xa0;: le bidon se vide peut-être de lui-même.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>More left the jug than the pump should have taken, so it may run in by itself. Stop at once: lift the outlet out of the water and the jug below it, then test the water before anything is dosed.</source>
        <translation>Il est sorti du bidon plus que la pompe n'aurait dû prendre&#xa0;: il se vide peut-être de lui-même. Arrêtez tout de suite&#xa0;: levez la sortie hors de l'eau et posez le bidon plus bas, puis testez l'eau avant de rien doser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>No single cause explains these levels. Read them again, and note every refill.</source>
        <translation>Aucune cause seule n'explique ces niveaux. Relisez-les, et notez chaque remplissage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>{count} pumps draw from this jug. The levels cannot tell which of them is off: look at each.</source>
        <translation>{count} pompes puisent dans ce bidon. Les niveaux ne peuvent pas dire laquelle a un défaut&#xa0;: regardez chacune.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug was found dry, so only what was in it is expected to have been delivered.</source>
        <translation>Le bidon a été trouvé vide&#xa0;: seul ce qu'il contenait est donc attendu comme délivré.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The level rose without a refill noted. Note the refill, or read the level again.</source>
        <translation>Le niveau a monté sans remplissage noté. Notez le remplissage, ou relisez le niveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands above its outlet, so it can run in by itself when the pump head fails. Set it below the outlet.</source>
        <translation>Le bidon est plus haut que sa sortie&#xa0;: il peut donc se vider de lui-même si la tête de la pompe lâche. Posez-le plus bas que la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends under water, so the tank can run back into the jug, or the jug into the tank. Hang it above the highest water line with an air gap.</source>
        <translation>La sortie finit sous l'eau&#xa0;: le bac peut donc couler dans le bidon, ou le bidon dans le bac. Accrochez-la au-dessus de la ligne d'eau la plus haute, avec une coupure d'air.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look whether the outlet ends above the highest water line and the jug stands below the outlet.</source>
        <translation>Voyez si la sortie finit au-dessus de la ligne d'eau la plus haute et si le bidon est plus bas que la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is empty, or too empty for a whole dose. Refill it and prime the line. Go on with the next dose; never make up what was missed.</source>
        <translation>Le bidon est vide, ou trop vide pour une dose entière. Remplissez-le et amorcez le tuyau. Continuez avec la prochaine dose&#xa0;; ne rattrapez jamais ce qui a manqué.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug is low: it lasts {days}. Mix the next batch.</source>
        <translation>Le bidon est bas&#xa0;: il dure {days}. Faites la préparation suivante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The pumps take {per_day} a day, so a full jug lasts less than two days. Make a stronger stock, as far as it dissolves.</source>
        <translation>Les pompes prennent {per_day} par jour&#xa0;: un bidon plein dure donc moins de deux jours. Faites une solution plus forte, autant qu'elle se dissout.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The outlet ends above the highest water line, with an air gap.</source>
        <translation>La sortie finit au-dessus de la ligne d'eau la plus haute, avec une coupure d'air.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The jug stands below the outlet.</source>
        <translation>Le bidon est plus bas que la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If the whole jug ran in, no value would leave its hard range.</source>
        <translation>Si tout le bidon se vidait, aucune valeur ne quitterait ses limites strictes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>With the tube lifted out of the pump, nothing runs on.</source>
        <translation>Le tube sorti de la pompe, rien ne continue à couler.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Alkalinity and calcium have outlets of their own, apart and in strong flow.</source>
        <translation>Alcalinité et calcium ont chacun leur sortie, séparées et dans un fort courant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The line is primed: liquid stands at the outlet.</source>
        <translation>Le tuyau est amorcé&#xa0;: du liquide est à la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>all is well</source>
        <translation>tout va bien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a worn pump head</source>
        <translation>une tête de pompe usée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>air in the line, or a blocked line</source>
        <translation>de l'air dans le tuyau, ou un tuyau bouché</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>crust, or a line that is partly blocked</source>
        <translation>une croûte, ou un tuyau en partie bouché</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>the jug runs in by itself (siphon)</source>
        <translation>le bidon se vide de lui-même (siphon)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a pump that is not calibrated</source>
        <translation>une pompe non étalonnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a batch of another strength than noted, or another net volume</source>
        <translation>une préparation d'une autre concentration que notée, ou un autre volume net</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>a level misread, or a refill that was not noted</source>
        <translation>un niveau mal lu, ou un remplissage non noté</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>The levels cannot tell the cause.</source>
        <translation>Les niveaux ne peuvent pas dire la cause.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Lift the outlet out of the water and set the jug below it. Nothing may run on.</source>
        <translation>Levez la sortie hors de l'eau et posez le bidon plus bas qu'elle. Rien ne doit continuer à couler.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Read the level again, at eye height, on level ground.</source>
        <translation>Relisez le niveau, à hauteur d'œil, sur un sol plan.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Ask whether somebody refilled the jug, or took something out.</source>
        <translation>Demandez si quelqu'un a rempli le bidon, ou en a retiré.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Watch one dose at the outlet: it comes at once, and stops at once.</source>
        <translation>Regardez une dose à la sortie&#xa0;: elle vient tout de suite, et s'arrête tout de suite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look along the line for air and kinks, then prime it.</source>
        <translation>Cherchez le long du tuyau de l'air et des plis, puis amorcez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Look at the outlet for crust, and clean or cut it. Wear goggles.</source>
        <translation>Cherchez une croûte à la sortie, et nettoyez-la ou coupez-la. Portez des lunettes étanches.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Compare the jug's label with what is noted: chemical, mass, volume, date.</source>
        <translation>Comparez l'étiquette du bidon avec ce qui est noté&#xa0;: produit, masse, volume, date.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Test the water again with fresh reagent, and check the net volume.</source>
        <translation>Testez de nouveau l'eau avec un réactif frais, et vérifiez le volume net.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Calibrate the pump: run it a known time into a cylinder, three times.</source>
        <translation>Étalonnez la pompe&#xa0;: faites-la tourner un temps connu dans une éprouvette, trois fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>If it still delivers too little, change the head's tubing and calibrate again.</source>
        <translation>Si elle débite encore trop peu, changez le tube de la tête et étalonnez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>within 5&#xa0;% of what was expected</source>
        <translation>moins de 5&#xa0;% d'écart avec ce qui était attendu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 5&#xa0;% off</source>
        <translation>plus de 5&#xa0;% d'écart</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>more than 10&#xa0;% off</source>
        <translation>plus de 10&#xa0;% d'écart</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>not certain: the levels are too coarse to tell 5&#xa0;%</source>
        <translation>pas certain&#xa0;: les niveaux sont trop grossiers pour voir 5&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Common practice: no jug holds more than twice what may be dosed in a day.</source>
        <translation>Pratique courante&#xa0;: aucun bidon ne tient plus de deux fois ce qui peut être dosé en un jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>Missed doses are never made up: go on with the next one, as large as ever.</source>
        <translation>Les doses manquées ne se rattrapent jamais&#xa0;: continuez avec la suivante, aussi grande que d'habitude.</translation>
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
        <translation>possible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jug_words.py"/>
        <source>unlikely</source>
        <extracomment>likely</extracomment>
        <translation>improbable</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is in it yet</source>
        <translation>rien n'est encore dedans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>level not known</source>
        <translation>niveau inconnu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{named}, batch {batch_id}</source>
        <extracomment>contents_words</extracomment>
        <translation>{named}, préparation {batch_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose} of {holds}</source>
        <extracomment>row</extracomment>
        <translation>{dose} sur {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refill before {out}</source>
        <extracomment>row</extracomment>
        <translation>à remplir avant le {out}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read it once</source>
        <extracomment>level_now</extracomment>
        <translation>lisez-le une fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>as {read} {at}</source>
        <extracomment>level_now</extracomment>
        <translation>selon {read} {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read</source>
        <extracomment>level_now</extracomment>
        <translation>la lecture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>filled</source>
        <extracomment>level_now</extracomment>
        <translation>le remplissage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>lu {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since it was read {read}</source>
        <extracomment>level_now</extracomment>
        <translation>calculé depuis la lecture {read}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoned since its batch of {since}</source>
        <extracomment>level_now</extracomment>
        <translation>calculé depuis sa préparation du {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>; far less is logged, so read it</source>
        <extracomment>level_now</extracomment>
        <translation>&#xa0;; bien moins est noté, lisez-le donc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>reckoning</source>
        <extracomment>_lasts</extracomment>
        <translation>en calcul</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>nothing is taken</source>
        <extracomment>_lasts</extracomment>
        <translation>rien n'est pris</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>more than ten years</source>
        <extracomment>_lasts, _long_time</extracomment>
        <translation>plus de dix ans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>empty</source>
        <extracomment>_lasts</extracomment>
        <translation>vide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>may be empty</source>
        <extracomment>_lasts</extracomment>
        <translation>peut être vide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>1&#xa0;day</source>
        <extracomment>_whole</extracomment>
        <translation>1&#xa0;jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{days}&#xa0;days</source>
        <extracomment>_whole</extracomment>
        <translation>{days}&#xa0;jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Empty</source>
        <extracomment>_figure, PreviewModel.data</extracomment>
        <translation>Vide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Empty?</source>
        <extracomment>_figure</extracomment>
        <translation>Vide&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>hours left</source>
        <extracomment>_figure</extracomment>
        <translation>heures restantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>day left</source>
        <extracomment>_figure</extracomment>
        <translation>jour restant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>days left</source>
        <extracomment>_figure</extracomment>
        <translation>jours restants</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nobody knows what is in this jug. Read its level.</source>
        <extracomment>_second</extracomment>
        <translation>Personne ne sait ce qu'il y a dans ce bidon. Lisez son niveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{dose}{holds} in the jug.</source>
        <extracomment>_second</extracomment>
        <translation>{dose}{holds} dans le bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> of {holds}</source>
        <extracomment>_second</extracomment>
        <translation> sur {holds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> Refill it before {out}.</source>
        <extracomment>_second</extracomment>
        <translation> Remplissez-le avant le {out}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>{each} {per_day} a day</source>
        <extracomment>_third</extracomment>
        <translation>{each} {per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Taken by {takers}.</source>
        <extracomment>_third</extracomment>
        <translation>Pris par {takers}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>Nothing is known to be taken from it.</source>
        <extracomment>_third</extracomment>
        <translation>On n'y connaît aucun prélèvement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>By what was dosed the jug is empty by now. Read its level. If it is, refill it and prime the line; go on with the next dose and never make up what was missed.</source>
        <extracomment>_notes</extracomment>
        <translation>D'après ce qui a été dosé, le bidon est vide maintenant. Lisez son niveau. S'il l'est, remplissez-le et amorcez le tuyau&#xa0;; continuez avec la prochaine dose et ne rattrapez jamais ce qui a manqué.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>The line was not primed after the refill of {at}. Run the pump until liquid stands at the outlet, then say so here. What did not arrive is not made up.</source>
        <extracomment>_notes</extracomment>
        <translation>Le tuyau n'a pas été amorcé après le remplissage du {at}. Faites tourner la pompe jusqu'à ce que du liquide soit à la sortie, puis dites-le ici. Ce qui n'est pas arrivé ne se rattrape pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is past the date it was to be used by. Mix a new one.</source>
        <extracomment>_notes, StocksSheet.recompute</extracomment>
        <translation>Cette préparation a passé sa date limite d'emploi. Faites-en une nouvelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source> from {before}</source>
        <extracomment>_level_row</extracomment>
        <translation> de {before}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>refilled{before} to {said}, line {primed}</source>
        <extracomment>_level_row</extracomment>
        <translation>rempli{before} à {said}, tuyau {primed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>primed</source>
        <extracomment>_level_row</extracomment>
        <translation>amorcé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <source>not primed</source>
        <extracomment>_level_row</extracomment>
        <translation>non amorcé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>today {clock}</source>
        <extracomment>_moment, weekday_time</extracomment>
        <translation>aujourd'hui {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>Fill in the net volume: without it doses cannot be counted.</source>
        <extracomment>learn</extracomment>
        <translation>Remplissez le volume net&#xa0;: sans lui les doses ne peuvent pas être comptées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>New water is taken to be like natural seawater.</source>
        <extracomment>learn</extracomment>
        <translation>L'eau neuve est supposée comme l'eau de mer naturelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source>From the log: {use_value} ({ends}), last reading {since_days} ago.</source>
        <extracomment>_offer</extracomment>
        <translation>D'après le journal&#xa0;: {use_value} ({ends}), dernier relevé il y a {since_days}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/learned.py"/>
        <source> to </source>
        <extracomment>_offer</extracomment>
        <translation> à </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A reading</source>
        <translation>Un relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A dose given</source>
        <translation>Une dose donnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A water exchange</source>
        <translation>Un changement d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note</source>
        <translation>Une note</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose the jug. It must hold a batch that can be reckoned.</source>
        <extracomment>take</extracomment>
        <translation>Choisissez le bidon. Il doit contenir une préparation avec laquelle on peut calculer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Choose what was measured.</source>
        <extracomment>_reading</extracomment>
        <translation>Choisissez ce qui a été mesuré.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>{value} is not a likely reading of {parameter}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_reading</extracomment>
        <translation>{value} n'est pas un relevé vraisemblable ({parameter}). Vraisemblables sont {low} à {high}. Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Write the note.</source>
        <extracomment>_note</extracomment>
        <translation>Écrivez la note.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>A note has {longest_note} characters at most.</source>
        <extracomment>_note</extracomment>
        <translation>Une note a {longest_note} caractères au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill this in.</source>
        <extracomment>_number</extracomment>
        <translation>À remplir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>Dose: {subject}</source>
        <extracomment>row</extracomment>
        <translation>Dose&#xa0;: {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <source>a jug that is gone</source>
        <extracomment>row</extracomment>
        <translation>un bidon qui n'existe plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/logbook.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <location filename="../glossary.toml"/>
        <source>Water exchange</source>
        <extracomment>row, water exchange</extracomment>
        <translation>Changement d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_id.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {parameter}</source>
        <extracomment>_own_name, names_of, _upkeep</extracomment>
        <translation>Pompe pour {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose more doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Choisissez plus de doses par jour. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Choose 24 doses a day. </source>
        <extracomment>smaller_doses, _smaller</extracomment>
        <translation>Choisissez 24 doses par jour. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{days} days</source>
        <extracomment>_long_time, _age</extracomment>
        <translation>{days} jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{typed} is not a likely reading of {parameter}</source>
        <extracomment>_implausible</extracomment>
        <translation>{typed} n'est pas un relevé vraisemblable ({parameter})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}: did you mean {meant} = {value}?</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}&#xa0;: vouliez-vous dire {meant} = {value}&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{head}. Likely are {low} to {high}. Test again.</source>
        <extracomment>_implausible</extracomment>
        <translation>{head}. Vraisemblables sont {low} à {high}. Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The reading is dated {measured_at}, which is still to come. Correct the time.</source>
        <translation>Le relevé porte la date du {measured_at}, qui est encore à venir. Corrigez l'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Reading is {age_days} days old; after {stale_days} days it is too old to correct from. Test again before raising {parameter}.</source>
        <translation>Le relevé a {age_days} jours&#xa0;; après {stale_days} jours il est trop ancien pour corriger. Testez de nouveau avant de relever {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No plan may aim for {target}. Choose a target from {low} to {high}.</source>
        <translation>Aucun plan ne peut viser {target}. Choisissez une valeur cible de {low} à {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already above {target}. Nothing that is dosed lowers it: stop dosing and wait while the animals use it, or exchange water.</source>
        <translation>{parameter} est déjà au-dessus de {target}. Rien de ce qui est dosé ne l'abaisse&#xa0;: arrêtez de doser et attendez que les animaux consomment, ou renouvelez l'eau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{parameter} is already at {target}. Nothing to raise; dose only what is used.</source>
        <translation>{parameter} est déjà à {target}. Rien à relever&#xa0;; ne dosez que ce qui est consommé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The fastest rise must be more than zero.</source>
        <translation>La hausse la plus rapide doit être supérieure à zéro.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is faster than animals stand. The most that can be planned is {hard}; recommended is {recommended}.</source>
        <translation>{fastest} est plus rapide que ce que supportent les animaux. Le maximum à planifier est {hard}&#xa0;; recommandé est {recommended}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{fastest} is above the recommended {recommended}. Write the reason, or slow it down.</source>
        <translation>{fastest} est au-dessus des {recommended} recommandés. Écrivez la raison, ou ralentissez.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>With {n} doses a day, each</source>
        <extracomment>for 1: With one dose a day, it</extracomment>
        <translation>
            <numerusform>Avec une dose par jour, elle</numerusform>
            <numerusform>Avec {n} doses par jour, chacune</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source> would have to raise by more than {jump} only to keep up. Choose more doses a day.</source>
        <translation> devrait relever de plus de {jump} rien que pour suivre. Choisissez plus de doses par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The pump can give {most} in 24 hours; the tank alone uses up {needs}. Use a stronger stock or a faster pump.</source>
        <translation>La pompe peut donner {most} en 24 heures&#xa0;; le bac seul consomme {needs}. Prenez une solution plus forte ou une pompe plus rapide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>This additive would raise {other} as well, far beyond its limit. Choose another additive.</source>
        <translation>Cet additif relèverait aussi {other}, bien au-delà de sa limite. Choisissez un autre additif.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>To make good the daily use alone, single doses would lift pH by more than {most} in an hour. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Pour compenser la seule consommation journalière, une dose ferait monter le pH de plus de {most} en une heure. {per_day}Le bicarbonate de sodium ne le fait pas monter tout de suite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>pH is {now} now and would come to {ph} at the target; this additive must not take it above {most}. </source>
        <translation>Le pH est à {now} et viendrait à {ph} à la valeur cible&#xa0;; cet additif ne doit pas le mener au-dessus de {most}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>{per_day}Use sodium bicarbonate.</source>
        <translation>{per_day}Prenez du bicarbonate de sodium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Use sodium bicarbonate, choose a nearer target, or dose at night and test pH then.</source>
        <translation>Prenez du bicarbonate de sodium, choisissez une valeur cible plus proche, ou dosez la nuit et testez alors le pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} at the target. Above {most} calcium carbonate falls out. </source>
        <translation>La saturation en aragonite est à {now} et viendrait à {saturation} à la valeur cible. Au-dessus de {most}, du carbonate de calcium précipite. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Choose a nearer target.</source>
        <translation>Choisissez une valeur cible plus proche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The tank uses up {needs} of this in 24 hours, but only {most} evaporate. Limewater alone cannot keep up: use a stronger additive besides.</source>
        <translation>Le bac en consomme {needs} en 24 heures, mais il ne s'évapore que {most}. L'eau de chaux seule ne suffit pas&#xa0;: prenez en plus un additif plus fort.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not known how much evaporates. Top-off must leave room for {in_day} in 24 hours, or the tank overflows and its salinity falls.</source>
        <translation>On ne sait pas combien s'évapore. L'eau d'appoint doit laisser la place à {in_day} en 24 heures, sinon le bac déborde et sa salinité baisse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>At this pace the correction takes {days}. Plans end after {most} days: choose a faster rise, a stronger stock or a nearer target.</source>
        <translation>À cette allure la correction prend {days}. Les plans finissent après {most} jours&#xa0;: choisissez une hausse plus rapide, une solution plus forte ou une valeur cible plus proche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>A dose of {single} rounded down to steps of {step} does not raise the value. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Une dose de {single}, arrondie vers le bas à des pas de {step}, ne relève pas la valeur. Choisissez moins de doses par jour, un pas plus fin ou une solution plus faible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The second reckoning does not agree with the plan, so no plan is given. Please keep this question and report it.</source>
        <translation>Le second calcul n'est pas d'accord avec le plan, donc aucun plan n'est donné. Gardez cette question et signalez-la, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Faster than the recommended {recommended}. Reason given: {reason}.</source>
        <translation>Plus rapide que les {recommended} recommandés. Raison donnée&#xa0;: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>It is not said when this was measured. Test again if it is older than {stale_days} days.</source>
        <translation>Il n'est pas dit quand ceci a été mesuré. Testez de nouveau si cela date de plus de {stale_days} jours.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The volume is not known, so its low end is used: {volume}.</source>
        <translation>Le volume n'est pas connu, donc sa borne basse est prise&#xa0;: {volume}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>For mg per kg a salinity of {salinity} and {degc} are assumed where not given.</source>
        <translation>Pour mg par kg, une salinité de {salinity} et {degc} sont supposées si elles ne sont pas données.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The target is above the range usually kept, which ends at {top}.</source>
        <translation>La valeur cible est au-dessus de ce que l'on tient d'ordinaire, qui finit à {top}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>One jug of {jug} is not enough: the correction takes {total}. Mix the next batch at the same strength.</source>
        <translation>Un bidon de {jug} ne suffit pas&#xa0;: la correction prend {total}. Faites la préparation suivante à la même concentration.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Also raises {other} by {per_day}.</source>
        <translation>Relève aussi {other} de {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Rounding the dose down to steps of {step} makes the correction {slower} times as long. Use fewer doses a day or a finer step.</source>
        <translation>L'arrondi de la dose vers le bas à des pas de {step} rend la correction {slower} fois plus longue. Prenez moins de doses par jour ou un pas plus fin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No pump gives {dose} at a time. Make a weaker stock, or choose fewer doses a day.</source>
        <translation>Aucune pompe ne donne {dose} en une fois. Faites une solution plus faible, ou choisissez moins de doses par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>The upkeep of {per_day} in 24 hours is too small for this pump in so many doses, so none is given. </source>
        <translation>L'entretien de {per_day} en 24 heures est trop petit pour cette pompe en autant de doses&#xa0;: aucun n'est donc donné. </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Give it afterwards in {n} doses a day or fewer.</source>
        <extracomment>for 1: Make a weaker stock for it.</extracomment>
        <translation>
            <numerusform>Faites pour lui une solution plus faible.</numerusform>
            <numerusform>Donnez-le ensuite en {n} doses par jour ou moins.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>No use per day is entered, so after the correction nothing is dosed. {parameter} falls by whatever the animals use.</source>
        <translation>Aucune consommation journalière n'est saisie&#xa0;: après la correction rien n'est donc dosé. {parameter} baisse de ce que les animaux consomment.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>If the whole jug ran in, {parameter} would reach {value}, more than the {most} no plan may aim for. Use a smaller jug, or fill it less.</source>
        <translation>Si tout le bidon se vidait, {parameter} atteindrait {value}, plus que les {most} qu'aucun plan ne peut viser. Prenez un bidon plus petit, ou remplissez-le moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <source>Each dose would be {single}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Chaque dose serait de {single}, sous la plus petite dose juste de la pompe, {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose {most_doses} doses a day or fewer, or a weaker stock.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>{head} Choisissez {most_doses} doses par jour ou moins, ou une solution plus faible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/plan_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Use a weaker stock or a finer pump.</source>
        <extracomment>_below_smallest, _smallest</extracomment>
        <translation>{head} Prenez une solution plus faible ou une pompe plus fine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_cards.py"/>
        <source>It was made for {before}.</source>
        <extracomment>other_flow</extracomment>
        <translation>Elle a été faite pour {before}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {hours} {flow}</source>
        <extracomment>_spoken</extracomment>
        <translation>à {hours} {flow}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>{n} calibrations</source>
        <extracomment>for 1: 1 calibration; _spoken</extracomment>
        <translation>
            <numerusform>1 étalonnage</numerusform>
            <numerusform>{n} étalonnages</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Expected today</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Attendu aujourd'hui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{limit} off</source>
        <extracomment>_told, _drift</extracomment>
        <translation>Écart de {limit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>, does not count</source>
        <extracomment>point_words</extracomment>
        <translation>, ne compte pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>at {at}: {flow}, from {low} to {high}{does_not}</source>
        <extracomment>point_words</extracomment>
        <translation>à {at}&#xa0;: {flow}, de {low} à {high}{does_not}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>already</source>
        <extracomment>until</extracomment>
        <translation>déjà</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>in {hours}</source>
        <extracomment>until</extracomment>
        <translation>dans {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_drift.py"/>
        <source>about {hours}, at {per_day} a day</source>
        <extracomment>hours_hint</extracomment>
        <translation>environ {hours}, à {per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it gives about {expected}, {off} {more_or_less} than it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>D'après ses heures elle donne environ {expected}, {off} {more_or_less} que son réglage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Do not dose on with the flow it is set to: calibrate it</source>
        <extracomment>_expected</extracomment>
        <translation>Ne continuez pas à doser avec le débit réglé&#xa0;: étalonnez-la</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Calibrate it</source>
        <extracomment>_expected, _old</extracomment>
        <translation>Étalonnez-la</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours it is no longer near the flow it is set to.</source>
        <extracomment>_expected</extracomment>
        <translation>D'après ses heures de marche elle n'est plus proche du débit réglé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its hours it will be {limit} off on {at}.</source>
        <extracomment>_expected</extracomment>
        <translation>D'après ses heures elle aura un écart de {limit} le {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>By its running hours its flow will be off.</source>
        <extracomment>_expected</extracomment>
        <translation>D'après ses heures de marche son débit sera faux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its calibration of {on} is {span} old.</source>
        <extracomment>_old</extracomment>
        <translation>Son étalonnage du {on} a {span}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Its last calibration was on {on}.</source>
        <extracomment>_old</extracomment>
        <translation>Son dernier étalonnage était le {on}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>about </source>
        <extracomment>_worn, _drift, _head</extracomment>
        <translation>environ </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>It has run {amount}{hours} of the {life} that one lasts.</source>
        <extracomment>_worn</extracomment>
        <translation>Elle a tourné {amount}{hours} sur les {life} que dure une tête.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>The head is near the end of its running hours.</source>
        <extracomment>_worn</extracomment>
        <translation>La tête est près de la fin de ses heures de marche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Change the head, then calibrate it</source>
        <extracomment>_worn</extracomment>
        <translation>Changer la tête, puis étalonner la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_duties.py"/>
        <source>Have a new head ready</source>
        <extracomment>_worn</extracomment>
        <translation>Tenir prête une tête neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source> in {place}</source>
        <extracomment>sharing</extracomment>
        <translation> dans {place}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sharing.py"/>
        <source>{pump} is chosen for {where}. One head draws from one jug into one water: choose another pump, or another head, for one of them.</source>
        <extracomment>sharing</extracomment>
        <translation>{pump} est choisie pour {where}. Une tête puise dans un seul bidon pour une seule eau&#xa0;: choisissez une autre pompe, ou une autre tête, pour l'un des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>Fill in {pump_words}.</source>
        <extracomment>_message</extracomment>
        <translation>Remplissez&#xa0;: {pump_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>at {hours}</source>
        <extracomment>row</extracomment>
        <translation>à {hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>no time yet</source>
        <extracomment>row</extracomment>
        <translation>pas encore d'heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>not complete</source>
        <extracomment>row, batch_row</extracomment>
        <translation>à compléter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>good</source>
        <extracomment>row</extracomment>
        <translation>bon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>repeat</source>
        <extracomment>row</extracomment>
        <translation>à refaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_sheet.py"/>
        <source>flow used</source>
        <extracomment>row</extracomment>
        <translation>débit utilisé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>scatter of the runs</source>
        <translation>dispersion des essais</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>tolerance of the instrument</source>
        <translation>tolérance de l'instrument</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>timing</source>
        <translation>chronométrage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>temperature and air</source>
        <translation>température et air</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>good enough to dose by</source>
        <extracomment>answer</extracomment>
        <translation>assez bon pour doser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>repeat the calibration</source>
        <extracomment>answer</extracomment>
        <translation>refaites l'étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Within {half}: from {mean} to {mean_2}. {result}.</source>
        <extracomment>answer</extracomment>
        <translation>À {half} près&#xa0;: de {mean} à {mean_2}. {result}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{doses} doses of {seconds}</source>
        <extracomment>_runs</extracomment>
        <translation>{doses} doses de {seconds}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} of {of}</source>
        <extracomment>_runs</extracomment>
        <translation>{count} sur {of}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Scatter of the runs</source>
        <extracomment>_bars</extracomment>
        <translation>Dispersion des essais</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Off the flow in use</source>
        <extracomment>_bars</extracomment>
        <translation>Écart au débit en service</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{hours} of {life}</source>
        <extracomment>_bars</extracomment>
        <translation>{hours} sur {life}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Head</source>
        <extracomment>_bars</extracomment>
        <translation>Tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{value} of {most}</source>
        <extracomment>_bar</extracomment>
        <translation>{value} sur {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>, not counted</source>
        <extracomment>_working</extracomment>
        <translation>, non compté</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Run {number}</source>
        <extracomment>_working</extracomment>
        <translation>Essai {number}</translation>
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
        <translation>À quel point on le connaît</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>share of {sources}</source>
        <extracomment>_working</extracomment>
        <translation>part de {sources}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>To know it to {wanted}</source>
        <extracomment>_run</extracomment>
        <translation>Pour le connaître à {wanted}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>each run, with this {found}, three times</source>
        <extracomment>_run</extracomment>
        <translation>chaque essai, avec cet instrument ({found}), trois fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>with this {found}</source>
        <extracomment>_run</extracomment>
        <translation>avec cet instrument ({found})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>take a finer one</source>
        <extracomment>_run</extracomment>
        <translation>prenez plus fin</translation>
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
        <translation>Une dose en service</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>At the smallest dose</source>
        <extracomment>_doses</extracomment>
        <translation>À la plus petite dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>let the pump give so many into one reading</source>
        <extracomment>_doses</extracomment>
        <translation>laissez la pompe en donner autant pour une seule lecture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{count} doses</source>
        <extracomment>_doses</extracomment>
        <translation>{count} doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>after a refill run it so long, and see the liquid at its end</source>
        <extracomment>_line</extracomment>
        <translation>après un remplissage, faites tourner autant de temps, et voyez le liquide au bout</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift</source>
        <extracomment>_drift</extracomment>
        <translation>Dérive</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at {amount}{hours}</source>
        <extracomment>_drift</extracomment>
        <translation>à {amount}{hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Drift in {per_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>Dérive en {per_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>give or take {drift_half_width}</source>
        <extracomment>_drift</extracomment>
        <translation>à {drift_half_width} près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>at the earliest {earliest_hours}</source>
        <extracomment>_drift</extracomment>
        <translation>au plus tôt {earliest_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{amount}{hours} of {life} run</source>
        <extracomment>_head</extracomment>
        <translation>{amount}{hours} sur {life} tournées</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>used up</source>
        <extracomment>_head, _change, _settles</extracomment>
        <translation>épuisé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>{left} left</source>
        <extracomment>_head</extracomment>
        <translation>{left} restantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The head</source>
        <extracomment>_head</extracomment>
        <translation>La tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>The outlet ends {height} above the highest water line.</source>
        <extracomment>installation</extracomment>
        <translation>La sortie finit à {height} au-dessus de la ligne d'eau la plus haute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>A brushed motor slows with age as well: calibrate more often.</source>
        <extracomment>motor</extracomment>
        <translation>Un moteur à balais ralentit aussi avec l'âge&#xa0;: étalonnez plus souvent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into a jar on the scale</source>
        <extracomment>guide</extracomment>
        <translation>dans un bocal sur la balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>into the cylinder</source>
        <extracomment>guide</extracomment>
        <translation>dans l'éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Weigh each</source>
        <extracomment>guide</extracomment>
        <translation>Pesez chaque fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Read each at eye height</source>
        <extracomment>guide</extracomment>
        <translation>Lisez chaque fois à hauteur d'œil</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run {lasts}</source>
        <extracomment>guide</extracomment>
        <translation>Faites tourner {lasts}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Let it run the same time</source>
        <extracomment>guide</extracomment>
        <translation>Faites tourner le même temps</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>Prime the line. {run} {into}, three times. {read}.</source>
        <extracomment>guide</extracomment>
        <translation>Amorcez le tuyau. {run} {into}, trois fois. {read}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_view.py"/>
        <source>In {lasts} about {dose} come out, enough to know the flow to {wanted}.</source>
        <extracomment>proposal</extracomment>
        <translation>En {lasts} il sort environ {dose}, assez pour connaître le débit à {wanted}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Residual-current protection (RCD of 30&#xa0;mA, or GFCI) on every circuit near the tank.</source>
        <translation>Protection différentielle (30&#xa0;mA) sur chaque circuit près du bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A drip loop in every cable, nothing electrical where it can be splashed.</source>
        <translation>Une boucle d'égouttage à chaque câble, rien d'électrique où l'eau peut gicler.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Unplug before reaching in.</source>
        <translation>Débranchez avant d'y mettre la main.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Stepper motor</source>
        <translation>Moteur pas à pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>Brushed motor</source>
        <translation>Moteur à balais</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A cylinder</source>
        <translation>Une éprouvette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A scale</source>
        <translation>Une balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>A stop watch, by hand</source>
        <translation>Un chronomètre, à la main</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>The pump's own clock</source>
        <translation>L'horloge de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the motor</source>
        <translation>le moteur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the date the head was fitted</source>
        <translation>la date de montage de la tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours of the head</source>
        <translation>les heures de marche de la tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the hours that a head lasts</source>
        <translation>les heures que dure une tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how high the outlet ends</source>
        <translation>la hauteur de la sortie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the tubing is</source>
        <translation>le genre de tube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>when the pump was calibrated</source>
        <translation>quand la pompe a été étalonnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the running hours</source>
        <translation>les heures de marche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were measured with</source>
        <translation>avec quoi les essais ont été mesurés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the doses in a run</source>
        <translation>les doses par essai</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what the runs were timed with</source>
        <translation>avec quoi les essais ont été chronométrés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>who calibrated the pump</source>
        <translation>qui a étalonné la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>the flow that is used</source>
        <translation>le débit utilisé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>how long run {run} lasted</source>
        <translation>combien a duré l'essai {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/pump_words.py"/>
        <source>what run {run} gave</source>
        <translation>ce qu'a donné l'essai {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>if nothing is dosed</source>
        <extracomment>chart</extracomment>
        <translation>sans aucune dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/ramp.py"/>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>fastest allowed</source>
        <extracomment>chart</extracomment>
        <translation>plus rapide permis</translation>
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
        <translation>aragonite {saturation}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Put {grams} of {tall_man} into {litres} of water, stir, and let it settle until it is clear.</source>
        <extracomment>_recipe</extracomment>
        <translation>Mettez {grams} de {tall_man} dans {litres} d'eau, remuez, et laissez déposer jusqu'à ce que ce soit clair.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve them in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Pesez {weighed}. Dissolvez-les dans une partie de l'eau, puis complétez à {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>Weigh out {weighed}. Dissolve it in part of the water, then fill up to {litres}.</source>
        <extracomment>_recipe</extracomment>
        <translation>Pesez {weighed}. Dissolvez-le dans une partie de l'eau, puis complétez à {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>At {at} a litre of solution holds {most} at most.</source>
        <extracomment>_recipe</extracomment>
        <translation>À {at}, un litre de solution contient {most} au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source> of {purity}</source>
        <extracomment>_portion</extracomment>
        <translation> à {purity}</translation>
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
        <translation>Porte {per_litre}&#xa0;: {item}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recipe_lines.py"/>
        <source>{dose} raises {water} by {amount}: {parameter}.</source>
        <extracomment>_strength</extracomment>
        <translation>{dose} relève {water} de {amount}&#xa0;: {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>First, in this order:</source>
        <extracomment>_lines</extracomment>
        <translation>D'abord, dans cet ordre&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>reckoned from what ran in</source>
        <extracomment>_lines, _view</extracomment>
        <translation>calculé d'après ce qui a coulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{name}: {now} ({how}), to come to {target}.</source>
        <extracomment>_lines</extracomment>
        <translation>{name}&#xa0;: {now} ({how}), doit venir à {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Held: {held}.</source>
        <extracomment>_lines</extracomment>
        <translation>Suspendu&#xa0;: {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a new test</source>
        <extracomment>_choice</extracomment>
        <translation>après un nouveau test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {course}.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Cela prend {course}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>It takes {litres} in {course}. {exchanged}</source>
        <extracomment>choice_lines</extracomment>
        <translation>Cela prend {litres} en {course}. {exchanged}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Still above the target then: go on with no more than {slow} an hour, and test every day.</source>
        <extracomment>choice_lines</extracomment>
        <translation>Encore au-dessus de la valeur cible alors&#xa0;: continuez avec au plus {slow} par heure, et testez chaque jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>after a day, then every {stale_days}</source>
        <extracomment>tests_line</extracomment>
        <translation>après un jour, puis tous les {stale_days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>every day before more water is exchanged</source>
        <extracomment>tests_line</extracomment>
        <translation>chaque jour avant de renouveler plus d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Test now, {often}, and after {days}. Stop as soon as a test shows the target.</source>
        <extracomment>tests_line</extracomment>
        <translation>Testez maintenant, {often}, et après {days}. Arrêtez dès qu'un test montre la valeur cible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{middle}, perhaps {low} to {high}</source>
        <extracomment>now_words</extracomment>
        <translation>{middle}, peut-être {low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{days}, perhaps {low} to {high}</source>
        <extracomment>takes</extracomment>
        <translation>{days}, peut-être {low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>No more than {most_l_per_day} is exchanged in a day.</source>
        <extracomment>_pace</extracomment>
        <translation>Pas plus de {most_l_per_day} n'est renouvelé en un jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>The pace at first is set by {name}, which may change by {hard} at most.</source>
        <extracomment>_pace</extracomment>
        <translation>L'allure au début est fixée par {name}, qui peut changer de {hard} au plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Day {number}: {stage}, to {reached}.</source>
        <extracomment>_stages</extracomment>
        <translation>Jour {number}&#xa0;: {stage}, jusqu'à {reached}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>After day {days_shown} test and ask again. At this pace the last day is day {stages}.</source>
        <extracomment>_stages</extracomment>
        <translation>Après le jour {days_shown}, testez et demandez de nouveau. À cette allure le dernier jour est le jour {stages}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source> for {days}</source>
        <extracomment>_stage</extracomment>
        <translation> pendant {days}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{l_per_day} of water{how_long}, that is {per_hour} an hour</source>
        <extracomment>_stage</extracomment>
        <translation>{l_per_day} d'eau{how_long}, soit {per_hour} par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or one change of {sizes} at once.</source>
        <extracomment>_changes</extracomment>
        <translation>Ou un seul changement de {sizes} d'un coup.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Or {count} single changes, 12&#xa0;h apart, {litres} in all: {sizes}.</source>
        <extracomment>_changes</extracomment>
        <translation>Ou {count} changements, à 12&#xa0;h d'écart, {litres} en tout&#xa0;: {sizes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>{head} Then test and ask again.</source>
        <extracomment>_changes</extracomment>
        <translation>{head} Puis testez et demandez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_lines.py"/>
        <source>Meanwhile {other} goes from {first} to {last}.</source>
        <extracomment>_along</extracomment>
        <translation>Entre-temps {other} va de {first} à {last}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>The last test of {odd} is not likely for a tank, so it is not followed. Test it again.</source>
        <extracomment>_view</extracomment>
        <translation>Le dernier test de {odd} n'est pas vraisemblable pour un bac&#xa0;: il n'est donc pas suivi. Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{name} {now} ({how}), to come to {target}.</source>
        <extracomment>_view</extracomment>
        <translation>{name} {now} ({how}), doit venir à {target}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_sheet.py"/>
        <source>{held} Held: {held_2}.</source>
        <extracomment>_view</extracomment>
        <translation>{held} Suspendu&#xa0;: {held_2}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{canonical} per day</source>
        <extracomment>per_day</extracomment>
        <translation>{canonical} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Still to be filled in: {path}.</source>
        <extracomment>missing</extracomment>
        <translation>Reste à remplir&#xa0;: {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Alkalinity is so high that calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>L'alcalinité est si haute que du carbonate de calcium va sans doute précipiter et emporter du calcium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Saturation with aragonite is about {saturation}; above {most} calcium carbonate is likely to fall out and take calcium along.</source>
        <extracomment>_likely</extracomment>
        <translation>La saturation en aragonite est d'environ {saturation}&#xa0;; au-dessus de {most}, du carbonate de calcium va sans doute précipiter et emporter du calcium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <extracomment>_likely</extracomment>
        <translation>Aucun chiffre ici ne tient plus&#xa0;: testez alcalinité, calcium et pH avant toute chose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A target of {value} lies outside what a plan may aim for: {low} to {high}.</source>
        <translation>Une valeur cible de {value} est hors de ce qu'un plan peut viser&#xa0;: {low} à {high}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} at {value} is not above its target of {target}. There is nothing to bring down.</source>
        <translation>{parameter} à {value} n'est pas au-dessus de sa valeur cible de {target}. Il n'y a rien à faire redescendre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>A value of {value} is not likely for the {parameter} of {new}. Likely are {low} to {high}. Look at the unit, or test again.</source>
        <translation>Une valeur de {value} n'est pas vraisemblable ({parameter}&#xa0;: {new}). Vraisemblables sont {low} à {high}. Voyez l'unité, ou testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a tank before anything ran in</source>
        <translation>un bac avant que rien n'y ait coulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {value} of {parameter}, outside the hard limits of {low} to {high}. Use other new water, or put it right first.</source>
        <translation>L'eau neuve a {value} ({parameter}), hors des limites strictes de {low} à {high}. Prenez une autre eau neuve, ou mettez-la d'abord en ordre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The net volume may be anything from {low} to {high}. Every limit here holds at both ends.</source>
        <translation>Le volume net peut être n'importe où de {low} à {high}. Chaque limite ici tient aux deux bornes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The pH is not followed along an exchange. Test it with every other test, and slow down if it moves by more than 0.2 in an hour.</source>
        <translation>Le pH n'est pas suivi le long d'un renouvellement. Testez-le avec chaque autre test, et ralentissez s'il bouge de plus de 0,2 en une heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>This stock raises nothing that is reckoned here. Stop the pump, test the water, and ask somebody who knows the chemical.</source>
        <translation>Cette solution ne relève rien de ce qui est calculé ici. Arrêtez la pompe, testez l'eau, et demandez à quelqu'un qui connaît le produit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The second reckoning differs ({what}), so nothing is proposed. Please report this question.</source>
        <translation>Le second calcul diffère ({what}), donc rien n'est proposé. Signalez cette question, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>How much {parameter} the animals use in a day is not known, so nobody can say how long it takes them to draw it down.</source>
        <translation>On ne sait pas combien les animaux consomment en un jour ({parameter})&#xa0;: personne ne peut donc dire combien de temps il leur faut pour faire redescendre la valeur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>With its doses held, {parameter} would fall by {use}, more than the {most} it may change.</source>
        <translation>Ses doses suspendues, {parameter} baisserait de {use}, plus que les {most} de changement permis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the {parameter} of the new water first.</source>
        <translation>Testez d'abord {parameter} dans l'eau neuve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, which is not below the target of {target}. Exchanging cannot bring it there.</source>
        <translation>L'eau neuve a {new}, ce qui n'est pas sous la valeur cible de {target}. Renouveler ne peut pas y mener.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would fall to {value}, below its hard limit of {bound}.</source>
        <translation>{parameter} tomberait à {value}, sous sa limite stricte de {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} would rise to {value}, above its hard limit of {bound}.</source>
        <translation>{parameter} monterait à {value}, au-dessus de sa limite stricte de {bound}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>It would take {parameter} more than {days}&#xa0;days to come down.</source>
        <translation>Il faudrait plus de {days}&#xa0;jours pour faire redescendre {parameter}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Seen: {and_}. Calcium carbonate is falling out. No figure here holds any longer: test alkalinity, calcium and pH before anything else.</source>
        <translation>Vu&#xa0;: {and_}. Du carbonate de calcium précipite. Aucun chiffre ici ne tient plus&#xa0;: testez alcalinité, calcium et pH avant toute chose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>cloudy water</source>
        <translation>eau trouble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>a white film</source>
        <translation>un film blanc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Nothing can be proposed that brings {parameter} down. Keep its doses held, test every day, and ask for advice.</source>
        <translation>Rien ne peut être proposé qui fasse redescendre {parameter}. Gardez ses doses suspendues, testez chaque jour, et demandez conseil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} was found at {value}, less than the {expected} expected from what ran in. Less ran in, or some of it has fallen out already.</source>
        <translation>{parameter} a été trouvé à {value}, moins que les {expected} attendus d'après ce qui a coulé. Il a coulé moins, ou une partie a déjà précipité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>{parameter} is too high as well: {value}, more than the {most} no plan may aim for.</source>
        <translation>Cette valeur est trop haute aussi ({parameter})&#xa0;: {value}, plus que les {most} qu'aucun plan ne peut viser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The last test of {names} is not given; the top of the range usually kept is assumed. Test it.</source>
        <translation>Le dernier test n'est pas donné ({names})&#xa0;; le haut de ce que l'on tient d'ordinaire est supposé. Testez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The doses of {names} are held too, but its use is not known: it falls by an unknown amount. Test it as often.</source>
        <translation>Les doses sont suspendues aussi pour {names}, mais la consommation n'est pas connue&#xa0;: la baisse est donc inconnue. Testez à la même fréquence.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Of {names} the value in the tank or in the new water is not known, so its change is neither reckoned nor limited.</source>
        <translation>La valeur dans le bac ou dans l'eau neuve n'est pas connue ({names})&#xa0;: son changement n'est donc ni calculé ni limité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Bring the new water to the tank's temperature before it goes in.</source>
        <translation>Amenez l'eau neuve à la température du bac avant qu'elle n'entre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>The new water has {new}, the tank {tank}. Bring it to the tank's temperature first.</source>
        <translation>L'eau neuve a {new}, le bac {tank}. Amenez-la d'abord à la température du bac.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Switch the dosing pump off, and pull its plug with dry hands.</source>
        <translation>Arrêtez la pompe doseuse, et débranchez-la avec des mains sèches.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Take the line out of the jug and lift its outlet out of the water. Nothing may run on.</source>
        <translation>Sortez le tuyau du bidon et levez sa sortie hors de l'eau. Rien ne doit continuer à couler.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it. A second chemical adds a second shock.</source>
        <translation>Ne dosez rien contre. Un second produit ajoute un second choc.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid, whatever pH shows.</source>
        <translation>N'ajoutez pas d'acide, quoi que montre le pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test alkalinity, calcium, magnesium, pH and salinity now, in water taken far from the outlet. Note the time.</source>
        <translation>Testez maintenant alcalinité, calcium, magnésium, pH et salinité, dans de l'eau prise loin de la sortie. Notez l'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call whoever is in charge of the system, and tell what ran in, how much and when.</source>
        <translation>Appelez la personne responsable du système, et dites ce qui a coulé, combien et quand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off. Pull its plug.</source>
        <translation>Arrêtez la pompe. Débranchez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out of the jug.</source>
        <translation>Tuyau hors du bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Dose nothing against it.</source>
        <translation>Ne dosez rien contre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Add no acid.</source>
        <translation>N'ajoutez pas d'acide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test the water now.</source>
        <translation>Testez l'eau maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Pump off</source>
        <translation>Pompe arrêtée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Line out</source>
        <translation>Tuyau sorti</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No doses</source>
        <translation>Pas de doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>No acid</source>
        <translation>Pas d'acide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Test water</source>
        <translation>Tester l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Call keeper</source>
        <translation>Appeler l'éleveur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>only after a new test</source>
        <translation>seulement après un nouveau test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>not proposed</source>
        <translation>non proposé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and wait</source>
        <translation>Suspendre les doses et attendre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Exchange water, not counting on any use</source>
        <translation>Renouveler l'eau, sans compter de consommation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>Hold the doses and exchange water, counting on the use</source>
        <translation>Suspendre les doses et renouveler l'eau, en comptant la consommation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>In every choice the doses of what is too high stay held, and no chemical is given against it.</source>
        <translation>Dans chaque choix, les doses de ce qui est trop haut restent suspendues, et aucun produit n'est donné contre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>New water goes in as fast as old water goes out, far from the animals.</source>
        <translation>L'eau neuve entre aussi vite que l'eau usée sort, loin des animaux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the most that is exchanged in a day</source>
        <translation>le plus qui est renouvelé en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether the water is cloudy</source>
        <translation>si l'eau est trouble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether there is a white film</source>
        <translation>s'il y a un film blanc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>the way that was chosen</source>
        <translation>la voie choisie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/recovery_words.py"/>
        <source>whether {name} is held</source>
        <translation>si cette valeur est suspendue&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>This is a reminder, not an order to dose. Missed doses are never made up. Look at the Rounds sheet first: it knows what came since.</source>
        <translation>Ceci est un rappel, pas un ordre de doser. Les doses manquées ne se rattrapent jamais. Regardez d'abord la feuille Tournée&#xa0;: elle sait ce qui est venu depuis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>No reading is in the log yet.</source>
        <extracomment>_tests, _by_reading</extracomment>
        <translation>Il n'y a pas encore de relevé dans le journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>The last reading holds until {at}.</source>
        <extracomment>_tests</extracomment>
        <translation>Le dernier relevé vaut jusqu'au {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} asks for it by {retest_at}.</source>
        <extracomment>_tests</extracomment>
        <translation>Le plan {plan_id} le demande avant le {retest_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{systems}: test {name}</source>
        <extracomment>_tests</extracomment>
        <translation>{systems}&#xa0;: tester {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>As far as is known it is empty on {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Pour autant qu'on sache, il est vide le {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Its batch is to be used by {day}.</source>
        <extracomment>_jugs</extracomment>
        <translation>Sa préparation est à utiliser au plus tard le {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{jug}: look at the jug, mix a new batch</source>
        <extracomment>_jugs</extracomment>
        <translation>{jug}&#xa0;: regarder le bidon, faire une nouvelle préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Card {plan_id} must not be followed. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>La fiche {plan_id} ne doit pas être suivie. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: card {plan_id} is void</source>
        <extracomment>_cards</extracomment>
        <translation>{place}&#xa0;: la fiche {plan_id} est annulée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: replace card {plan_id}</source>
        <extracomment>_cards</extracomment>
        <translation>{place}&#xa0;: remplacer la fiche {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>It is valid until {valid_until}. {safety}</source>
        <extracomment>_cards</extracomment>
        <translation>Elle est valable jusqu'au {valid_until}. {safety}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>{place}: end the plan for {parameter}</source>
        <extracomment>_plans</extracomment>
        <translation>{place}&#xa0;: terminer le plan pour {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/reminders.py"/>
        <source>Plan {plan_id} ends on {at}.</source>
        <extracomment>_plans</extracomment>
        <translation>Le plan {plan_id} se termine le {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be written: the file or its folder is read-only.</source>
        <translation>Le journal ne peut pas être écrit&#xa0;: le fichier ou son dossier est en lecture seule.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is busy in another window or program. It is tried again with the next edit.</source>
        <translation>Le journal est occupé dans une autre fenêtre ou un autre programme. Un nouvel essai est fait à la prochaine modification.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk does not answer. What you type is kept here and saved when it does.</source>
        <translation>Le disque ne répond pas. Ce que vous tapez est gardé ici et enregistré quand il répond.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The disk is full. What you type is kept here; make room, then go on.</source>
        <translation>Le disque est plein. Ce que vous tapez est gardé ici&#xa0;; faites de la place, puis continuez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log file is damaged. Nothing was changed in it; </source>
        <translation>Le fichier du journal est abîmé. Rien n'y a été changé&#xa0;; </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>its newest backup is {backup}.</source>
        <translation>sa dernière copie est {backup}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>no backup was found beside it.</source>
        <translation>aucune copie n'a été trouvée à côté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log is no longer at its place, {file}. What you type is kept here; put it back there, then go on.</source>
        <translation>Le journal n'est plus à sa place, {file}. Ce que vous tapez est gardé ici&#xa0;; remettez-le à sa place, puis continuez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something in the log is damaged and cannot be read. The rest is used; the list of copies may hold it whole.</source>
        <translation>Quelque chose dans le journal est abîmé et illisible. Le reste est utilisé&#xa0;; la liste des copies peut l'avoir en entier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used. What you type is kept here; try again.</source>
        <translation>Le journal n'a pas pu être utilisé. Ce que vous tapez est gardé ici&#xa0;; réessayez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater. Nothing was changed in it.</source>
        <translation>Ce fichier n'est pas un journal d'Evenwater. Rien n'y a été changé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log was made by a newer Evenwater. Update the program to open it.</source>
        <translation>Le journal a été fait par un Evenwater plus récent. Mettez le programme à jour pour l'ouvrir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log cannot be opened at that place.</source>
        <translation>Le journal ne peut pas être ouvert à cet endroit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be brought up to date. Its backup from before is unchanged.</source>
        <translation>Le journal n'a pas pu être mis à jour. Sa copie d'avant est inchangée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log already holds something, so it was not filled.</source>
        <translation>Le journal contient déjà quelque chose&#xa0;: il n'a donc pas été rempli.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this in the meantime.</source>
        <translation>Une autre fenêtre l'a retiré entre-temps.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window added this in the meantime.</source>
        <translation>Une autre fenêtre l'a ajouté entre-temps.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window removed this entry in the meantime.</source>
        <translation>Une autre fenêtre a retiré cette entrée entre-temps.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This entry is in the log already, and says something else.</source>
        <translation>Cette entrée est déjà dans le journal, et dit autre chose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Another window changed this entry in the meantime. Look at it again.</source>
        <translation>Une autre fenêtre a changé cette entrée entre-temps. Regardez-la de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That plan is not in the log.</source>
        <translation>Ce plan n'est pas dans le journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card with this plan id exists already.</source>
        <translation>Une fiche avec ce code de plan existe déjà.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is no longer in its folder.</source>
        <translation>Cette copie n'est plus dans son dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That file is not a log of Evenwater.</source>
        <translation>Ce fichier n'est pas un journal d'Evenwater.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy was made by a newer Evenwater. Update the program to restore it.</source>
        <translation>Cette copie a été faite par un Evenwater plus récent. Mettez le programme à jour pour la restaurer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That copy is damaged and cannot be restored. Choose another one.</source>
        <translation>Cette copie est abîmée et ne peut pas être restaurée. Choisissez-en une autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log and its copies lie there already. Choose another folder.</source>
        <translation>Le journal et ses copies s'y trouvent déjà. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>There is no room for the copy. Make room, or choose another folder.</source>
        <translation>Il n'y a pas de place pour la copie. Faites de la place, ou choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The copy could not be written there. Choose another folder.</source>
        <translation>La copie n'a pas pu y être écrite. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>This log is not on a disk, so it has no copies.</source>
        <translation>Ce journal n'est pas sur un disque&#xa0;: il n'a donc pas de copies.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>Something that was typed is not saved yet, and would be lost. Let the log be saved first.</source>
        <translation>Quelque chose de tapé n'est pas encore enregistré et serait perdu. Laissez d'abord le journal s'enregistrer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>That card is not in the log.</source>
        <translation>Cette fiche n'est pas dans le journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A card that is void cannot be in use again. Print a new one.</source>
        <translation>Une fiche annulée ne peut pas resservir. Imprimez-en une nouvelle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be painted on that device.</source>
        <translation>La fiche n'a pas pu être dessinée sur cet appareil.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>A word on the card is wider than this paper. Choose a larger paper.</source>
        <translation>Un mot de la fiche est plus large que ce papier. Choisissez un papier plus grand.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card could not be written there. Choose another folder.</source>
        <translation>La fiche n'a pas pu y être écrite. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The card's typeface is missing. Install the program again.</source>
        <translation>La police de la fiche manque. Installez de nouveau le programme.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The printer put {got} in place of {wanted}. Choose the right paper.</source>
        <translation>L'imprimante a mis {got} à la place de {wanted}. Choisissez le bon papier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>system</source>
        <translation>système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>jug</source>
        <translation>bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>batch</source>
        <translation>préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>pump</source>
        <translation>pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>calibration</source>
        <translation>étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>level</source>
        <translation>niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>date of return</source>
        <translation>date de retour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>food</source>
        <translation>nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>exchange</source>
        <translation>renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>recovery</source>
        <translation>rétablissement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>logging {kind}</source>
        <translation>note&#xa0;: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>change of {kind}</source>
        <extracomment>step_words</extracomment>
        <translation>changement&#xa0;: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing {kind}</source>
        <translation>retrait&#xa0;: {kind}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>import of readings</source>
        <translation>importation de relevés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>starting the plan for {subject}</source>
        <translation>début du plan pour {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>ending the plan for {subject}</source>
        <translation>fin du plan pour {subject}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a reading</source>
        <translation>un relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a dose</source>
        <translation>une dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a water exchange</source>
        <translation>un changement d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a note</source>
        <translation>une note</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a calibration</source>
        <translation>un étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>a batch</source>
        <translation>une préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the name</source>
        <translation>le nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug</source>
        <translation>le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>what is in the jug</source>
        <translation>le contenu du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>how the strength is said</source>
        <translation>la façon de dire la concentration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the jug to match</source>
        <translation>le bidon auquel accorder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>who mixed it</source>
        <translation>qui l'a préparé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date to use it by</source>
        <translation>la date limite d'emploi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the date of mixing</source>
        <translation>la date de préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours begin</source>
        <translation>le début des heures de calme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>when the quiet hours end</source>
        <translation>la fin des heures de calme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the time that opposing doses stay apart</source>
        <translation>l'écart des doses opposées</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>one pump at a time</source>
        <translation>une pompe à la fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the doses a day</source>
        <translation>les doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the fewest doses a day</source>
        <translation>le moins de doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the most doses a day</source>
        <translation>le plus de doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>the hour of the first dose</source>
        <translation>l'heure de la première dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>The log could not be used ({code}).</source>
        <extracomment>sentence</extracomment>
        <translation>Le journal n'a pas pu être utilisé ({code}).</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>{n}&#xa0;edits</source>
        <extracomment>for 1: {n}&#xa0;edit; edits_words</extracomment>
        <translation>
            <numerusform>{n}&#xa0;modification</numerusform>
            <numerusform>{n}&#xa0;modifications</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>adding a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>ajout&#xa0;: {noun}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/room_words.py"/>
        <source>removing a {noun}</source>
        <extracomment>step_words</extracomment>
        <translation>retrait&#xa0;: {noun}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Jugs on the shelf</source>
        <translation>Bidons sur l'étagère</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Missed doses are never made up: go on with the next one.</source>
        <translation>Les doses manquées ne se rattrapent jamais&#xa0;: continuez avec la suivante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>This sheet holds for the round it was printed for. Doses stand on the cards, not here.</source>
        <translation>Cette feuille vaut pour la tournée pour laquelle elle a été imprimée. Les doses figurent sur les fiches, pas ici.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>Nothing is wrong and nothing is due.</source>
        <extracomment>page, headline</extracomment>
        <translation>Aucun défaut et rien à faire.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>{n} things to do</source>
        <extracomment>for 1: {n} thing to do; page</extracomment>
        <translation>
            <numerusform>{n} chose à faire</numerusform>
            <numerusform>{n} choses à faire</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Round sheet</source>
        <extracomment>page</extracomment>
        <translation>Feuille de tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Printed {date_words} {clock}</source>
        <extracomment>page</extracomment>
        <translation>Imprimée le {date_words} {clock}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>Today</source>
        <extracomment>_line</extracomment>
        <translation>Aujourd'hui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/round_page.py"/>
        <source>By {at}</source>
        <extracomment>_line</extracomment>
        <translation>Avant le {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>wrong</source>
        <extracomment>headline</extracomment>
        <translation>en défaut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due</source>
        <extracomment>headline</extracomment>
        <translation>à faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds.py"/>
        <source>due soon</source>
        <extracomment>headline</extracomment>
        <translation>bientôt à faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Stop {food} and throw it away</source>
        <extracomment>_last_day</extracomment>
        <translation>Arrêter {food} et la jeter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away</source>
        <extracomment>_last_day</extracomment>
        <translation>Jeter {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day was {day}. Rinse jug and line.</source>
        <extracomment>_last_day</extracomment>
        <translation>Son dernier jour était le {day}. Rincez bidon et tuyau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Throw {food} away tonight</source>
        <extracomment>_last_day</extracomment>
        <translation>Jeter {food} ce soir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>{day} is its last day.</source>
        <extracomment>_last_day</extracomment>
        <translation>{day} est son dernier jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Get new {food}</source>
        <extracomment>_last_day, _empty</extracomment>
        <translation>Se réapprovisionner&#xa0;: {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Its last day is {day}.</source>
        <extracomment>_last_day</extracomment>
        <translation>Son dernier jour est le {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug is empty on {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Au rythme journalier, son bidon est vide le {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>By the daily rate its jug would be empty since {day}.</source>
        <extracomment>_empty</extracomment>
        <translation>Au rythme journalier, son bidon serait vide depuis le {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_foods.py"/>
        <source>Look how much {food} is left</source>
        <extracomment>_empty</extracomment>
        <translation>Regarder combien il reste de {food}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Look how much is left</source>
        <translation>Regarder combien il reste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its batch {was} to be used by {use_by}.</source>
        <extracomment>_old</extracomment>
        <translation>Sa préparation {was} à utiliser jusqu'au {use_by}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>was</source>
        <extracomment>_old, cards</extracomment>
        <translation>était</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>is</source>
        <extracomment>_old, cards</extracomment>
        <translation>est</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Mix a new batch</source>
        <extracomment>_old, _empty</extracomment>
        <translation>Faire une nouvelle préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the daily rate it {gone} {at}.</source>
        <extracomment>_empty</extracomment>
        <translation>Au rythme journalier, il {gone} {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, but far less is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>À {per_day} par jour, il {gone} {at}, mais bien moins est noté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>Its level was read on {at}: it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>Son niveau a été lu le {at}&#xa0;: il est vide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>By the doses logged it is empty.</source>
        <extracomment>_empty</extracomment>
        <translation>D'après les doses notées, il est vide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>It {gone} {at}, reckoned from the doses logged.</source>
        <extracomment>_empty</extracomment>
        <translation>Il {gone} {at}, calculé d'après les doses notées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>reckoned from the doses logged until {until}</source>
        <extracomment>_empty</extracomment>
        <translation>calculé d'après les doses notées jusqu'au {until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day it {gone} {at}, {logged}.</source>
        <extracomment>_empty</extracomment>
        <translation>À {per_day} par jour, il {gone} {at}, {logged}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source> since {since}</source>
        <extracomment>_empty</extracomment>
        <translation> depuis le {since}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>At {per_day} a day{since} it {gone} {at}; no dose is logged.</source>
        <extracomment>_empty</extracomment>
        <translation>À {per_day} par jour{since}, il {gone} {at}&#xa0;; aucune dose n'est notée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>would be empty since</source>
        <extracomment>_would</extracomment>
        <translation>serait vide depuis le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_jugs.py"/>
        <source>is empty on</source>
        <extracomment>_would</extracomment>
        <translation>est vide le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Stop dosing {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Arrêter de doser&#xa0;: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Its plan says to stop.</source>
        <extracomment>plans</extracomment>
        <translation>Son plan dit d'arrêter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Look at the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Regarder le plan pour {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It cannot be reckoned any more.</source>
        <extracomment>plans</extracomment>
        <translation>Il ne peut plus être calculé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>The readings leave its band.</source>
        <extracomment>plans</extracomment>
        <translation>Les relevés quittent sa bande.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Plan {plan_id} {reached} {ends}.</source>
        <extracomment>plans</extracomment>
        <translation>Le plan {plan_id} {reached} {ends}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>reached its end on</source>
        <extracomment>plans</extracomment>
        <translation>s'est terminé le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>ends on</source>
        <extracomment>plans</extracomment>
        <translation>se termine le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>End the plan for {parameter}</source>
        <extracomment>plans</extracomment>
        <translation>Terminer le plan pour {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Another card has taken its place.</source>
        <extracomment>cards</extracomment>
        <translation>Une autre fiche a pris sa place.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Take down card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Décrocher la fiche {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It must not be followed.</source>
        <extracomment>cards</extracomment>
        <translation>Elle ne doit pas être suivie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>It {was} valid until {valid_until}.</source>
        <extracomment>cards</extracomment>
        <translation>Elle {was} valable jusqu'au {valid_until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_plans.py"/>
        <source>Replace card {plan_id}</source>
        <extracomment>cards</extracomment>
        <translation>Remplacer la fiche {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_room.py"/>
        <source>A system that is gone</source>
        <extracomment>place_of</extracomment>
        <translation>Un système qui n'existe plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter} again with a fresh kit</source>
        <extracomment>_duty</extracomment>
        <translation>Tester {parameter} de nouveau avec un kit neuf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Test {parameter}</source>
        <extracomment>_duty</extracomment>
        <translation>Tester {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is dated {at}, which is still to come. Look at the clock and at the reading.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Le dernier relevé porte la date du {at}, qui est encore à venir. Regardez l'horloge et le relevé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings all say {typed}.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Les {same} derniers relevés disent tous {typed}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last {same} readings are all alike.</source>
        <extracomment>_by_reading</extracomment>
        <translation>Les {same} derniers relevés sont tous pareils.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>Plan {plan_id} {asked} for a test by {at}.</source>
        <extracomment>_by_plan</extracomment>
        <translation>Le plan {plan_id} {asked} un test avant le {at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asked</source>
        <extracomment>_by_plan</extracomment>
        <translation>demandait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>asks</source>
        <extracomment>_by_plan</extracomment>
        <translation>demande</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>less than a day</source>
        <extracomment>_age</extracomment>
        <translation>moins d'un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>1 day</source>
        <extracomment>_age</extracomment>
        <translation>1 jour</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>{n} days</source>
        <extracomment>for 1: a day; _age</extracomment>
        <translation>
            <numerusform>un jour</numerusform>
            <numerusform>{n} jours</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/rounds_tests.py"/>
        <source>The last reading is {age} old; it holds {held}.</source>
        <extracomment>_age</extracomment>
        <translation>Le dernier relevé a {age}&#xa0;; il vaut {held}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer.</source>
        <extracomment>copy_shown</extracomment>
        <translation>Le serveur du journal ne répond pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Read from this computer's copy of {when}; the server does not answer. What others logged since is not in it.</source>
        <extracomment>copy_shown</extracomment>
        <translation>Lu dans la copie de cet ordinateur, du {when}&#xa0;; le serveur ne répond pas. Ce que d'autres ont noté depuis n'y est pas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server with the log does not answer. Look whether it runs and whether this computer is in its network.</source>
        <extracomment>_away</extracomment>
        <translation>Le serveur du journal ne répond pas. Voyez s'il est en marche et si cet ordinateur est dans son réseau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not answer, so that was not done. Try again when it does.</source>
        <extracomment>_away</extracomment>
        <translation>Le serveur ne répond pas&#xa0;: cela n'a donc pas été fait. Réessayez quand il répond.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Kept on this computer, and sent when the server answers. Read from the copy of {when}.</source>
        <extracomment>_waits</extracomment>
        <translation>Gardé sur cet ordinateur, et envoyé quand le serveur répond. Lu dans la copie du {when}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>{when} by {who}</source>
        <extracomment>_doubted</extracomment>
        <translation>{when} par {who}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>A dose that waited for the server was logged beside one that somebody else logged ({which}). If both are the same dose, remove one of them.</source>
        <extracomment>_doubted</extracomment>
        <translation>Une dose qui attendait le serveur a été notée à côté d'une autre, notée par quelqu'un d'autre ({which}). Si c'est la même dose, retirez l'une des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>Somebody logged a dose at this moment. Look at it before you log yours.</source>
        <translation>Quelqu'un a noté une dose à ce moment. Regardez-la avant de noter la vôtre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server cannot keep a character in it, so it was not saved. Type it again.</source>
        <translation>Le serveur ne peut pas garder un de ses caractères&#xa0;: ce n'est donc pas enregistré. Tapez-le de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>That is no address of a log. It looks like postgresql://keeper@fishroom-server/fishroom</source>
        <translation>Ce n'est pas une adresse de journal. Elle ressemble à postgresql://keeper@fishroom-server/fishroom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>An address has no password in it, since it would stay where others can read it. Type it in the field for it, keep it in the system's keyring, or set EVENWATER_LOG_PASSWORD.</source>
        <translation>Une adresse ne contient pas de mot de passe, car il resterait où d'autres peuvent le lire. Tapez-le dans son champ, gardez-le dans le trousseau du système, ou définissez EVENWATER_LOG_PASSWORD.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let you in with this name and password. The password is taken from the field, from EVENWATER_LOG_PASSWORD or from the system's keyring.</source>
        <translation>Le serveur ne vous laisse pas entrer avec ce nom et ce mot de passe. Le mot de passe est pris du champ, d'EVENWATER_LOG_PASSWORD ou du trousseau du système.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server answers, but has no database of that name.</source>
        <translation>Le serveur répond, mais n'a pas de base de ce nom.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>What was written is not what was read, so nothing was kept of it. Try again.</source>
        <translation>Ce qui a été écrit n'est pas ce qui a été lu&#xa0;: rien n'en a donc été gardé. Réessayez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>The server does not let this name make or change the log. Ask who looks after it.</source>
        <translation>Le serveur ne laisse pas ce nom faire ou changer le journal. Demandez à qui s'en occupe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/server_words.py"/>
        <source>This Evenwater was installed without what a log on a server needs. Install it with [facility].</source>
        <translation>Cet Evenwater a été installé sans ce qu'il faut pour un journal sur un serveur. Installez-le avec [facility].</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>limewater, saturated {tall_man}</source>
        <extracomment>contents_options</extracomment>
        <translation>eau de chaux, {tall_man} saturé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>magnesium CHLORide and SULFate, as in seawater</source>
        <extracomment>contents_options</extracomment>
        <translation>CHLORure et SULFate de magnésium, comme dans l'eau de mer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>A bottle, by its label</source>
        <extracomment>contents_options</extracomment>
        <translation>Un flacon, d'après son étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>What it was made for cannot be reckoned any more.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Ce pour quoi elle a été faite ne peut plus être calculé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>It was made for another strength: {before}. {held_by}: {strength_line}.</source>
        <extracomment>card_outdated</extracomment>
        <translation>Elle a été faite pour une autre concentration&#xa0;: {before}. {held_by}&#xa0;: {strength_line}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>The jug now</source>
        <extracomment>card_outdated, StockRecords.outdated</extracomment>
        <translation>Le bidon maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>by its label, {dose} raise {water} by {rise}</source>
        <extracomment>strength_line</extracomment>
        <translation>d'après son étiquette, {dose} relèvent {water} de {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>No hazard statement</source>
        <extracomment>hazards</extracomment>
        <translation>Aucune mention de danger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In the jug</source>
        <extracomment>batch_row</extracomment>
        <translation>Dans le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Used before</source>
        <extracomment>batch_row</extracomment>
        <translation>Servi avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>Not in the jug yet</source>
        <extracomment>batch_row</extracomment>
        <translation>Pas encore dans le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>to be weighed</source>
        <extracomment>batch_row</extracomment>
        <translation>à peser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>mixed {mixed}</source>
        <extracomment>batch_row</extracomment>
        <translation>préparé {mixed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shelf.py"/>
        <source>use by {batch}</source>
        <extracomment>batch_row</extracomment>
        <translation>à utiliser jusqu'au {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Monday</source>
        <translation>lundi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Tuesday</source>
        <translation>mardi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Wednesday</source>
        <translation>mercredi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thursday</source>
        <translation>jeudi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Friday</source>
        <translation>vendredi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Saturday</source>
        <translation>samedi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sunday</source>
        <translation>dimanche</translation>
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
        <translation>mer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Thu</source>
        <translation>jeu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Fri</source>
        <translation>ven</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sat</source>
        <translation>sam</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sun</source>
        <translation>dim</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jan</source>
        <translation>janv</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Feb</source>
        <translation>févr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Mar</source>
        <translation>mars</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Apr</source>
        <translation>avr</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>May</source>
        <translation>mai</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jun</source>
        <translation>juin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Jul</source>
        <translation>juil</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Aug</source>
        <translation>août</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>Sep</source>
        <translation>sept</translation>
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
        <translation>déc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{value} per day</source>
        <extracomment>Shown.per_day</extracomment>
        <translation>{value} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (cubic metres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (mètres cubes)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{dose} (litres)</source>
        <extracomment>dose, about</extracomment>
        <translation>{dose} (litres)</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <extracomment>for 1: {n}&#xa0;day; span</extracomment>
        <translation>
            <numerusform>{n}&#xa0;jour</numerusform>
            <numerusform>{n}&#xa0;jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>{n}&#xa0;days</source>
        <comment>every</comment>
        <extracomment>for 1: a day; days_words</extracomment>
        <translation>
            <numerusform>{n}&#xa0;jour</numerusform>
            <numerusform>{n}&#xa0;jours</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>once a day</source>
        <extracomment>every</extracomment>
        <translation>une fois par jour</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {rest}</source>
        <extracomment>for 1: every minute; every</extracomment>
        <translation>
            <numerusform>toutes les minutes</numerusform>
            <numerusform>toutes les {rest}</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours} {rest}</source>
        <extracomment>every</extracomment>
        <translation>toutes les {hours} {rest}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/shown.py"/>
        <source>every {hours}</source>
        <extracomment>for 1: every hour; every</extracomment>
        <translation>
            <numerusform>toutes les heures</numerusform>
            <numerusform>toutes les {hours}</numerusform>
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
        <translation>Ses autres effets</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme NO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme PO4</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium is taken to be made good with calcium chloride</source>
        <translation>le calcium est supposé compensé avec du chlorure de calcium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity is taken to be made good with a sodium salt</source>
        <translation>l'alcalinité est supposée compensée avec un sel de sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>What comes along</source>
        <extracomment>_correction</extracomment>
        <translation>Ce qui vient avec</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>a label does not say what else is in the bottle</source>
        <extracomment>_correction</extracomment>
        <translation>une étiquette ne dit pas ce qu'il y a d'autre dans le flacon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>not known</source>
        <extracomment>_correction, _line</extracomment>
        <translation>inconnu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>{item} avec la correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>carried in by {stock} of stock</source>
        <extracomment>_correction</extracomment>
        <translation>apporté par {stock} de solution</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what is in the water by then ÷ {density}; alkalinity counts as bicarbonate</source>
        <extracomment>_correction</extracomment>
        <translation>ce qui est alors dans l'eau ÷ {density}&#xa0;; l'alcalinité compte comme bicarbonate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity by the last dose</source>
        <extracomment>_correction</extracomment>
        <translation>Salinité à la dernière dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water with the correction</source>
        <extracomment>_correction</extracomment>
        <translation>Eau avec la correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>comes in place of as much top-off</source>
        <extracomment>_correction, _lines</extracomment>
        <translation>remplace autant d'eau d'appoint</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{per_unit} for each {words}</source>
        <extracomment>_pair</extracomment>
        <translation>{per_unit} pour chaque {words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>skeleton takes one mole of calcium to two equivalents</source>
        <extracomment>_pair</extracomment>
        <translation>le squelette prend une mole de calcium pour deux équivalents</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium to alkalinity</source>
        <extracomment>_pair</extracomment>
        <translation>Calcium pour alcalinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{calcium_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{calcium_per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{alkalinity_per_day} per day</source>
        <extracomment>_pair</extracomment>
        <translation>{alkalinity_per_day} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Calcium used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Calcium consommé avec elle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Alkalinity used with it</source>
        <extracomment>_pair</extracomment>
        <translation>Alcalinité consommée avec lui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, {salt_g} in the whole tank, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>d'entretien, {salt_g} dans tout le bac, si rien n'est renouvelé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinité dans un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salinity in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>Salinité dans un an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, if nothing is exchanged</source>
        <extracomment>_upkeep</extracomment>
        <translation>d'entretien, si rien n'est renouvelé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>left as the nutrient is taken up</source>
        <extracomment>_upkeep</extracomment>
        <translation>laissé quand le nutriment est absorbé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>not used up</source>
        <extracomment>_upkeep</extracomment>
        <translation>non consommé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{why}, if nothing is exchanged; {later} in a year</source>
        <extracomment>_upkeep</extracomment>
        <translation>{why}, si rien n'est renouvelé&#xa0;; {later} dans un an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{item} in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>{item} dans un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Water in a month</source>
        <extracomment>_upkeep</extracomment>
        <translation>Eau dans un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>of upkeep, comes in place of as much top-off</source>
        <extracomment>_upkeep</extracomment>
        <translation>d'entretien, remplace autant d'eau d'appoint</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Salt left behind in a month</source>
        <extracomment>_salt</extracomment>
        <translation>Sel laissé dans un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>everything that comes is used up</source>
        <extracomment>_salt</extracomment>
        <translation>tout ce qui vient est consommé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>every equivalent leaves one mole, {mole}{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>chaque équivalent laisse une mole, {mole}{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salt_g} of sodium chloride</source>
        <extracomment>_salt</extracomment>
        <translation>{salt_g} de chlorure de sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the mass of what is not used up{taken}</source>
        <extracomment>_salt</extracomment>
        <translation>la masse de ce qui n'est pas consommé{taken}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Dissolved inorganic carbon</source>
        <extracomment>_way</extracomment>
        <translation>Carbone inorganique dissous</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>Taken for these</source>
        <extracomment>_way</extracomment>
        <translation>Pris pour cela</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>right after the {n} doses of an hour</source>
        <extracomment>for 1: right after a dose; _instants</extracomment>
        <translation>
            <numerusform>juste après une dose</numerusform>
            <numerusform>juste après les {n} doses d'une heure</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>at the target</source>
        <extracomment>_instants</extracomment>
        <translation>à la valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{dose} there</source>
        <extracomment>_instants</extracomment>
        <translation>{dose} là</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{at_target} at the target</source>
        <extracomment>_instants</extracomment>
        <translation>{at_target} à la valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>the air brings the carbon dioxide back between doses</source>
        <extracomment>_taken</extracomment>
        <translation>l'air ramène le dioxyde de carbone entre les doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>pH was not measured: {ph_assumed} now and at the target</source>
        <extracomment>_taken</extracomment>
        <translation>le pH n'a pas été mesuré&#xa0;: {ph_assumed} maintenant et à la valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>calcium was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>le calcium n'a pas été donné&#xa0;: comme dans l'eau de mer naturelle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>alkalinity was not given: as in natural seawater</source>
        <extracomment>_taken</extracomment>
        <translation>l'alcalinité n'a pas été donnée&#xa0;: comme dans l'eau de mer naturelle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>what a dose of this bottle does at once is not known</source>
        <extracomment>_taken</extracomment>
        <translation>ce qu'une dose de ce flacon fait tout de suite n'est pas connu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per L</source>
        <extracomment>_density, _spread_line, a unit beside a figure</extracomment>
        <translation>kg par L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>less than {least_salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>moins de {least_salinity} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>g per kg</source>
        <extracomment>_more, _figure</extracomment>
        <translation>g par kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/side_effect_lines.py"/>
        <source>{salinity} more</source>
        <extracomment>_more</extracomment>
        <translation>{salinity} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I weighed it</source>
        <translation>Je l'ai pesé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>I want a strength</source>
        <translation>Je veux une concentration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>To match another jug</source>
        <translation>Accorder à un autre bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{chemical} raises nothing that is corrected here. Weigh it instead.</source>
        <extracomment>evaluate</extracomment>
        <translation>{chemical} ne relève rien de ce qui est corrigé ici. Pesez-le plutôt.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Choose the jug to match.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Choisissez le bidon auquel accorder.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>A bottle known by its label, or a jug with nothing in it, cannot be matched. Choose another jug.</source>
        <extracomment>_no_partner</extracomment>
        <translation>Un flacon connu par son étiquette, ou un bidon sans contenu, ne peut pas servir de modèle. Choisissez un autre bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>of {first}</source>
        <extracomment>_answered</extracomment>
        <translation>en {first}</translation>
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
        <translation>{weighed}, complété à {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source> and {mass}</source>
        <extracomment>_answered</extracomment>
        <translation> et {mass}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>g{also} to weigh out</source>
        <extracomment>_answered</extracomment>
        <translation>g{also} à peser</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>saturated, clear, in a jug of {litres}</source>
        <extracomment>_answered</extracomment>
        <translation>saturé, clair, dans un bidon de {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>meq per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>meq par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>g par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>mmol per mL</source>
        <extracomment>_per_ml</extracomment>
        <translation>mmol par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per mL</source>
        <extracomment>_per_ml, a unit beside a figure</extracomment>
        <translation>mg par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{dose} raises {water} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>{dose} relève {water} de {shown}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>and {parameter} by {shown}</source>
        <extracomment>_rise_words</extracomment>
        <translation>et {parameter} de {shown}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Dissolved, at {at}</source>
        <extracomment>_bars</extracomment>
        <translation>Dissous, à {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>{made} of {most}</source>
        <extracomment>_bars</extracomment>
        <translation>{made} sur {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in a litre</source>
        <extracomment>_working</extracomment>
        <translation>dans un litre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>in seawater {sulfate_per_magnesium}</source>
        <extracomment>_working</extracomment>
        <translation>dans l'eau de mer {sulfate_per_magnesium}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_sheet.py"/>
        <source>Sulfate to magnesium</source>
        <extracomment>_working</extracomment>
        <translation>Sulfate pour magnésium</translation>
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
        <translation>{made} de {chemical} dans un litre ne peuvent pas se dissoudre&#xa0;: à {temperature} le maximum est {most} dans un litre. Faites la solution plus faible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>The stock is near its limit ({made} of {most} in a litre). Keep it {warm} and look for crystals.</source>
        <translation>La solution est proche de sa limite ({made} sur {most} dans un litre). Gardez-la {warm} et cherchez des cristaux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>warm</source>
        <translation>au chaud</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>cool</source>
        <translation>au frais</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is dangerous to people and easy to overdose. Use it only if you are trained for it.</source>
        <translation>{chemical}&#xa0;: dangereux pour les gens et facile à surdoser. Ne l'utilisez que si vous y êtes formé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} fall out when they are dissolved together. Give each a jug of its own.</source>
        <translation>{first} et {second} précipitent si on les dissout ensemble. Donnez à chacun son propre bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} is named twice. Add its masses up and name it once.</source>
        <translation>{chemical} est nommé deux fois. Additionnez ses masses et nommez-le une seule fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{first} and {second} cannot be mixed to the magnesium and sulfate of seawater. Take magnesium chloride and magnesium sulfate.</source>
        <translation>{first} et {second} ne peuvent pas être mélangés au rapport magnésium et sulfate de l'eau de mer. Prenez du chlorure de magnésium et du sulfate de magnésium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>A jug of {chemical} must not be saturated: it crystallises when the room cools. Only limewater is dosed so.</source>
        <translation>Un bidon de {chemical} ne doit pas être saturé&#xa0;: il cristallise quand la pièce refroidit. Seule l'eau de chaux se dose ainsi.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Limewater holds {grams_per} in a litre at {degc}, and less when it is warmer. Dose the clear water only, and keep the jug closed: air turns it into chalk.</source>
        <translation>L'eau de chaux contient {grams_per} dans un litre à {degc}, et moins quand il fait plus chaud. Ne dosez que l'eau claire, et gardez le bidon fermé&#xa0;: l'air en fait de la craie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>{chemical} and {partner} are no pair. Of a matched pair one stock carries alkalinity only and the other calcium only.</source>
        <translation>{chemical} et {partner} ne font pas une paire. Dans une paire accordée, une solution ne porte que l'alcalinité et l'autre que le calcium.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No seawater of this alkalinity has a pH of {ph}. Test both again, and see on which scale the pH is.</source>
        <translation>Aucune eau de mer de cette alcalinité n'a un pH de {ph}. Testez de nouveau les deux, et voyez sur quelle échelle est le pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>Aragonite saturation reaches {saturation}; above {most} calcium carbonate may fall out, and these figures hold no longer. Add less at a time.</source>
        <translation>La saturation en aragonite atteint {saturation}&#xa0;; au-dessus de {most}, du carbonate de calcium peut précipiter, et ces chiffres ne tiennent plus. Ajoutez-en moins à la fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>No calcium is given, so {calcium} is assumed, as natural seawater of this salinity has.</source>
        <translation>Le calcium n'est pas donné&#xa0;: {calcium} est supposé, comme dans l'eau de mer naturelle de cette salinité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>pH was not measured, so {ph} is assumed all along, and only its rise in an hour is limited. Measure it before a large correction.</source>
        <translation>Le pH n'a pas été mesuré&#xa0;: {ph} est supposé tout du long, et seule sa hausse en une heure est limitée. Mesurez-le avant une grande correction.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At the target pH comes to {ph} once gas exchange has caught up, above the {most} usually kept. More air from outdoors does not lower it; a nearer target does.</source>
        <translation>À la valeur cible, le pH vient à {ph} une fois l'échange avec l'air fait, au-dessus des {most} tenus d'ordinaire. Plus d'air du dehors ne l'abaisse pas&#xa0;; une valeur cible plus proche, si.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>What is in the bottle is not known. For pH it is reckoned as hydroxide, which lifts it most.</source>
        <translation>Ce qu'il y a dans le flacon n'est pas connu. Pour le pH il est compté comme hydroxyde, qui le relève le plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/stock_words.py"/>
        <source>At a salinity of {salinity} and {degc} not all constants were measured; these figures are less certain.</source>
        <translation>À une salinité de {salinity} et {degc}, toutes les constantes n'ont pas été mesurées&#xa0;; ces chiffres sont moins sûrs.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sodium</source>
        <translation>sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>chloride</source>
        <translation>chlorure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>sulfate</source>
        <translation>sulfate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>boron</source>
        <translation>bore</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>{head}: {said}</source>
        <extracomment>headed</extracomment>
        <translation>{head}&#xa0;: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/terms.py"/>
        <source>{first} and {last}</source>
        <extracomment>listed</extracomment>
        <translation>{first} et {last}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {widest}</source>
        <extracomment>_beside</extracomment>
        <translation>Prendre {widest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{widest} would do</source>
        <extracomment>_beside</extracomment>
        <translation>{widest} suffirait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>In the way</source>
        <extracomment>_beside</extracomment>
        <translation>Fait obstacle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave {open}</source>
        <extracomment>_beside</extracomment>
        <translation>Elles laissent {open}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>They leave nothing</source>
        <extracomment>_beside</extracomment>
        <translation>Elles ne laissent rien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>Take {most}</source>
        <extracomment>_beside</extracomment>
        <translation>Prendre {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_beside.py"/>
        <source>{most} would do</source>
        <extracomment>_beside</extracomment>
        <translation>{most} suffirait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never make up missed doses: go on with the next one.</source>
        <translation>Ne rattrapez jamais les doses manquées&#xa0;: continuez avec la suivante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Test again within the week, and after every change of doses, batch or pump.</source>
        <translation>Testez de nouveau dans la semaine, et après tout changement de doses, de préparation ou de pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Timetable of all pumps</source>
        <extracomment>page</extracomment>
        <translation>Horaire de toutes les pompes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Replace this sheet when the code of the timetable changes.</source>
        <extracomment>page</extracomment>
        <translation>Remplacez cette feuille quand le code de l'horaire change.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Valid until {until}</source>
        <extracomment>page</extracomment>
        <translation>Valable jusqu'au {until}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Never more than {most} of {additive_name} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Jamais plus de {most} de {additive_name} en 24 heures, toutes les doses ensemble.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if {parameter} reads above {stop_above}.</source>
        <extracomment>page</extracomment>
        <translation>Arrêtez et testez de nouveau si {parameter} dépasse {stop_above}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Stop and test again if a value reads higher than it is usually kept.</source>
        <extracomment>page</extracomment>
        <translation>Arrêtez et testez de nouveau si une valeur est plus haute que ce que l'on tient d'ordinaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Every dose of the day in order of time, {rows} in all</source>
        <extracomment>page</extracomment>
        <translation>Chaque dose du jour dans l'ordre des heures, {rows} en tout</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id}. Its dose card says when they end; here is at which minute.</source>
        <extracomment>page</extracomment>
        <translation>Pour {parameter}, les doses sont celles du plan {plan_id}. Sa fiche de dosage dit quand elles finissent&#xa0;; ici, à quelle minute elles viennent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>After 30 days the tank uses something else: test and print it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Après 30 jours le bac consomme autre chose&#xa0;: testez et imprimez-la de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the dose card of plan {plan_id} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Alors la fiche de dosage du plan {plan_id} se termine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Then the clocks on the wall are changed.</source>
        <extracomment>_valid</extracomment>
        <translation>Alors les horloges au mur changent d'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{first} and {second}: {nearest} apart at the nearest, never under {minutes}.</source>
        <extracomment>_separation</extracomment>
        <translation>{first} et {second}&#xa0;: à {nearest} d'écart au plus près, jamais moins de {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>Use another outlet for each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>Prenez une autre sortie pour chacun, dans le courant. Ne mélangez jamais les concentrés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source> or </source>
        <extracomment>_setting</extracomment>
        <translation> ou </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{doses}{doses_2}
First at {minute}</source>
        <extracomment>_setting</extracomment>
        <translation>{doses}{doses_2}
Première à {minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_card.py"/>
        <source>{pump}: runs {runs} each time. {in_24_hours} in 24 hours.{carried}</source>
        <extracomment>_setting</extracomment>
        <translation>{pump}&#xa0;: tourne {runs} chaque fois. {in_24_hours} en 24 heures.{carried}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>Plan {plan_id} for {parameter}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>Plan {plan_id} pour {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} cannot be read. End it on the Correct sheet.</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} ne peut pas être lu. Terminez-le sur la feuille Correction.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} must not be followed on. {plan_said}</source>
        <extracomment>going, _Gathering._ramps</extracomment>
        <translation>{head} ne doit plus être suivi. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>“{name}” is chosen for {parameter} and for {parameter_2}. A pump head gives from one jug: </source>
        <extracomment>names_of</extracomment>
        <translation>«&#xa0;{name}&#xa0;» est choisie pour {parameter} et pour {parameter_2}. Une tête de pompe donne d'un seul bidon&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_given.py"/>
        <source>{said}choose another pump for one of them.</source>
        <extracomment>names_of</extracomment>
        <translation>{said}choisissez une autre pompe pour l'un des deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Let alkalinity and calcium flow in at different places, where the water moves.</source>
        <translation>Faites couler alcalinité et calcium à des endroits différents, là où l'eau bouge.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>The pumps' clocks stay as they were set when the clocks on the wall are changed.</source>
        <translation>Les horloges des pompes restent comme elles étaient réglées quand les horloges au mur changent d'heure.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>To set the pumps' clocks again in autumn, stop the pumps for the hour that comes twice.</source>
        <translation>Pour remettre les horloges des pompes à l'heure en automne, arrêtez les pompes pendant l'heure qui vient deux fois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>, on some days {more} more</source>
        <extracomment>_lines</extracomment>
        <translation>, certains jours {more} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{first} and {second}: {nearest} apart, at least {minutes}</source>
        <extracomment>_lines</extracomment>
        <translation>{first} et {second}&#xa0;: {nearest} d'écart, au moins {minutes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>Note: {remark}</source>
        <extracomment>_lines</extracomment>
        <translation>Remarque&#xa0;: {remark}</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{n} doses</source>
        <comment>in words</comment>
        <extracomment>for 1: one dose; pump_line</extracomment>
        <translation>
            <numerusform>une dose</numerusform>
            <numerusform>{n} doses</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{pump}: {how_many} a day{apart}, {in_day} in all, running {runs}</source>
        <extracomment>pump_line</extracomment>
        <translation>{pump}&#xa0;: {how_many} par jour{apart}, {in_day} en tout, en marche {runs}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every {shortest}</source>
        <extracomment>_interval</extracomment>
        <translation>toutes les {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_lines.py"/>
        <source>{shortest} to {longest} from one to the next</source>
        <extracomment>_interval</extracomment>
        <translation>{shortest} à {longest} de l'une à la suivante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days {more} more</source>
        <extracomment>_row</extracomment>
        <translation>certains jours {more} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin}, then {run}</source>
        <extracomment>_when</extracomment>
        <translation>{begin}, puis {run}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{begin} to {minute}, {intervals}</source>
        <extracomment>_when</extracomment>
        <translation>{begin} à {minute}, {intervals}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every hour</source>
        <extracomment>_interval</extracomment>
        <translation>toutes les heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{shortest} to {longest} apart</source>
        <extracomment>_interval</extracomment>
        <translation>{shortest} à {longest} d'écart</translation>
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
        <translation>jusqu'à {longest}</translation>
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
        <translation>une dose par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, the nearest {shortest} apart</source>
        <extracomment>_doses</extracomment>
        <translation>{count} doses par jour, au plus près à {shortest} d'écart</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{count} doses a day, {shortest}</source>
        <extracomment>_doses</extracomment>
        <translation>{count} doses par jour, {shortest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>every day the same</source>
        <extracomment>_carried</extracomment>
        <translation>chaque jour pareil</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on some days the first dose is {step} more: what is left of a step is carried into the next day</source>
        <extracomment>_carried</extracomment>
        <translation>certains jours la première dose est de {step} de plus&#xa0;: le reste d'un pas est reporté au jour suivant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>on {extra} of {days} days the first dose is {step} more; then the sum is exact</source>
        <extracomment>_carried</extracomment>
        <translation>{extra} jours sur {days}, la première dose est de {step} de plus&#xa0;; la somme est alors exacte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{minute}: {dose}, runs {run_time}</source>
        <extracomment>lanes</extracomment>
        <translation>{minute}&#xa0;: {dose}, tourne {run_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_rows.py"/>
        <source>{first} and {second} come {nearest} apart at the nearest; at least {minutes} are kept.</source>
        <extracomment>nearest_lines</extracomment>
        <translation>{first} et {second} viennent à {nearest} d'écart au plus près&#xa0;; au moins {minutes} sont tenues.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Wear goggles and gloves at the jugs. In the eyes: rinse for at least 15 minutes and get medical help.</source>
        <translation>Portez des lunettes étanches et des gants près des bidons. Dans les yeux&#xa0;: rincez au moins 15 minutes et consultez un médecin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_sheet.py"/>
        <source>Never mix the concentrates.</source>
        <translation>Ne mélangez jamais les concentrés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>“{clean}” is not a clock time. Write it like 22:00.</source>
        <extracomment>clock_minute</extracomment>
        <translation>«&#xa0;{clean}&#xa0;» n'est pas une heure. Écrivez-la comme 22:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>00:00 to {minute}</source>
        <extracomment>Wishes.not_before</extracomment>
        <translation>00:00 à {minute}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours end as well.</source>
        <extracomment>read</extracomment>
        <translation>Écrivez aussi quand finissent les heures de calme.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Write when the quiet hours begin as well.</source>
        <extracomment>read</extracomment>
        <translation>Écrivez aussi quand commencent les heures de calme.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_wishes.py"/>
        <source>Quiet hours that end when they begin leave nothing of the day.</source>
        <extracomment>read</extracomment>
        <translation>Des heures de calme qui finissent quand elles commencent ne laissent rien du jour.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{n} doses a day</source>
        <extracomment>for 1: one dose a day; _doses</extracomment>
        <translation>
            <numerusform>une dose par jour</numerusform>
            <numerusform>{n} doses par jour</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{fewest} to {most} doses a day</source>
        <extracomment>_number</extracomment>
        <translation>{fewest} à {most} doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Choose {would_do}</source>
        <extracomment>_would_do</extracomment>
        <translation>Choisissez {would_do}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {fewest} the smaller doses of {name} would be {small}, below the {least} it gives accurately.</source>
        <extracomment>_smallest</extracomment>
        <translation>Avec {fewest}, les plus petites doses de {name} seraient de {small}, sous les {least} que la pompe donne avec justesse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a weaker stock.</source>
        <extracomment>_smallest</extracomment>
        <translation>{head} {would_do}, ou une solution plus faible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>In {most} a dose of {name} would be {large}, more than the {largest} it may be.</source>
        <extracomment>_largest</extracomment>
        <translation>Avec {most}, une dose de {name} serait de {large}, plus que les {largest} permis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} {would_do}, or a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} {would_do}, ou une solution plus forte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a stronger stock.</source>
        <extracomment>_largest</extracomment>
        <translation>{head} Prenez une solution plus forte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No dose of {name} is both {smallest} or more and {largest} or less with {number}.</source>
        <extracomment>_between</extracomment>
        <translation>Aucune dose de {name} n'est à la fois de {smallest} ou plus et de {largest} ou moins avec {number}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{head} Use a finer pump or another stock.</source>
        <extracomment>_between</extracomment>
        <translation>{head} Prenez une pompe plus fine ou une autre solution.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No timetable of {names} {keeps} all wishes.</source>
        <extracomment>_none</extracomment>
        <translation>Pour {names}, aucun horaire {keeps} tous les souhaits.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>keeps</source>
        <extracomment>_none</extracomment>
        <translation>ne tient</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>was found that keeps</source>
        <extracomment>_none</extracomment>
        <translation>n'a été trouvé qui tienne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second}</source>
        <extracomment>_apart</extracomment>
        <translation>{first} et {second}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} Only if {pair} need not stay {minutes} apart is there one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Il n'y en a un que si {pair} n'ont pas à rester à {minutes} l'un de l'autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {widest} between {pair} instead of {minutes} there is one.</source>
        <extracomment>_apart</extracomment>
        <translation>{none} Avec {widest} entre {pair} au lieu de {minutes}, il y en a un.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the time that doses stay apart</source>
        <translation>l'écart entre les doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>the quiet hours</source>
        <translation>les heures de calme</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>only one pump at a time</source>
        <translation>une seule pompe à la fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>how near the doses of one pump may come</source>
        <translation>l'écart entre les doses d'une même pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} They run too long for one day. Use stronger stocks or faster pumps.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Elles tournent trop longtemps pour un seul jour. Prenez des solutions plus fortes ou des pompes plus rapides.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} In the way: {wishes}. Leaving it out alone is not enough: use stronger stocks or faster pumps as well.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Fait obstacle&#xa0;: {wishes}. Y renoncer ne suffit pas&#xa0;: prenez aussi des solutions plus fortes ou des pompes plus rapides.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} These stand in the way together: {said}. Give way in two of them.</source>
        <extracomment>_together</extracomment>
        <translation>{none} Font obstacle ensemble&#xa0;: {said}. Cédez sur deux d'entre eux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Add a pump, with what it gives in a day and its flow.</source>
        <translation>Ajoutez une pompe, avec ce qu'elle donne en un jour et son débit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>These are {count} pumps; {most} can be planned together. Leave some out.</source>
        <translation>Ce sont {count} pompes&#xa0;; {most} peuvent être planifiées ensemble. Laissez-en de côté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{what}: one of the figures cannot be. Write them again.</source>
        <translation>{what}&#xa0;: un des chiffres est impossible. Écrivez-les de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>Two pumps are called {name}. Give each a name of its own.</source>
        <translation>Deux pompes s'appellent {name}. Donnez à chacune son propre nom.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>No pump is called {text}. There are: {choices}.</source>
        <translation>Aucune pompe ne s'appelle {text}. Il y a&#xa0;: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{text} are no hours. Write them like 22:00 to 07:00, several with a comma between them.</source>
        <translation>{text} ne sont pas des heures. Écrivez-les comme 22:00 to 07:00, plusieurs séparées par une virgule.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>For {name} {doses} are wished for, and {fewest} to {most} are allowed. Correct one of the three.</source>
        <translation>Pour {name}, {doses} sont souhaitées, et {fewest} à {most} sont permises. Corrigez l'un des trois.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} cannot be kept apart from itself. Name two pumps.</source>
        <translation>{name} ne peut pas être tenu à l'écart de soi-même. Nommez deux pompes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} fall out when they meet in the water. Keep them {least} apart or more, not {minutes}.</source>
        <translation>{first} et {second} précipitent s'ils se rencontrent dans l'eau. Gardez-les à {least} l'un de l'autre ou plus, pas à {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gives {per_day} a day, less than one step of {step}. Use a weaker stock or a finer pump.</source>
        <translation>{name} donne {per_day} par jour, moins qu'un pas de {step}. Prenez une solution plus faible ou une pompe plus fine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} is to give {per_day} a day, and can give {most} in {share} of the time. Use a stronger stock or a faster pump.</source>
        <translation>{name} doit donner {per_day} par jour, et peut donner {most} en {share} du temps. Prenez une solution plus forte ou une pompe plus rapide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave {open} of the day; without them there is one. Shorten them.</source>
        <translation>{none} Les heures de calme laissent {open} du jour&#xa0;; sans elles il y en a un. Raccourcissez-les.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} The quiet hours leave nothing of the day. Shorten them.</source>
        <translation>{none} Les heures de calme ne laissent rien du jour. Raccourcissez-les.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} With {would_do} at most there is one.</source>
        <translation>{none} Avec {would_do} au plus, il y en a un.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when two pumps may run together.</source>
        <translation>{none} Il y en a un quand deux pompes peuvent tourner ensemble.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{none} There is one when doses of {name} may come nearer than {minutes}.</source>
        <translation>{none} Il y en a un quand les doses de {name} peuvent se rapprocher à moins de {minutes}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The second reckoning does not agree with this timetable, so none is given. Please keep this question and report it.</source>
        <translation>Le second calcul n'est pas d'accord avec cet horaire, donc aucun n'est donné. Gardez cette question et signalez-la, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{name} gets {given} instead of the {wished} wished for, which its other wishes leave no room for.</source>
        <translation>{name} reçoit {given} au lieu des {wished} souhaitées, pour lesquelles ses autres souhaits ne laissent pas de place.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>The doses of {name} could not be spaced evenly: they come {shortest} to {longest} apart.</source>
        <translation>Les doses de {name} n'ont pas pu être réparties également&#xa0;: elles viennent à {shortest} à {longest} d'écart.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>All doses of {name} come within {lasts} of the {open} in which it may run, so the water rises in that time. Fewer minutes apart, or shorter quiet hours, would spread them.</source>
        <translation>Toutes les doses de {name} viennent en {lasts} sur les {open} où elle peut tourner&#xa0;: la valeur monte donc dans ce temps. Moins de minutes d'écart, ou des heures de calme plus courtes, les étaleraient.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step, so on {extra} of {days} days the first dose is {step} more. The sum is then exact.</source>
        <translation>Ce que {name} donne en un jour n'est pas un multiple de son pas&#xa0;: {extra} jours sur {days}, la première dose est de {step} de plus. La somme est alors exacte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>What {name} gives in a day is no multiple of its step. What is left is carried on: on some days the first dose is {step} more.</source>
        <translation>Ce que {name} donne en un jour n'est pas un multiple de son pas. Le reste est reporté&#xa0;: certains jours la première dose est de {step} de plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/timetable_words.py"/>
        <source>{first} and {second} come {minutes} apart at the nearest; {better} are better. Fewer doses make room.</source>
        <translation>{first} et {second} viennent à {minutes} d'écart au plus près&#xa0;; {better} valent mieux. Moins de doses font de la place.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>The upkeep is not counted. {said}</source>
        <extracomment>_Gathering.together</extracomment>
        <translation>L'entretien n'est pas compté. {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{head} is over. {plan_said}</source>
        <extracomment>_Gathering._ramps</extracomment>
        <translation>{head} est passé. {plan_said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>“{name}” cannot be read and is not counted. See the Foods sheet.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>«&#xa0;{name}&#xa0;» ne peut pas être lu et n'est pas compté. Voyez la feuille Nourritures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>What the foods do to {found} is in what is used already, which was found by testing.</source>
        <extracomment>_Gathering._foods</extracomment>
        <translation>Ce que les nourritures font à {found} est déjà dans la consommation, qui a été trouvée par des tests.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: no reading, so only its change is known.</source>
        <extracomment>_Gathering._values</extracomment>
        <translation>{name}&#xa0;: pas de relevé, donc seul son changement est connu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: nobody said when it was tested; it is taken for now's.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}&#xa0;: personne n'a dit quand le test a été fait&#xa0;; il est pris pour celui de maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{name}: the reading is {now} old.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{name}&#xa0;: le relevé a {now}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Only its change is known until it is tested.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Seul son changement est connu jusqu'au prochain test.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together.py"/>
        <source>{said} Test it again.</source>
        <extracomment>_Gathering._now_of</extracomment>
        <translation>{said} Testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Draft, not to be followed</source>
        <translation>Brouillon, à ne pas suivre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Everything that runs</source>
        <extracomment>page</extracomment>
        <translation>Tout ce qui est en marche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Replace this card when its code changes.</source>
        <extracomment>page</extracomment>
        <translation>Remplacez cette fiche quand son code change.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never more than {most} of {each} for {parameter} in 24 hours, all doses together.</source>
        <extracomment>page</extracomment>
        <translation>Jamais plus de {most} de {each} pour {parameter} en 24 heures, toutes les doses ensemble.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>The doses of {parameter} are those of plan {plan_id} until {ends_at}; they make good the daily use as well. Then its upkeep begins: make this card again.</source>
        <extracomment>page</extracomment>
        <translation>Pour {parameter}, les doses sont celles du plan {plan_id} jusqu'au {ends_at}&#xa0;; elles compensent aussi la consommation journalière. Ensuite son entretien commence&#xa0;: refaites alors cette fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run_time} each time. {in_24_hours}{each}</source>
        <extracomment>_upkeep</extracomment>
        <translation>{pump}&#xa0;: tourne {run_time} chaque fois. {in_24_hours}{each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name} upkeep, {per_day}</source>
        <extracomment>_upkeep</extracomment>
        <translation>Entretien {name}, {per_day}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> A full jug lasts until {empty_at}.</source>
        <extracomment>_empty</extracomment>
        <translation> Un bidon plein dure jusqu'au {empty_at}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{pump}: runs {run} each time. {in_24_hours}</source>
        <extracomment>_ramps</extracomment>
        <translation>{pump}&#xa0;: tourne {run} chaque fois. {in_24_hours}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Pump for {name}</source>
        <extracomment>_ramps</extracomment>
        <translation>Pompe pour {name}</translation>
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
        <translation>{in_24_hours} par heure, {in_24_hours_2} en 24 heures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: clear saturated solution, {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> Dans le bidon&#xa0;: solution saturée claire, {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source> In the jug: {said} made up to {litres}.</source>
        <extracomment>_strength</extracomment>
        <translation> Dans le bidon&#xa0;: {said} complété à {litres}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Keep it cold.</source>
        <extracomment>_fed</extracomment>
        <translation>Gardez-la au froid.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Use it until {last_day}, then throw it away.</source>
        <extracomment>_fed</extracomment>
        <translation>Utilisez-la jusqu'au {last_day}, puis jetez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Never make up a missed feeding.</source>
        <extracomment>_fed</extracomment>
        <translation>Ne rattrapez jamais un repas manqué.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Food, in a day</source>
        <extracomment>_fed</extracomment>
        <translation>Nourriture, en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Old water out: {out} per day. New water in: {in_} per day.</source>
        <extracomment>_water</extracomment>
        <translation>Eau usée sortie&#xa0;: {out} par jour. Eau neuve entrée&#xa0;: {in_} par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Both pumps are matched; when one stops, stop the other.</source>
        <extracomment>_water</extracomment>
        <translation>Les deux pompes sont accordées&#xa0;; si l'une s'arrête, arrêtez l'autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Watch the level.</source>
        <extracomment>_water</extracomment>
        <translation>Surveillez le niveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{alike} New water has a salinity of {salinity}.</source>
        <extracomment>_water</extracomment>
        <translation>{alike} L'eau neuve a une salinité de {salinity}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{names} and {names_2}: {apart} apart, by another outlet each, in flow. Never mix the concentrates.</source>
        <extracomment>_separation</extracomment>
        <translation>{names} et {names_2}&#xa0;: à {apart} d'écart, chacun par une autre sortie, dans le courant. Ne mélangez jamais les concentrés.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>At which minute each pump doses stands on the timetable.</source>
        <extracomment>_separation</extracomment>
        <translation>À quelle minute dose chaque pompe se lit sur l'horaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Stop dosing {name} and test again if it reads above {above}.</source>
        <extracomment>_stop</extracomment>
        <translation>Arrêtez de doser {name} et testez de nouveau si le test dépasse {above}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>{name}: {due}, then every {stale_days}.</source>
        <extracomment>_tests</extracomment>
        <translation>{name}&#xa0;: {due}, puis tous les {stale_days}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>by {due}</source>
        <extracomment>_tests</extracomment>
        <translation>avant le {due}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>, a test may say {low} to {high}</source>
        <extracomment>_between</extracomment>
        <translation>, un test peut dire {low} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>After 30 days the tank uses something else: test and make it again.</source>
        <extracomment>_valid</extracomment>
        <translation>Après 30 jours le bac consomme autre chose&#xa0;: testez et refaites-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then plan {plan_id} for {parameter} ends.</source>
        <extracomment>_valid</extracomment>
        <translation>Alors le plan {plan_id} pour {parameter} se termine.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_card.py"/>
        <source>Then {parameter} would leave its range: change what moves it.</source>
        <extracomment>_valid</extracomment>
        <translation>Alors {parameter} sortirait de son intervalle&#xa0;: changez ce qui fait bouger la valeur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>stays there</source>
        <translation>y reste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing can be said yet.</source>
        <extracomment>view</extracomment>
        <translation>Tous les plans ensemble&#xa0;: rien ne peut encore être dit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>What does not move: {still}.</source>
        <extracomment>view</extracomment>
        <translation>Ce qui ne bouge pas&#xa0;: {still}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together: nothing moves.</source>
        <extracomment>_summary</extracomment>
        <translation>Tous les plans ensemble&#xa0;: rien ne bouge.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said} and {said_2} more.</source>
        <extracomment>_summary</extracomment>
        <translation>Tous les plans ensemble, dans une semaine&#xa0;: {said} et {said_2} de plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>All plans together, in a week: {said}.</source>
        <extracomment>_summary</extracomment>
        <translation>Tous les plans ensemble, dans une semaine&#xa0;: {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{said} values move.</source>
        <extracomment>_summary</extracomment>
        <translation>{said} valeurs bougent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>in a month</source>
        <extracomment>_spoken</extracomment>
        <translation>dans un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>used up on {date_words}</source>
        <extracomment>_then</extracomment>
        <translation>épuisé le {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>the usual </source>
        <extracomment>_then</extracomment>
        <translation>l'habituel </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>settles at {settles}</source>
        <extracomment>_then</extracomment>
        <translation>se stabilise à {settles}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} now</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{side} {named}{bound} on {date_words}</source>
        <extracomment>_leaving</extracomment>
        <translation>{side} {named}{bound} le {date_words}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>up {rise}</source>
        <extracomment>_change</extracomment>
        <translation>monte de {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>down {rise}</source>
        <extracomment>_change</extracomment>
        <translation>baisse de {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Together now</source>
        <extracomment>_budget</extracomment>
        <translation>Ensemble maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>of {rise_hard} at the most</source>
        <extracomment>_limits</extracomment>
        <translation>sur {rise_hard} au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest rise in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Plus grande hausse en 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>Largest fall in 24 hours</source>
        <extracomment>_limits</extracomment>
        <translation>Plus grande baisse en 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>from {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>à partir du {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>until {date_time}</source>
        <extracomment>_when</extracomment>
        <translation>jusqu'au {date_time}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_view.py"/>
        <source>{named}, next {times} days</source>
        <extracomment>_course</extracomment>
        <translation>{named}, les {times} prochains jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the upkeep of {}</source>
        <translation>l'entretien&#xa0;: {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the correction of {}</source>
        <translation>la correction&#xa0;: {}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>used</source>
        <translation>consommé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>taken by skimmer, algae and media</source>
        <translation>enlevé par écumeur, algues et masses filtrantes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>water exchange</source>
        <translation>renouvellement de l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>the new water</source>
        <extracomment>_plans</extracomment>
        <translation>l'eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>below {low}</source>
        <extracomment>_bound</extracomment>
        <translation>sous {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>above {high}</source>
        <extracomment>_bound</extracomment>
        <translation>au-dessus de {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound} and does not come back by itself. Correct it first.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name}&#xa0;: valeur {bound}, qui ne revient pas d'elle-même. Corrigez-la d'abord.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Change what moves it before that.</source>
        <extracomment>_leaves_hard</extracomment>
        <translation>{name} arrive {bound} dans {day}, où aucun plan ne peut mener la valeur. Changez avant cela ce qui la fait bouger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would rise {rise} in 24 hours, of {most} at the most</source>
        <extracomment>_too_fast</extracomment>
        <translation>{name} monterait de {rise} en 24 heures, sur {most} au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}: no single plan does that. Let some of them wait.</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}&#xa0;: aucun plan seul ne le fait. Faites-en attendre quelques-uns.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Bring it nearer, or exchange more slowly.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Rapprochez-la, ou renouvelez plus lentement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Give less of it.</source>
        <extracomment>_too_fast</extracomment>
        <translation>Donnez-en moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{limit}, by {plans}. {less}</source>
        <extracomment>_too_fast</extracomment>
        <translation>{limit}, par {plans}. {less}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>All together {parameter} would rise {rise} in 24 hours, of {most} at the most: {plans} raise it, though each alone keeps the limit. Let one wait until the other is done, or make it slower.</source>
        <translation>Tout ensemble, {parameter} monterait de {rise} en 24 heures, sur {most} au plus&#xa0;: {plans} relèvent la valeur, bien que chacun seul tienne la limite. Faites attendre l'un jusqu'à la fin de l'autre, ou ralentissez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would fall {fall} in 24 hours, of {most} at the most. Exchange more slowly, or bring the new water nearer.</source>
        <translation>{name} baisserait de {fall} en 24 heures, sur {most} au plus. Renouvelez plus lentement, ou rapprochez l'eau neuve.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, where no plan may take it. Test it before, and change what moves it.</source>
        <translation>{name} arrive {bound} dans {day}, où aucun plan ne peut mener la valeur. Testez avant, et changez ce qui la fait bouger.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is {bound}, outside of what is usually kept.</source>
        <translation>{name}&#xa0;: {bound}, hors de ce que l'on tient d'ordinaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} goes {bound} in {day}, out of what is usually kept.</source>
        <translation>{name} arrive {bound} dans {day}, hors de ce que l'on tient d'ordinaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would be used up in {day}.</source>
        <translation>{name}&#xa0;: tout serait consommé dans {day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} is raised by {plans}: {rise} per day together.</source>
        <translation>{plans} relèvent {name}&#xa0;: {rise} par jour ensemble.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>{name} would come to {comes_to} in {day}, not to the target of {target}: {plans} raise it as well. Plan it lower or slower, or let the other wait.</source>
        <translation>{name} arriverait à {comes_to} dans {day}, pas à la valeur cible de {target}&#xa0;: {plans} relèvent aussi la valeur. Planifiez plus bas ou plus lentement, ou faites attendre l'autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/together_words.py"/>
        <source>Two ways to reckon all plans together differ for {what}, so nothing is said. Please report this log.</source>
        <translation>Deux façons de calculer tous les plans ensemble diffèrent pour {what}, donc rien n'est dit. Signalez ce journal, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>Doses at one moment</source>
        <translation>Doses d'un même moment</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>nothing is dosed</source>
        <extracomment>view, UpkeepSheet._row</extracomment>
        <translation>rien n'est dosé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>a bottle, by its label</source>
        <extracomment>_row</extracomment>
        <translation>un flacon, d'après son étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{in_24_hours} per hour</source>
        <extracomment>_row</extracomment>
        <translation>{in_24_hours} par heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep.py"/>
        <source>{share} of the use; the other additives bring the rest</source>
        <extracomment>_row</extracomment>
        <translation>{share} de la consommation&#xa0;; les autres additifs apportent le reste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>with {exchange_fraction} exchanged a day</source>
        <extracomment>_spans</extracomment>
        <translation>avec {exchange_fraction} renouvelé par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Salt left behind</source>
        <extracomment>_spans</extracomment>
        <translation>Sel laissé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Of it sodium chloride</source>
        <extracomment>_spans</extracomment>
        <translation>Dont chlorure de sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {steady} in the tank</source>
        <extracomment>_salt</extracomment>
        <translation>à {steady} dans le bac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} more</source>
        <extracomment>_change</extracomment>
        <translation>{amount} de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{amount} less</source>
        <extracomment>_change</extracomment>
        <translation>{amount} de moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{drift} than in the new water</source>
        <extracomment>_settles</extracomment>
        <translation>{drift} que dans l'eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>at {drift}</source>
        <extracomment>_settles</extracomment>
        <translation>à {drift}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>skeleton takes {of_skeleton}, one mole to two equivalents</source>
        <extracomment>_lines</extracomment>
        <translation>le squelette prend {of_skeleton}, une mole pour deux équivalents</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as used</source>
        <extracomment>_lines</extracomment>
        <translation>Calcium pour alcalinité, consommé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Calcium to alkalinity, as dosed</source>
        <extracomment>_lines</extracomment>
        <translation>Calcium pour alcalinité, dosé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>what all doses bring of both</source>
        <extracomment>_lines</extracomment>
        <translation>ce que toutes les doses apportent des deux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Left of the use of {parameter}</source>
        <extracomment>_lines</extracomment>
        <translation>Reste de consommation&#xa0;: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>by rounding the dose down</source>
        <extracomment>_lines</extracomment>
        <translation>par l'arrondi de la dose vers le bas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{short} per day</source>
        <extracomment>_lines</extracomment>
        <translation>{short} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Sodium chloride</source>
        <extracomment>_lines</extracomment>
        <translation>Chlorure de sodium</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>one mole for every equivalent made good with a two-part</source>
        <extracomment>_lines</extracomment>
        <translation>une mole par équivalent compensé avec deux bidons accordés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Water with the doses of 24 hours</source>
        <extracomment>_lines</extracomment>
        <translation>Eau avec les doses de 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{ph_nbs} now, before the air has evened it out</source>
        <extracomment>_lines</extracomment>
        <translation>{ph_nbs} maintenant, avant que l'air n'ait égalisé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>pH after the doses of the fullest hour</source>
        <extracomment>_lines</extracomment>
        <translation>pH après les doses de l'heure la plus chargée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>{saturation} now</source>
        <extracomment>_lines</extracomment>
        <translation>{saturation} maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_lines.py"/>
        <source>Aragonite saturation after them</source>
        <extracomment>_lines</extracomment>
        <translation>Saturation en aragonite après elles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} for {for_}</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} pour {for_}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>the bottle</source>
        <extracomment>_too_much</extracomment>
        <translation>le flacon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} and the other additives bring</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} et les autres additifs apportent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{additive} brings</source>
        <extracomment>_too_much</extracomment>
        <translation>{additive} apporte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} {brought} of {name}, more than the {used} used. Choose another additive, or take {name} off the list and watch it rise.</source>
        <extracomment>_too_much</extracomment>
        <translation>{head} {brought} ({name}), plus que les {used} consommés. Choisissez un autre additif, ou retirez {name} de la liste et regardez la valeur monter.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Each dose for {parameter} would be {dose}, below the pump's smallest accurate dose of {smallest}.</source>
        <extracomment>_below_smallest</extracomment>
        <translation>Chaque dose pour {parameter} serait de {dose}, sous la plus petite dose juste de la pompe, {smallest}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} would rise by {rise}, more than the {most} it may.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{parameter} monterait de {rise}, plus que les {most} permis.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} The doses of the correction make good the daily use already: begin this upkeep when it is over.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Les doses de la correction compensent déjà la consommation journalière&#xa0;: commencez cet entretien quand elle est finie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} Choose an additive that brings less of it.</source>
        <extracomment>_daily_rise</extracomment>
        <translation>{head} Choisissez un additif qui en apporte moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Keep the doses for {first} and for {second} at least {minutes} apart, and let them flow in at different places: together they fall out.</source>
        <extracomment>_apart</extracomment>
        <translation>Gardez les doses pour {first} et pour {second} à {minutes} d'écart au moins, et faites-les couler à des endroits différents&#xa0;: ensemble elles précipitent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{head} With these doses a day they come no further apart than {widest}: choose the same number for both, {most_doses} or fewer.</source>
        <extracomment>_apart</extracomment>
        <translation>{head} Avec ces doses par jour, elles ne sont pas à plus de {widest} d'écart&#xa0;: choisissez le même nombre pour les deux, {most_doses} ou moins.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Add a value to keep, with its use per day, its additive and its pump.</source>
        <translation>Ajoutez une valeur à tenir, avec sa consommation journalière, son additif et sa pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} stands twice on the list. Keep each value with one additive.</source>
        <translation>{parameter} est deux fois dans la liste. Tenez chaque valeur avec un seul additif.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} has no use per day, so there is nothing to make good. Test it twice, some days apart, or take it off the list.</source>
        <translation>{parameter} n'a pas de consommation journalière, donc rien n'est à compenser. Testez deux fois, à quelques jours d'écart, ou retirez cette valeur de la liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What is dosed for {first} and for {second} raises both in the same proportion, so one of them is enough. Take one off the list, or choose another additive.</source>
        <translation>Ce qui est dosé pour {first} et pour {second} relève les deux dans la même proportion&#xa0;: un seul suffit. Retirez-en un de la liste, ou choisissez un autre additif.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>No doses of these additives make good {parameters} at once. Choose additives that raise one value each.</source>
        <translation>Aucune dose de ces additifs ne compense à la fois {parameters}. Choisissez des additifs qui ne relèvent qu'une valeur chacun.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A dose of {single} for {parameter} rounded down to steps of {step} is nothing. Choose fewer doses a day, a finer step or a weaker stock.</source>
        <translation>Une dose de {single} pour {parameter}, arrondie vers le bas à des pas de {step}, n'est rien. Choisissez moins de doses par jour, un pas plus fin ou une solution plus faible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>{parameter} needs {needs} in 24 hours, and its pump can give {most}. Use a stronger stock or a faster pump.</source>
        <translation>{parameter} a besoin de {needs} en 24 heures, et sa pompe peut en donner {most}. Prenez une solution plus forte ou une pompe plus rapide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one moment would raise {parameter} by {rise}, more than the {most} they may. Choose more doses a day.</source>
        <translation>Les doses d'un même moment relèveraient {parameter} de {rise}, plus que les {most} permis. Choisissez plus de doses par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of 24 hours are {in_day}, but only {most} evaporate. Use stronger stocks, or something stronger than limewater.</source>
        <translation>Les doses de 24 heures font {in_day}, mais il ne s'évapore que {most}. Prenez des solutions plus fortes, ou plus fort que l'eau de chaux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The doses of one hour would lift pH by {rise}, more than the {most} they may. {per_day}Sodium bicarbonate does not lift it at once.</source>
        <translation>Les doses d'une heure feraient monter le pH de {rise}, plus que les {most} permis. {per_day}Le bicarbonate de sodium ne le fait pas monter tout de suite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH is {now} now and would come to {ph} after the doses of one hour; they must not take it above {most}. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>Le pH est à {now} et viendrait à {ph} après les doses d'une heure&#xa0;; elles ne doivent pas le mener au-dessus de {most}. {per_day}Prenez du bicarbonate de sodium, ou dosez la nuit et testez alors le pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Aragonite saturation is {now} now and would come to {saturation} after the doses of one hour. Above {most} calcium carbonate falls out. {per_day}Use sodium bicarbonate, or dose at night and test pH then.</source>
        <translation>La saturation en aragonite est à {now} et viendrait à {saturation} après les doses d'une heure. Au-dessus de {most}, du carbonate de calcium précipite. {per_day}Prenez du bicarbonate de sodium, ou dosez la nuit et testez alors le pH.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Calcium and alkalinity are used at {of_use}, but skeleton takes {of_skeleton}. A test may be wrong, or something falls out. Test both again.</source>
        <translation>Calcium et alcalinité sont consommés à {of_use}, mais le squelette prend {of_skeleton}. Un test peut être faux, ou quelque chose précipite. Testez de nouveau les deux.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>A correction of {parameter} goes on for {days} more days. Its doses make good the daily use already: begin this upkeep when it is over.</source>
        <translation>Une correction continue encore {days} jours ({parameter}). Ses doses compensent déjà la consommation journalière&#xa0;: commencez cet entretien quand elle est finie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>The other additives bring all of the {parameter} that is used, so nothing is dosed for it.</source>
        <translation>Les autres additifs apportent tout ce qui est consommé ({parameter}), donc rien n'est dosé pour cette valeur.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Skeleton takes calcium and alkalinity together: {parameter} falls by {falls}, and nothing on the list makes it good.</source>
        <translation>Le squelette prend calcium et alcalinité ensemble&#xa0;: {parameter} baisse de {falls}, et rien dans la liste ne le compense.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>Rounding down to steps of {step} leaves {lost} of the dose for {parameter} out. Use fewer doses a day or a finer step.</source>
        <translation>L'arrondi vers le bas à des pas de {step} laisse {lost} de la dose pour {parameter} de côté. Prenez moins de doses par jour ou un pas plus fin.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>What else is in the bottle for {parameter} is not known, so what it leaves behind is not counted.</source>
        <translation>Ce qu'il y a d'autre dans le flacon pour {parameter} n'est pas connu&#xa0;: ce qu'il laisse n'est donc pas compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/upkeep_words.py"/>
        <source>pH was not measured, so {ph} is assumed, and only its rise in an hour is limited. Measure it.</source>
        <translation>Le pH n'a pas été mesuré&#xa0;: {ph} est supposé, et seule sa hausse en une heure est limitée. Mesurez-le.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This tank is invented and nothing of it is kept. Its alkalinity has fallen to 6.8 dKH and is to come back to 8.4, slowly. You type what the keeper knows, and see what follows.</source>
        <translation>Ce bac est inventé et rien n'en est gardé. Son alcalinité est tombée à 6,8 dKH et doit revenir à 8,4, lentement. Vous tapez ce que sait l'éleveur, et voyez ce qui en découle.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 6.8, what the test showed, and press Enter.</source>
        <translation>{field}&#xa0;: tapez 6,8, ce que le test a montré, et pressez Entrée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type now. An old reading is no basis for a correction.</source>
        <translation>{field}&#xa0;: tapez maintenant. Un vieux relevé n'est pas une base pour une correction.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 340, the litres of water without rock and sand.</source>
        <translation>{field}&#xa0;: tapez 340, les litres d'eau sans roches ni sable.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 8.4, where it should come to rest.</source>
        <translation>{field}&#xa0;: tapez 8,4, où elle doit se stabiliser.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 0.9. So much the corals take out of the water in a day.</source>
        <translation>{field}&#xa0;: tapez 0,9. C'est ce que les coraux prennent à l'eau en un jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: open the list with Space, go to {wanted} with the arrow keys, press Enter.</source>
        <translation>{field}&#xa0;: ouvrez la liste avec Espace, allez à {wanted} avec les flèches, pressez Entrée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Read the cautions first. {field}: type 106, the grams on the scale.</source>
        <translation>Lisez d'abord les précautions. {field}&#xa0;: tapez 106, les grammes sur la balance.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 1. The jug was filled up to the litre mark.</source>
        <translation>{field}&#xa0;: tapez 1. Le bidon a été rempli jusqu'au trait du litre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>{field}: type 24. So much came out of the pump in a minute.</source>
        <translation>{field}&#xa0;: tapez 24. C'est ce qui est sorti de la pompe en une minute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>This is the answer: {answer}. Below it stands which limit sets the pace, and on the chart what the water will do. Change a figure at the left and see the answer follow.</source>
        <translation>Voici la réponse&#xa0;: {answer}. En dessous figure la limite qui fixe l'allure, et sur le graphique ce que fera l'eau. Changez un chiffre à gauche et voyez la réponse suivre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Press {button}: the card that would hang on the stand. Close it again when you have read it.</source>
        <translation>Pressez {button}&#xa0;: la fiche qui serait accrochée au meuble. Refermez-la après l'avoir lue.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>That was the main job. With your own tank the card is saved or printed from the same row of buttons. F1 in any field says why it is there.</source>
        <translation>C'était l'essentiel. Avec votre bac, la fiche s'enregistre ou s'imprime par la même rangée de boutons. F1 dans un champ dit pourquoi il est là.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/walk.py"/>
        <source>Invented tank, step {number} of {all}</source>
        <extracomment>counted</extracomment>
        <translation>Bac inventé, étape {number} sur {all}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {out} a day go out, {into} come in.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>La feuille Renouvellement dit&#xa0;: {out} par jour sortent, {into} entrent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet says: {litres} a day, out and in alike.</source>
        <extracomment>said_elsewhere</extracomment>
        <translation>La feuille Renouvellement dit&#xa0;: {litres} par jour, en sortie comme en entrée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/water_given.py"/>
        <source>The Exchange sheet does not say yet how much; no exchange is reckoned with.</source>
        <translation>La feuille Renouvellement ne dit pas encore combien&#xa0;; aucun renouvellement n'est compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>today</source>
        <translation>aujourd'hui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{minutes}&#xa0;min ago</source>
        <extracomment>age_words</extracomment>
        <translation>il y a {minutes}&#xa0;min</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{hours}&#xa0;h ago</source>
        <extracomment>age_words</extracomment>
        <translation>il y a {hours}&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>{days}&#xa0;days ago</source>
        <extracomment>age_words</extracomment>
        <translation>il y a {days}&#xa0;jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: which is the day and which the month? Write the date like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;»&#xa0;: où est le jour et où est le mois&#xa0;? Écrivez la date comme 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: write the hour from 00 to 23, like today 18:30.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;»&#xa0;: écrivez l'heure de 00 à 23, comme aujourd'hui 18:30.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” has no hour. Write it like 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;» n'a pas d'heure. Écrivez-la comme 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” does not exist in the calendar or on the clock.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;» n'existe pas dans le calendrier ou sur l'horloge.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is still to come. Write when it was measured.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;» est encore à venir. Écrivez quand la mesure a été faite.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}”: today or yesterday?</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;»&#xa0;: aujourd'hui ou hier&#xa0;?</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” comes twice, or not at all, on the night the clocks change. Choose another minute.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;» vient deux fois, ou pas du tout, la nuit du changement d'heure. Choisissez une autre minute.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>“{text}” is not a time. Write today 08:00, yesterday 18:30 or 2026-11-25 08:00.</source>
        <extracomment>when_words</extracomment>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une heure. Écrivez aujourd'hui 08:00, hier 18:30 ou 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/when.py"/>
        <source>today</source>
        <comment>in a narrow field</comment>
        <extracomment>_short_today</extracomment>
        <translation>auj.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>more than {low}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>plus de {low}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start}, up to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start}, jusqu'à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{start} to {high}</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{start} à {high}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{number} is outside what can be entered here: {joined}.</source>
        <extracomment>_out_of_range</extracomment>
        <translation>{number} est hors de ce qui peut être saisi ici&#xa0;: {joined}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is a value, not a rate. Write {per_day}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>«&#xa0;{unit}&#xa0;» est une valeur, pas un rythme. Écrivez {per_day}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” is not a unit of this field. Write {choices}.</source>
        <extracomment>_unknown_unit</extracomment>
        <translation>«&#xa0;{unit}&#xa0;» n'est pas une unité de ce champ. Écrivez {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Fill in {field_words}.</source>
        <translation>Remplissez&#xa0;: {field_words}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a number. Write it like {example}.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas un nombre. Écrivez-le comme {example}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}”: write the number without spaces between its digits.</source>
        <translation>«&#xa0;{text}&#xa0;»&#xa0;: écrivez le nombre sans espaces entre ses chiffres.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” has more than one point or comma. Write one decimal mark and no thousands.</source>
        <translation>«&#xa0;{text}&#xa0;» a plus d'un point ou d'une virgule. Écrivez une seule marque décimale et pas de milliers.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” ends with a decimal mark. Write the digits after it, or leave it out.</source>
        <translation>«&#xa0;{text}&#xa0;» finit par une marque décimale. Écrivez les chiffres qui la suivent, ou omettez-la.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Write the value itself, without a plus sign.</source>
        <translation>Écrivez la valeur elle-même, sans signe plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>That number has more digits than can be kept. Use 40 or fewer.</source>
        <translation>Ce nombre a plus de chiffres que l'on ne peut en garder. Prenez-en 40 ou moins.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” can be read in two ways: {r}.</source>
        <extracomment>for 1: “{text}”: is {readings} meant? Write it without a thousands mark.</extracomment>
        <translation>
            <numerusform>«&#xa0;{text}&#xa0;»&#xa0;: est-ce {readings}&#xa0;? Écrivez-le sans marque de milliers.</numerusform>
            <numerusform>«&#xa0;{text}&#xa0;» peut se lire de deux façons&#xa0;: {r}.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” must be a whole number.</source>
        <translation>«&#xa0;{text}&#xa0;» doit être un nombre entier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>The unit is missing. Write {choices} after the number.</source>
        <translation>L'unité manque. Écrivez {choices} après le nombre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which gallon? Write US gal (3.785&#xa0;L) or imperial gal (4.546&#xa0;L).</source>
        <translation>Quel gallon&#xa0;? Écrivez US gal (3,785&#xa0;L) ou imperial gal (4,546&#xa0;L).</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>At which temperatures? Write {choices}, as on the hydrometer.</source>
        <translation>À quelles températures&#xa0;? Écrivez {choices}, comme sur le densimètre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{unit}” does not say as what it counts. Write {choices}.</source>
        <translation>«&#xa0;{unit}&#xa0;» ne dit pas en quoi cela compte. Écrivez {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no unit. Write it in quotes with its unit.</source>
        <translation>{text} n'a pas d'unité. Écrivez-le entre guillemets avec son unité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not a time. Write it like 2026-11-25 08:00.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas une heure. Écrivez-la comme 2026-11-25 08:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{text} has no time zone. Write the offset, like 2026-11-25T08:00:00+00:00.</source>
        <translation>{text} n'a pas de fuseau horaire. Écrivez le décalage, comme 2026-11-25T08:00:00+00:00.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Write {choices}.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas connu. Écrivez {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not one of the choices. Write {choices}.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas un des choix. Écrivez {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>Which “{text}”? The bag says one of: {choices}.</source>
        <translation>Quel «&#xa0;{text}&#xa0;»&#xa0;? Le sac dit l'un de&#xa0;: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>{chemical} does not raise {parameter}. Choose another additive.</source>
        <translation>{chemical} ne relève pas cette valeur ({parameter}). Choisissez un autre additif.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>This bottle</source>
        <translation>Ce flacon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/words.py"/>
        <source>“{text}” is not known. Known are: {choices}.</source>
        <translation>«&#xa0;{text}&#xa0;» n'est pas connu. Connus sont&#xa0;: {choices}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL of stock carries</source>
        <translation>1&#xa0;mL de solution porte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>1&#xa0;mL raises</source>
        <translation>1&#xa0;mL relève</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the daily rise sets the pace</source>
        <translation>la hausse du jour fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the size of a single dose sets the pace</source>
        <translation>la taille d'une dose fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the pump sets the pace</source>
        <translation>la pompe fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the rise of pH in an hour sets the pace</source>
        <translation>la hausse du pH en une heure fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the highest pH sets the pace</source>
        <translation>le pH le plus haut fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>aragonite saturation sets the pace</source>
        <translation>la saturation en aragonite fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what evaporates sets the pace</source>
        <translation>ce qui s'évapore fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what was given already sets the pace</source>
        <translation>ce qui a déjà été donné fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{measured} and {untested} untested</source>
        <extracomment>_from</extracomment>
        <translation>{measured} et {untested} non testé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source> and {use} used</source>
        <extracomment>working</extracomment>
        <translation> et {use} consommé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Rise wanted</source>
        <extracomment>working</extracomment>
        <translation>Hausse voulue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{target} less {answer}</source>
        <extracomment>working</extracomment>
        <translation>{target} moins {answer}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Pace</source>
        <extracomment>working</extracomment>
        <translation>Allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>limited by what else it raises</source>
        <extracomment>working</extracomment>
        <translation>limitée par ce qu'il relève d'autre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} per day</source>
        <extracomment>working</extracomment>
        <translation>{rise} par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>To be given in 24 hours</source>
        <extracomment>working</extracomment>
        <translation>À donner en 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{rise} rise{used}</source>
        <extracomment>working</extracomment>
        <translation>{rise} de hausse{used}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{to_give} ÷ {per} per mL</source>
        <extracomment>working</extracomment>
        <translation>{to_give} ÷ {per} par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Each dose</source>
        <extracomment>working</extracomment>
        <translation>Chaque dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{single_dose}, set {dose}</source>
        <extracomment>working</extracomment>
        <translation>{single_dose}, réglé {dose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left after use</source>
        <extracomment>working</extracomment>
        <translation>Reste après consommation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>what each dose leaves in the water until the next</source>
        <extracomment>working</extracomment>
        <translation>ce que chaque dose laisse dans l'eau jusqu'à la suivante</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Number of doses</source>
        <extracomment>working</extracomment>
        <translation>Nombre de doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{climb} ÷ {net}, whole doses only</source>
        <extracomment>working</extracomment>
        <translation>{climb} ÷ {net}, doses entières seulement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Left to the target</source>
        <extracomment>working</extracomment>
        <translation>Reste jusqu'à la valeur cible</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by rounding down</source>
        <extracomment>working</extracomment>
        <translation>par l'arrondi vers le bas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Pump runs</source>
        <extracomment>working</extracomment>
        <translation>La pompe tourne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{run_time} each</source>
        <extracomment>working</extracomment>
        <translation>{run_time} chacune</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Afterwards</source>
        <extracomment>working</extracomment>
        <translation>Ensuite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{use} used per day ÷ {per} per mL ÷ {with_unit}</source>
        <extracomment>working</extracomment>
        <translation>{use} consommé par jour ÷ {per} par mL ÷ {with_unit}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>Second reckoning</source>
        <extracomment>working</extracomment>
        <translation>Second calcul</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>all doses given one by one</source>
        <extracomment>working</extracomment>
        <translation>toutes les doses données une à une</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>ends at {end_value}</source>
        <extracomment>working</extracomment>
        <translation>finit à {end_value}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>9 times in 10 it ends</source>
        <extracomment>working</extracomment>
        <translation>9 fois sur 10 il finit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>in steps of {step}, rounded down</source>
        <extracomment>_rounding</extracomment>
        <translation>par pas de {step}, arrondi vers le bas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses; one smaller dose fits the rise wanted, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} doses&#xa0;; une dose plus petite convient à la hausse voulue, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>÷ {per_day} doses, {grain}</source>
        <extracomment>_rounding</extracomment>
        <translation>÷ {per_day} doses, {grain}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g of salt</source>
        <extracomment>_stock_line</extracomment>
        <translation>g de sel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{carried} per mL</source>
        <extracomment>_stock_line</extracomment>
        <translation>{carried} par mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{mass}; {grams} in {litres}{pure} × {each}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{mass}&#xa0;; {grams} dans {litres}{pure} × {each}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{parts}, in {litres}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{parts}, dans {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{dose} raise {water} by {rise}</source>
        <extracomment>_stock_line</extracomment>
        <translation>{dose} relèvent {water} de {rise}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>by its label, {how}</source>
        <extracomment>_stock_line</extracomment>
        <translation>d'après son étiquette, {how}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>g per mol</source>
        <extracomment>_portion_words</extracomment>
        <translation>g par mol</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>{unit} per g</source>
        <extracomment>_portion_words</extracomment>
        <translation>{unit} par g</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ ({litres} × {water})</source>
        <extracomment>_spread_line</extracomment>
        <translation>cela ÷ ({litres} × {water})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres}</source>
        <extracomment>_spread_line</extracomment>
        <translation>cela ÷ {litres}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>that ÷ {litres} × {factor} per {canonical}</source>
        <extracomment>_spread_line</extracomment>
        <translation>cela ÷ {litres} × {factor} par {canonical}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the volume</source>
        <extracomment>_largest_source</extracomment>
        <translation>le volume</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the strength</source>
        <extracomment>_largest_source</extracomment>
        <translation>la concentration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/screens/working.py"/>
        <source>the largest part of the doubt ({share}) comes from {source}</source>
        <extracomment>_largest_source</extracomment>
        <translation>la plus grande part du doute ({share}) vient de&#xa0;: {source}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Emergency card</source>
        <translation>Fiche d'urgence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The way down</source>
        <translation>La descente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>Electricity</source>
        <translation>Électricité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <location filename="../chemicals.toml"/>
        <source>Danger</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>Danger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/emergency.py"/>
        <source>The same in full</source>
        <translation>La même chose en entier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A6 landscape</source>
        <translation>A6 paysage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>A4 with two labels</source>
        <translation>A4 à deux étiquettes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/label_paper.py"/>
        <source>Letter with two labels</source>
        <translation>Letter à deux étiquettes</translation>
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
        <translation>Fiches de secours, {system}, plan {plan_id}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/output.py"/>
        <source>batch {batch}</source>
        <extracomment>title_of</extracomment>
        <translation>préparation {batch}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>Figure read</source>
        <translation>Chiffre lu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/round_sheet.py"/>
        <source>goes on</source>
        <translation>suite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Timetable</source>
        <translation>Horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <source>Dose</source>
        <translation>Dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>Pump and additive</source>
        <translation>Pompe et additif</translation>
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
        <translation>Horloges</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/timetable_sheet.py"/>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Rule</source>
        <translation>Règle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>All plans</source>
        <translation>Tous les plans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/together.py"/>
        <source>In a week</source>
        <translation>Dans une semaine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Goes on from the page before:</source>
        <translation>Suite de la page d'avant&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Handle with care</source>
        <translation>À manier avec soin</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Test again</source>
        <translation>Tester de nouveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Refill</source>
        <translation>Remplir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Totals</source>
        <translation>Totaux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>Whole jug</source>
        <translation>Bidon entier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>50&#xa0;mm at full size</source>
        <translation>50&#xa0;mm réels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>h after the reading</source>
        <translation>h après le relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>days after the reading</source>
        <translation>jours après le relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/card/words.py"/>
        <source>{page} of {pages}</source>
        <extracomment>page_of</extracomment>
        <translation>{page} sur {pages}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Before you leave</source>
        <translation>Avant de partir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away until</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Absent jusqu'au</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>like 2026-12-20 18:00</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>comme 2026-12-20 18:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Going away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Partir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Due already</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Déjà à faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Falls into the time away</source>
        <extracomment>AbsencePage.__init__</extracomment>
        <translation>Tombe pendant l'absence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/absence_page.py"/>
        <source>Away {until}.</source>
        <extracomment>AbsencePage.show_absence</extracomment>
        <translation>Absent {until}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>The question has changed</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>La question a changé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>How this was worked out</source>
        <translation>Comment cela a été calculé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide the working</source>
        <translation>Cacher le calcul</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>Hide what else it does</source>
        <translation>Cacher ses autres effets</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_panel.py"/>
        <source>There is nothing to show yet.</source>
        <extracomment>AnswerPanel.set_stale</extracomment>
        <translation>Il n'y a encore rien à montrer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/answer_parts.py"/>
        <source>No figure yet</source>
        <extracomment>Figure.set_figure</extracomment>
        <translation>Pas encore de chiffre</translation>
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
        <translation>Quand</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>What</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Quoi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Holds</source>
        <translation>Contient</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Backups</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Copies de sauvegarde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Restore this copy</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Restaurer cette copie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Save a copy elsewhere</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Enregistrer une copie ailleurs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Open the folder</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Ouvrir le dossier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>One log for several &amp;laptops</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>Un journal pour plusieurs &amp;portables</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Yes, restore it</source>
        <extracomment>BackupsWindow.__init__, NoticePage.__init__</extracomment>
        <translation>O&amp;ui, la restaurer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>&amp;Keep the log as it is</source>
        <extracomment>BackupsWindow.__init__</extracomment>
        <translation>&amp;Garder le journal tel quel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Copies of the log</source>
        <extracomment>BackupsWindow._list</extracomment>
        <translation>Copies du journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Choose a copy of the list that can be read.</source>
        <extracomment>BackupsWindow._selected</extracomment>
        <translation>Choisissez dans la liste une copie lisible.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Save a copy of the log</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Enregistrer une copie du journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/backups_window.py"/>
        <source>Log (*.sqlite)</source>
        <extracomment>BackupsWindow._choose_place</extracomment>
        <translation>Journal (*.sqlite)</translation>
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
        <translation>L'essai {number} a duré</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run {number} gave</source>
        <extracomment>Runs.__init__</extracomment>
        <translation>L'essai {number} a donné</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Run it {text}&#xa0;s</source>
        <extracomment>Runs.propose</extracomment>
        <translation>Faire tourner {text}&#xa0;s</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Calibration</source>
        <extracomment>CalibrationStep.__init__, calibration</extracomment>
        <translation>Étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>&amp;New calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>&amp;Nouvel étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Remove calibration</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Retirer l'étalonnage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Running hours</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Heures de marche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Measured with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Mesuré avec</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Finest line of the cylinder</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Graduation la plus fine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Last digit of the scale</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Dernier chiffre, balance</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Water</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>its density counts</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>sa densité compte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>By</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Par</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Timed with</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Chronométré avec</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Doses in a run</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Doses par essai</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Air pressure</source>
        <extracomment>CalibrationStep.__init__</extracomment>
        <translation>Pression de l'air</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>The head has run {said}.</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>La tête a tourné {said}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/calibration_form.py"/>
        <source>Take {text}&#xa0;h</source>
        <extracomment>CalibrationStep.propose_hours</extracomment>
        <translation>Prendre {text}&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>NOT A PLAN</source>
        <translation>PAS UN PLAN</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Save card</source>
        <extracomment>CardActions.__init__, QuestionWindow.__init__</extracomment>
        <translation>&amp;Enregistrer la fiche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Save the dose card as a PDF file</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>Enregistrer la fiche de dosage en fichier PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Print card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>&amp;Imprimer la fiche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Look at card</source>
        <extracomment>CardActions.__init__</extracomment>
        <translation>&amp;Voir la fiche</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>There is no plan yet: the sheet has no answer.</source>
        <extracomment>CardActions.__init__, CardActions.set_plan, CardActions.forget</extracomment>
        <translation>Il n'y a pas encore de plan&#xa0;: la feuille n'a pas de réponse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>dose card {plan_id}.pdf</source>
        <extracomment>CardActions._save</extracomment>
        <translation>fiche de dosage {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} saved as {path}. Take down the older one.</source>
        <extracomment>CardActions.write</extracomment>
        <translation>Fiche {plan_id} enregistrée sous {path}. Décrochez l'ancienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No printer is set up on this computer. Save the card as PDF instead.</source>
        <extracomment>CardActions._print</extracomment>
        <translation>Aucune imprimante n'est installée sur cet ordinateur. Enregistrez plutôt la fiche en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>Card {plan_id} sent to the printer. Take down the older one.</source>
        <extracomment>CardActions.send</extracomment>
        <translation>Fiche {plan_id} envoyée à l'imprimante. Décrochez l'ancienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_actions.py"/>
        <source>No card is made. {why}</source>
        <extracomment>CardActions._allowed</extracomment>
        <translation>Aucune fiche n'est faite. {why}</translation>
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
        <translation>Fiche de dosage</translation>
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
        <translation>Comme le voit un copieur, &amp;noir et blanc seulement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>The first {count} of {made} pages; all of them are printed and saved.</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Les {count} premières pages sur {made}&#xa0;; toutes sont imprimées et enregistrées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/card_preview.py"/>
        <source>Page {page} of {made}: {title}</source>
        <extracomment>CardPreview._paint</extracomment>
        <translation>Page {page} sur {made}&#xa0;: {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Drag the ring, or press Shift and an arrow key:</source>
        <translation>Tirez l'anneau, ou pressez Maj et une flèche&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>Chart of the correction</source>
        <extracomment>RampChart.__init__</extracomment>
        <translation>Graphique de la correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>This is the fastest allowed. </source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>C'est la plus rapide permise. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart.py"/>
        <source>{held}Reaches {target} on {ends}. Escape takes it back.</source>
        <extracomment>RampChart._show_readout</extracomment>
        <translation>{held}Atteint {target} le {ends}. Échap reprend l'ancienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>Wed 28 Nov</source>
        <extracomment>time_ticks</extracomment>
        <translation>mer 28 nov</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_axis.py"/>
        <source>May 2026</source>
        <extracomment>long_ticks</extracomment>
        <translation>mai 2026</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;drawing (SVG)</source>
        <translation>Enregistrer en &amp;dessin (SVG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save as a &amp;picture (PNG)</source>
        <translation>Enregistrer en &amp;image (PNG)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save the &amp;figures (CSV)</source>
        <translation>Enregistrer les &amp;chiffres (CSV)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Drawing (*.svg)</source>
        <translation>Dessin (*.svg)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Picture (*.png)</source>
        <translation>Image (*.png)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Spreadsheet as CSV (*.csv)</source>
        <translation>Tableau en CSV (*.csv)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart</source>
        <translation>Enregistrer ce graphique</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Save this chart as a drawing, a picture or its figures (Ctrl+Shift+S)</source>
        <translation>Enregistrer ce graphique en dessin, en image ou en chiffres (Ctrl+Maj+S)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>Saved {name}.</source>
        <translation>Enregistré&#xa0;: {name}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_export.py"/>
        <source>The chart could not be written there. Choose another folder.</source>
        <translation>Le graphique n'a pas pu y être écrit. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_paint.py"/>
        <source>Title</source>
        <extracomment>picture</extracomment>
        <translation>Titre</translation>
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
        <translation>mL par dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_picture.py"/>
        <source>aragonite</source>
        <extracomment>Picture._show_water</extracomment>
        <translation>aragonite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines; Shift and an arrow key choose a slower pace.</source>
        <translation>Les flèches lisent les lignes&#xa0;; Maj et une flèche choisissent une allure plus lente.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Arrow keys read the lines.</source>
        <translation>Les flèches lisent les lignes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>plan {plan} {view_unit} ({low} to {high})</source>
        <extracomment>reading_at</extracomment>
        <translation>plan {plan} {view_unit} ({low} à {high})</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>pH {before}, after a dose {after}</source>
        <extracomment>_water_at</extracomment>
        <translation>pH {before}, après une dose {after}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{at} {m_value} {view_unit}, {place} the band</source>
        <extracomment>_retests</extracomment>
        <translation>{at} {m_value} {view_unit}, {place} la bande</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>Readings: {said}. </source>
        <extracomment>_retests</extracomment>
        <translation>Relevés&#xa0;: {said}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>No reading since the start. </source>
        <extracomment>_retests</extracomment>
        <translation>Aucun relevé depuis le début. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/chart_words.py"/>
        <source>{title} from {measured} to {target} {view_unit}, reached on {ramp_end}, with {size} doses shown. At the end of the chart: {ends}. {view}{keys_followed}</source>
        <extracomment>in_words</extracomment>
        <translation>{title} de {measured} à {target} {view_unit}, atteint le {ramp_end}, avec {size} doses montrées. À la fin du graphique&#xa0;: {ends}. {view}{keys_followed}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/clock_field.py"/>
        <source>{quantity}, time of day</source>
        <extracomment>ClockField.set_spoken_name</extracomment>
        <translation>{quantity}, heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>There is no plan to follow now, so there are no contingency cards. Take down those of an older plan.</source>
        <translation>Il n'y a pas de plan à suivre maintenant, donc pas de fiches de secours. Décrochez celles d'un plan plus ancien.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Contingency cards</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Fiches de &amp;secours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Four cards for whoever looks after the tank: high test, missed days, failed pump, new batch.</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>Quatre fiches pour qui s'occupe du bac&#xa0;: test trop haut, jours manqués, pompe en panne, nouvelle préparation.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Save all as PDF</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>&amp;Enregistrer tout en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>&amp;Print all</source>
        <extracomment>ContingencyActions.__init__</extracomment>
        <translation>&amp;Imprimer tout</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} saved as {path}. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.write</extracomment>
        <translation>Fiches de secours du plan {plan_id} enregistrées sous {path}. Accrochez-les à côté de sa fiche de dosage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Contingency cards of plan {plan_id} sent to the printer. Hang them beside its dose card.</source>
        <extracomment>ContingencyActions.send</extracomment>
        <translation>Fiches de secours du plan {plan_id} envoyées à l'imprimante. Accrochez-les à côté de sa fiche de dosage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>contingency cards {plan_id}.pdf</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>fiches de secours {plan_id}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>Save contingency cards as PDF</source>
        <extracomment>ContingencyActions._save</extracomment>
        <translation>Enregistrer les fiches de secours en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/contingency_actions.py"/>
        <source>No printer is set up on this computer. Save the cards as PDF instead.</source>
        <extracomment>ContingencyActions._print</extracomment>
        <translation>Aucune imprimante n'est installée sur cet ordinateur. Enregistrez plutôt les fiches en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The water</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>L'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Relever</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>How the volume is known</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Origine du volume</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Measured</source>
        <extracomment>CorrectForm._water, LogForm._make_fields</extracomment>
        <translation>Mesuré</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../glossary.toml"/>
        <source>Net volume</source>
        <extracomment>CorrectForm._water, net volume</extracomment>
        <translation>Volume net</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Within</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>À tant près</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Alkalinity now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Alcalinité actuelle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Calcium now</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Calcium actuel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Evaporates</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>S'évapore</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Name of the system</source>
        <extracomment>CorrectForm._water</extracomment>
        <translation>Nom du système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The change</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Le changement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Raise to</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Relever à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>At most</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Used by the tank</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Consommé par le bac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Needed only to go beyond the recommended rise; printed on the card.</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Nécessaire seulement pour dépasser la hausse recommandée&#xa0;; imprimé sur la fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Reason for a faster rise</source>
        <extracomment>CorrectForm._change</extracomment>
        <translation>Raison d'aller plus vite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>The additive</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>L'additif</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New &amp;jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Nouveau &amp;bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove jug</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Retirer le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Jug on the shelf</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Bidon sur l'étagère</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>What is in it</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Son contenu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>And of the second</source>
        <extracomment>CorrectForm._additive</extracomment>
        <translation>Et du second</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed on</source>
        <extracomment>CorrectForm._additive, StockForm._label</extracomment>
        <translation>Préparé le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>By its label, a dose of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Étiquette&#xa0;: une dose de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>in water of</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>dans une eau de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>raises by</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>relève de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Name of the jug</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Nom du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity</source>
        <extracomment>CorrectForm._additive, StockForm._contents</extracomment>
        <translation>Pureté</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Coolest it gets</source>
        <extracomment>CorrectForm._additive, StockForm._jug</extracomment>
        <translation>Au plus froid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>The pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>La pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>New p&amp;ump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Nouvelle p&amp;ompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove pump</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Retirer la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <source>Flow</source>
        <extracomment>CorrectForm._pump</extracomment>
        <translation>Débit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Doses a day</source>
        <extracomment>CorrectForm._pump, PumpForm._pump, TimetableForm._make</extracomment>
        <translation>Doses par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Step</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Runs at most</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Tourne au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Name of the pump</source>
        <extracomment>CorrectForm._pump, PumpForm._pump</extracomment>
        <translation>Nom de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed jug</source>
        <translation>Bidon sans nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_records.py"/>
        <location filename="../../desktop/evenwater/ui/foods_records.py"/>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Unnamed pump</source>
        <extracomment>FoodsRecords.pumps</extracomment>
        <translation>Pompe sans nom</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>This batch is not in the jug yet. Put it in on the Stocks sheet before a card is made.</source>
        <translation>Cette préparation n'est pas encore dans le bidon. Mettez-la dans le bidon, sur la feuille Solutions, avant de faire une fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>The ramp appears here as soon as the question is complete.</source>
        <translation>La rampe apparaît ici dès que la question est complète.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No jug is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>Aucun bidon n'est choisi.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No pump is chosen.</source>
        <extracomment>CorrectSheet._fill</extracomment>
        <translation>Aucune pompe n'est choisie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Add a system to begin.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Ajoutez un système pour commencer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>No plan, so no ramp.</source>
        <extracomment>CorrectSheet.recompute</extracomment>
        <translation>Pas de plan, donc pas de rampe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/correct_sheet.py"/>
        <source>Use {use}</source>
        <extracomment>CorrectSheet._offer_use</extracomment>
        <translation>Prendre {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Spreadsheet as CSV (*.csv *.CSV *.tsv *.txt);;Every file (*)</source>
        <translation>Tableau en CSV (*.csv *.CSV *.tsv *.txt);;Tous les fichiers (*)</translation>
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
        <translation>Choisir un tableau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/dialogs.py"/>
        <source>Calendar (*.ics)</source>
        <extracomment>Dialogs.save_calendar</extracomment>
        <translation>Calendrier (*.ics)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Wrong</source>
        <translation>Défaut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due</source>
        <translation>À faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>Due soon</source>
        <translation>Bientôt à faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/duty_list.py"/>
        <source>What is wrong and what is due</source>
        <extracomment>DutyList.__init__</extracomment>
        <translation>Ce qui ne va pas et ce qui est à faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>&amp;Save card as PDF</source>
        <translation>&amp;Enregistrer la fiche en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Save emergency card as PDF</source>
        <translation>Enregistrer la fiche d'urgence en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>Look at emergency card</source>
        <translation>Voir la fiche d'urgence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card</source>
        <extracomment>EmergencyActions.__init__</extracomment>
        <translation>fiche d'urgence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/emergency_actions.py"/>
        <source>emergency card.pdf</source>
        <extracomment>EmergencyActions.file_name</extracomment>
        <translation>fiche d'urgence.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Nothing to show yet. What is exchanged is entered at the left.</source>
        <translation>Rien à montrer encore. Ce qui est renouvelé se saisit à gauche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>settles</source>
        <translation>se stabilise</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <source>Chart of the exchange</source>
        <extracomment>ExchangeChart.__init__</extracomment>
        <translation>Graphique du renouvellement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_chart.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>{spoken} The arrow keys read it day by day.</source>
        <extracomment>ExchangeChart.render, TogetherChart.render</extracomment>
        <translation>{spoken} Les flèches le lisent jour par jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>natural seawater, assumed</source>
        <translation>eau de mer naturelle, supposée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>as the tank, assumed</source>
        <translation>comme le bac, supposé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>How it is said</source>
        <extracomment>ExchangeForm.__init__</extracomment>
        <translation>Façon de le dire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The two pumps</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Les deux pompes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Out and in, each</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Sortie et entrée, chacune</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Batch change</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Changement d'un coup</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Once in so many days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Une fois en tant de jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old water out</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Eau usée sortie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Eau neuve entrée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Old-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Bidon d'eau usée&#xa0;: tient</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New-water jug holds</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Bidon d'eau neuve&#xa0;: tient</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Look ahead, days</source>
        <extracomment>ExchangeForm._pair</extracomment>
        <translation>Regarder en avant, jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>The new water</source>
        <extracomment>ExchangeForm._new_water</extracomment>
        <translation>L'eau neuve</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The mixing bucket</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Le seau de mélange</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>New water in it</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Eau neuve dedans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>By the label: salt mix</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>D'après l'étiquette&#xa0;: sel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>in so much water</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>dans tant d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>gives salinity</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>donne une salinité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>Salinity found</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>Salinité trouvée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>when all is clear</source>
        <extracomment>ExchangeForm._bucket</extracomment>
        <translation>quand tout est clair</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>What leaves besides</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>Ce qui part en outre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>{name}, per day</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>{name}, par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_form.py"/>
        <source>by skimmer, algae, media</source>
        <extracomment>ExchangeForm._besides</extracomment>
        <translation>écumeur, algues, filtration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No system yet. Add one in the list at the left.</source>
        <translation>Pas encore de système. Ajoutez-en un dans la liste à gauche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Enter what the two pumps move in a day.</source>
        <translation>Saisissez ce que les deux pompes déplacent en un jour.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The Upkeep sheet has no plan for what is used, so no dosing is reckoned with.</source>
        <translation>La feuille Entretien n'a pas de plan pour ce qui est consommé, donc aucun dosage n'est compté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>No figures of {names} yet: nothing is reckoned of it. See the Foods sheet.</source>
        <translation>Pas encore de chiffres de {names}&#xa0;: rien n'en est calculé. Voyez la feuille Nourritures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Every value</source>
        <translation>Toutes les valeurs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>The pair and its jugs</source>
        <translation>La paire et ses bidons</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>What the dosing plan becomes</source>
        <translation>Ce que devient le plan de dosage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To be known</source>
        <translation>À savoir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>Now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>Actuel</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Settles at</source>
        <translation>Se stabilise à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>To keep it where it is</source>
        <translation>Pour la garder où elle est</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>with it</source>
        <translation>avec lui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>a day</source>
        <translation>par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show</source>
        <extracomment>ExchangeSheet.__init__, LogSheet.__init__</extracomment>
        <translation>Montrer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/exchange_sheet.py"/>
        <source>Open it on the &amp;Correct sheet</source>
        <extracomment>ExchangeSheet.__init__</extracomment>
        <translation>Ouvrir sur la feuille &amp;Correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Correct {parameter}</source>
        <extracomment>FindActions._doings</extracomment>
        <translation>Corriger&#xa0;: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>on the {sheet} sheet</source>
        <extracomment>FindActions._elsewhere</extracomment>
        <translation>sur la feuille {sheet}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Explain the field with the focus</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Expliquer le champ actif</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the glossary</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Montrer le glossaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Show the guide</source>
        <extracomment>FindActions._helps</extracomment>
        <translation>Montrer le guide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/find_actions.py"/>
        <source>Not possible now.</source>
        <extracomment>FindActions._why_not</extracomment>
        <translation>Pas possible maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Find an action, a sheet, a system, a jug, a pump or a word of the trade</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Trouver une action, une feuille, un système, un bidon, une pompe ou un mot du métier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>What was found</source>
        <extracomment>FinderPanel.__init__</extracomment>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>{n} found</source>
        <extracomment>for 1: {n} found; FinderPanel._search</extracomment>
        <translation>
            <numerusform>{n} trouvé</numerusform>
            <numerusform>{n} trouvés</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/finder_panel.py"/>
        <source>Nothing has these words.</source>
        <extracomment>FinderPanel._search</extracomment>
        <translation>Rien n'a ces mots.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>This plan was kept by another version and cannot be read, so it must not be followed. End it, then plan again from a fresh reading.</source>
        <translation>Ce plan a été gardé par une autre version et ne peut pas être lu&#xa0;: il ne doit donc pas être suivi. Terminez-le, puis planifiez de nouveau à partir d'un relevé récent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show the &amp;plan</source>
        <translation>Montrer le &amp;plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Show a new &amp;correction</source>
        <translation>Montrer une nouvelle &amp;correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Readings since the start</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Relevés depuis le début</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Hide the readings</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Cacher les relevés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Chart of the plan that is followed</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Graphique du plan suivi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;Note a reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>&amp;Noter un relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan a&amp;gain from the reading</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Nou&amp;veau plan d'après le relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>&amp;End this plan</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>&amp;Terminer ce plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>It is too high: see &amp;Recovery</source>
        <extracomment>FollowPage.__init__</extracomment>
        <translation>Trop haut&#xa0;: voir &amp;Rétablissement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} cannot be read.</source>
        <extracomment>FollowPage._say</extracomment>
        <translation>Le plan {plan_id} ne peut pas être lu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>There is no reading to go on from yet.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>Il n'y a pas encore de relevé d'où repartir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>No ramp can be drawn of it.</source>
        <extracomment>FollowPage._render</extracomment>
        <translation>Aucune rampe ne peut en être dessinée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>The reading stands in the form. The plan goes on until another is started.</source>
        <extracomment>FollowPage._plan_again</extracomment>
        <translation>Le relevé est dans le formulaire. Le plan continue jusqu'à ce qu'un autre soit commencé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>stop rule</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>règle d'arrêt</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>ended by hand</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>terminé à la main</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Ended plan {plan_id} for {parameter}: {reason}.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Plan {plan_id} terminé pour {parameter}&#xa0;: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/follow_page.py"/>
        <source>Plan {plan_id} has ended. Take its card down and stop the pump.</source>
        <extracomment>FollowPage._end</extracomment>
        <translation>Le plan {plan_id} est terminé. Décrochez sa fiche et arrêtez la pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>Chart of nitrate and phosphate</source>
        <extracomment>FoodsChart.__init__</extracomment>
        <translation>Graphique du nitrate et du phosphate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_chart.py"/>
        <source>{week}&#xa0;weeks</source>
        <extracomment>FoodsChart._paint</extracomment>
        <translation>{week}&#xa0;semaines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>La nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Name of the food</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Nom de la nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>What it is</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Ce que c'est</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Opened on</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Ouverte le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2026-11-25</source>
        <extracomment>FoodsForm._food, PumpForm._head, StockForm._label</extracomment>
        <translation>comme 2026-11-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Keeps once opened, days</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Se garde ouverte, jours</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as its label says</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>comme le dit son étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Kept cold</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Gardée au froid</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>In the jug when opened</source>
        <extracomment>FoodsForm._food</extracomment>
        <translation>Bidon à l'ouverture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The label says</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>L'étiquette dit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Azote</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>en N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Phosphorus</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Phosphore</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as P, not as P2O5</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>en P, pas en P2O5</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Protéines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>÷ 6.25 is nitrogen</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>÷ 6,25 fait de l'azote</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Nitrogen, if it says so</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Azote, si elle le dit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as N; goes before protein</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>en N&#xa0;; avant les protéines</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Density</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Densité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>as heavy as water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>comme l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>It raises</source>
        <extracomment>FoodsForm._carries, StockForm._contents</extracomment>
        <translation>Elle relève</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>So many mL</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>Tant de mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>raise so much water</source>
        <extracomment>FoodsForm._carries</extracomment>
        <translation>relèvent tant d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Le jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Given in a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Donné en un jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Feedings a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Repas par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or the pump's doses a day</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>ou doses de pompe par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>Is it given</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Est-elle donnée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By which pump</source>
        <extracomment>FoodsForm._day</extracomment>
        <translation>Par quelle pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>By hand, or another pump</source>
        <extracomment>FoodsForm._day, FoodsForm.set_pumps</extracomment>
        <translation>À la main, ou une autre pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>The line</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>Le tuyau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, inside</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Tuyau, intérieur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>or as its pump has it</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>ou comme sa pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Line, length</source>
        <extracomment>FoodsForm._line, PumpForm._head</extracomment>
        <translation>Tuyau, longueur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_form.py"/>
        <source>from jug to water</source>
        <extracomment>FoodsForm._line</extracomment>
        <translation>du bidon à l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>No food yet. Press Add a food.</source>
        <translation>Pas encore de nourriture. Appuyez sur Ajouter une nourriture.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Foods of this system</source>
        <translation>Nourritures de ce système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Jug and line</source>
        <translation>Bidon et tuyau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>What all of them bring</source>
        <translation>Ce que toutes apportent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Where food takes it, without doses and use</source>
        <translation>Où les nourritures la mènent, sans doses ni consommation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Add a foo&amp;d</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>Ajouter une &amp;nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>Re&amp;move this food</source>
        <extracomment>FoodsSheet.__init__</extracomment>
        <translation>&amp;Retirer cette nourriture</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no system yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Il n'y a pas encore de système.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/foods_sheet.py"/>
        <source>There is no food yet.</source>
        <extracomment>FoodsSheet._fill</extracomment>
        <translation>Il n'y a pas encore de nourriture.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Answer</source>
        <extracomment>Column.__init__, QuestionWindow.__init__</extracomment>
        <translation>Réponse</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_column.py"/>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>There is no answer yet.</source>
        <extracomment>Column.focusInEvent, RecoverySheet._show_noted</extracomment>
        <translation>Il n'y a pas encore de réponse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More</source>
        <extracomment>Step.__init__, Step.open</extracomment>
        <translation>Plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>More about {title}</source>
        <extracomment>Step.__init__</extracomment>
        <translation>Plus sur&#xa0;: {title}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/form_parts.py"/>
        <source>Less</source>
        <extracomment>Step.open</extracomment>
        <translation>Moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Glossary</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Glossaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Find a word</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Trouver un mot</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Words of the trade</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Mots du métier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>See also</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Voir aussi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>&amp;Back</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Back to the term before</source>
        <extracomment>GlossaryWindow.__init__</extracomment>
        <translation>Retour au terme d'avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>No such word here.</source>
        <extracomment>GlossaryWindow._list</extracomment>
        <translation>Ce mot n'est pas ici.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>This is the first term that was looked at.</source>
        <extracomment>GlossaryWindow._chosen</extracomment>
        <translation>C'est le premier terme regardé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/glossary_window.py"/>
        <source>Show {term}</source>
        <extracomment>GlossaryWindow._show_links</extracomment>
        <translation>Montrer {term}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Guide</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Guide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/guide_window.py"/>
        <source>Chapters</source>
        <extracomment>GuideWindow.__init__</extracomment>
        <translation>Chapitres</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Show the help</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Montrer l'aide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>Help: glossary and guide. F1 in a field says why it is there.</source>
        <extracomment>HelpButton.__init__</extracomment>
        <translation>Aide&#xa0;: glossaire et guide. F1 dans un champ dit pourquoi il est là.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>&amp;Glossary</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>&amp;Glossaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>G&amp;uide</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>G&amp;uide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_button.py"/>
        <source>F1 in a field says why it is there</source>
        <extracomment>HelpButton._offer</extracomment>
        <translation>F1 dans un champ dit pourquoi il est là</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>Why this is asked (F1)</source>
        <extracomment>WhyMark.__init__</extracomment>
        <translation>Pourquoi c'est demandé (F1)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/help_slip.py"/>
        <source>F1 again: glossary. Escape: close.</source>
        <extracomment>WhySlip.__init__</extracomment>
        <translation>Encore F1&#xa0;: glossaire. Échap&#xa0;: fermer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose a cell to read what becomes of it.</source>
        <translation>Choisissez une case pour lire ce qu'elle devient.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Stopped. Nothing was imported.</source>
        <translation>Arrêté. Rien n'a été importé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Choose another &amp;file</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>&amp;Choisir un autre fichier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>What becomes of the chosen cell</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Ce que devient la case choisie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Show only &amp;rows with something wrong</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Ne montrer que les &amp;lignes avec un défaut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>&amp;Stop</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>&amp;Arrêter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Import</source>
        <extracomment>ImportPage._make_parts</extracomment>
        <translation>Importer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>&amp;Close</source>
        <extracomment>ImportPage._make_parts, QuestionWindow.__init__</extracomment>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The file is being read.</source>
        <extracomment>ImportPage._look, ImportPage._came</extracomment>
        <translation>Le fichier est en lecture.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>{done} of about {most} rows are read.</source>
        <extracomment>ImportPage._came</extracomment>
        <translation>{done} lignes sur environ {most} sont lues.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing can be imported yet: see the questions at the left.</source>
        <extracomment>ImportPage._show_button</extracomment>
        <translation>Rien ne peut encore être importé&#xa0;: voyez les questions à gauche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>The readings are being imported.</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>Les relevés sont en cours d'importation.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_page.py"/>
        <source>Nothing was imported. {reason}</source>
        <extracomment>ImportPage._import</extracomment>
        <translation>Rien n'a été importé. {reason}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose these first</source>
        <translation>Choisissez d'abord ceci</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed. See whether it is right</source>
        <translation>Deviné. Voyez si c'est juste</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>As the file says</source>
        <translation>Comme le dit le fichier</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>To be chosen.</source>
        <translation>À choisir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Guessed.</source>
        <translation>Deviné.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Read in the file.</source>
        <translation>Lu dans le fichier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Chosen by you.</source>
        <translation>Choisi par vous.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_points.py"/>
        <source>Choose</source>
        <extracomment>PointRow.__init__</extracomment>
        <translation>Choisir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What is wrong with it</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not likely: </source>
        <translation>▲ Peu vraisemblable&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>There twice: </source>
        <translation>Deux fois là&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>▲ Not taken: </source>
        <translation>▲ Non pris&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>What the import would take</source>
        <extracomment>PreviewTable.__init__</extracomment>
        <translation>Ce que l'importation prendrait</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Line {line}: {current}</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Ligne {line}&#xa0;: {current}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_table.py"/>
        <source>Taken as it is shown.</source>
        <extracomment>PreviewTable._chosen</extracomment>
        <translation>Pris tel qu'affiché.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file cannot be opened. See whether it is still there, and may be read.</source>
        <translation>Le fichier ne s'ouvre pas. Voyez s'il est encore là et s'il peut être lu.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/import_work.py"/>
        <source>The file could not be read to its end. Choose it again.</source>
        <translation>Le fichier n'a pas pu être lu jusqu'au bout. Choisissez-le de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>low</source>
        <extracomment>JugModel.data</extracomment>
        <translation>bas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_list.py"/>
        <source>All jugs, what is in them and how long they last</source>
        <extracomment>JugList.__init__</extracomment>
        <translation>Tous les bidons, leur contenu et combien de temps ils durent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>No jug is on the shelf yet. Add one at the left.</source>
        <translation>Il n'y a encore aucun bidon sur l'étagère. Ajoutez-en un à gauche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Primed no&amp;w: liquid at the outlet</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Amor&amp;cé maintenant&#xa0;: liquide à la sortie</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Remove this level</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Retirer ce niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>It holds, when full</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Il tient, plein</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Below the intake</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Sous la prise</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>A level is read to</source>
        <extracomment>JugPage.__init__</extracomment>
        <translation>Un niveau se lit à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills of this jug</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Niveaux et remplissages de ce bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Read the level</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Lire le niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The jug itself</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Le bidon lui-même</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Levels and refills</source>
        <extracomment>JugPage._lay_out</extracomment>
        <translation>Niveaux et remplissages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>else as its batch says</source>
        <extracomment>JugPage._render</extracomment>
        <translation>sinon comme le dit sa préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>give or take; usually 1&#xa0;% of it</source>
        <extracomment>JugPage._render</extracomment>
        <translation>près&#xa0;; d'ordinaire 1&#xa0;% du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>what the pump cannot reach</source>
        <extracomment>JugPage._render</extracomment>
        <translation>ce que la pompe n'atteint pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Choose a level of the list first.</source>
        <extracomment>JugPage._chosen</extracomment>
        <translation>Choisissez d'abord un niveau de la liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is noted.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Le niveau est noté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Le remplissage est noté. Continuez avec la prochaine dose&#xa0;; rien n'est rattrapé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The refill is noted. Prime the line before the next dose.</source>
        <extracomment>JugPage._noted</extracomment>
        <translation>Le remplissage est noté. Amorcez le tuyau avant la prochaine dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The line is primed. Go on with the next dose; nothing is made up.</source>
        <extracomment>JugPage._primed_now</extracomment>
        <translation>Le tuyau est amorcé. Continuez avec la prochaine dose&#xa0;; rien n'est rattrapé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>The level is off the list. Undo brings it back.</source>
        <extracomment>JugPage._remove</extracomment>
        <translation>Le niveau n'est plus dans la liste. Annuler le remet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>{pump} is set by the new flow.</source>
        <extracomment>JugPage._use_flow</extracomment>
        <translation>{pump}&#xa0;: réglée d'après le nouveau débit.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/jug_page.py"/>
        <source>Cards {cards} are out of date: print again before the pump is set.</source>
        <extracomment>for 1: Card {cards} is out of date: print again before the pump is set.; JugPage._use_flow</extracomment>
        <translation>
            <numerusform>La fiche {cards} est périmée&#xa0;: imprimez de nouveau avant de régler la pompe.</numerusform>
            <numerusform>Les fiches {cards} sont périmées&#xa0;: imprimez de nouveau avant de régler la pompe.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not looked at</source>
        <translation>Pas regardé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>What the levels say of the pump</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Ce que les niveaux disent de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Look at this, in this order:</source>
        <extracomment>CheckPanel.__init__</extracomment>
        <translation>Regardez ceci, dans cet ordre&#xa0;:</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>&amp;Use this flow</source>
        <extracomment>CheckPanel.__init__, PumpsSheet.__init__</extracomment>
        <translation>&amp;Utiliser ce débit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>If the whole jug ran in at once</source>
        <extracomment>RunInPanel.__init__</extracomment>
        <translation>Si tout le bidon se vidait d'un coup</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jug_panels.py"/>
        <source>Before the jug is connected</source>
        <extracomment>ChecklistPanel.__init__</extracomment>
        <translation>Avant de brancher le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No jug yet</source>
        <translation>Pas encore de bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>Plan an a&amp;bsence</source>
        <translation>Prévoir une a&amp;bsence</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>&amp;Back to the jug</source>
        <translation>&amp;Retour au bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs</source>
        <extracomment>JugsSheet.__init__, JugsSheet._headline</extracomment>
        <translation>Tous les bidons</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>to stop</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>à arrêter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>with a pump off</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>avec une pompe en écart</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/jugs_sheet.py"/>
        <source>All jugs: {said}</source>
        <extracomment>JugsSheet._headline</extracomment>
        <translation>Tous les bidons&#xa0;: {said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Save label as PDF</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Enregistrer l'étiquette en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Print label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Imprimer l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>&amp;Look at label</source>
        <extracomment>LabelActions.__init__</extracomment>
        <translation>&amp;Voir l'étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>There is no label yet: the batch is not complete.</source>
        <extracomment>LabelActions.__init__, LabelActions.set_label</extracomment>
        <translation>Il n'y a pas encore d'étiquette&#xa0;: la préparation n'est pas complète.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label saved as {path}.</source>
        <extracomment>LabelActions.write</extracomment>
        <translation>Étiquette enregistrée sous {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Label sent to the printer.</source>
        <extracomment>LabelActions.send</extracomment>
        <translation>Étiquette envoyée à l'imprimante.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>jug label {batch}.pdf</source>
        <extracomment>LabelActions._save</extracomment>
        <translation>étiquette {batch}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>No printer is set up on this computer. Save the label as PDF instead.</source>
        <extracomment>LabelActions._print</extracomment>
        <translation>Aucune imprimante n'est installée sur cet ordinateur. Enregistrez plutôt l'étiquette en PDF.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>Jug label</source>
        <extracomment>LabelActions._look</extracomment>
        <translation>Étiquette de bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/label_actions.py"/>
        <source>This batch has no label yet.</source>
        <extracomment>LabelActions._show_preview</extracomment>
        <translation>Cette préparation n'a pas encore d'étiquette.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Mixed anew? Put the new batch in the jug on the Stocks sheet as well: cards made for another strength become void there.</source>
        <translation>Préparé de nouveau&#xa0;? Mettez aussi la nouvelle préparation dans le bidon sur la feuille Solutions&#xa0;: les fiches faites pour une autre concentration y sont annulées.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Is the line primed? Run the pump until liquid stands at the outlet.</source>
        <translation>Le tuyau est-il amorcé&#xa0;? Faites tourner la pompe jusqu'à ce que du liquide soit à la sortie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level now</source>
        <extracomment>LevelForm.__init__, LevelForm._show_refill</extracomment>
        <translation>Niveau maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level before the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Niveau avant le remplissage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Who</source>
        <extracomment>LevelForm.__init__, LogForm._make_fields</extracomment>
        <translation>Qui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>now, unless you say when</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>maintenant, sauf indication</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Note this level</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Noter ce niveau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Jug &amp;refilled</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Bidon &amp;rempli</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Liquid at the &amp;outlet: note the refill</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Liquide à la &amp;sortie&#xa0;: noter le remplissage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Not primed &amp;yet: note it so</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>Pas &amp;encore amorcé&#xa0;: le noter ainsi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>&amp;Go back</source>
        <extracomment>LevelForm.__init__</extracomment>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/level_form.py"/>
        <source>Level after the refill</source>
        <extracomment>LevelForm._show_refill</extracomment>
        <translation>Niveau après le remplissage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>sets the pace</source>
        <translation>fixe l'allure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>over the limit</source>
        <translation>au-delà de la limite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>Far from their limits</source>
        <translation>Loin de leurs limites</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/limit_bars.py"/>
        <source>How near each limit is</source>
        <extracomment>LimitBars.__init__</extracomment>
        <translation>Distance à chaque limite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Quarter</source>
        <translation>Trimestre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>mL given</source>
        <translation>mL donnés</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>No readings yet. What is noted at the left appears here.</source>
        <translation>Pas encore de relevés. Ce qui est noté à gauche apparaît ici.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>Chart of the log</source>
        <extracomment>LogChart.__init__</extracomment>
        <translation>Graphique du journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {size} water exchanges</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {size} changements d'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>, {projected} plans drawn as dashed lines</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>, {projected} plans en lignes tiretées</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_chart.py"/>
        <source>{title}: {size} readings, {size_2} doses{exchanges}{plans}. The last: {reading_words}. Plus and minus zoom, the arrow keys move, with Shift they read one reading after the other.</source>
        <extracomment>LogChart._in_words</extracomment>
        <translation>{title}&#xa0;: {size} relevés, {size_2} doses{exchanges}{plans}. Le dernier&#xa0;: {reading_words}. Plus et moins changent l'échelle, les flèches déplacent, avec Maj elles lisent un relevé après l'autre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Saved.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_entering.py"/>
        <source>Logged.</source>
        <extracomment>Entering.log</extracomment>
        <translation>Noté.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The spreadsheet could not be written there. Choose another folder.</source>
        <translation>Le tableau n'a pas pu y être écrit. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>The log could not be read to its end. No spreadsheet was written.</source>
        <translation>Le journal n'a pas pu être lu jusqu'au bout. Aucun tableau n'a été écrit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>There are no readings to save.</source>
        <translation>Il n'y a pas de relevés à enregistrer.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_export.py"/>
        <source>Saved {readings} as {path}.</source>
        <extracomment>write</extracomment>
        <translation>Enregistré&#xa0;: {readings}, sous {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>&amp;Log it</source>
        <extracomment>LogForm.__init__, LogForm.show_entry</extracomment>
        <translation>&amp;Noter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Leave it as it was</source>
        <extracomment>LogForm.__init__</extracomment>
        <translation>Laisser comme c'était</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Note in the log</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Noter dans le journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>From the jug</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Du bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_form.py"/>
        <source>Exchanged</source>
        <extracomment>LogForm._make_fields</extracomment>
        <translation>Changé</translation>
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
        <translation>&amp;Enregistrer le changement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Besides</source>
        <translation>En outre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_list.py"/>
        <source>Entries of the log</source>
        <extracomment>LogList.__init__</extracomment>
        <translation>Entrées du journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>Show the plan</source>
        <translation>Montrer le plan</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_questions.py"/>
        <source>{alike}, was noted {at}{by}. Is this another one?</source>
        <extracomment>LogQuestions.before</extracomment>
        <translation>{alike}, a été noté {at}{by}. Est-ce un autre&#xa0;?</translation>
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
        <translation>Avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Later</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Après</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to earlier readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Déplacer le graphique vers des relevés antérieurs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Move the chart to later readings</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Déplacer le graphique vers des relevés postérieurs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Show on the chart: {span}</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>Montrer sur le graphique&#xa0;: {span}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Change entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>&amp;Changer l'entrée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>&amp;Remove entry</source>
        <extracomment>LogSheet.__init__</extracomment>
        <translation>&amp;Retirer l'entrée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Use per day, learned from the log</source>
        <extracomment>LogSheet._lay_out</extracomment>
        <translation>Consommation journalière, apprise du journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Being worked out.</source>
        <extracomment>LogSheet._show_learned</extracomment>
        <translation>Calcul en cours.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Choose an entry of the list first.</source>
        <extracomment>LogSheet._selected</extracomment>
        <translation>Choisissez d'abord une entrée de la liste.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_sheet.py"/>
        <source>Removed. Undo brings it back.</source>
        <extracomment>LogSheet._remove</extracomment>
        <translation>Retiré. Annuler le remet.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>&amp;Import from a spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>&amp;Importer d'un tableau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Save as &amp;spreadsheet</source>
        <extracomment>LogTransfer.__init__</extracomment>
        <translation>Enregistrer en &amp;tableau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>{name} readings.csv</source>
        <extracomment>LogTransfer._ask_where</extracomment>
        <translation>{name} relevés.csv</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>The readings are being read.</source>
        <extracomment>LogTransfer._save</extracomment>
        <translation>Les relevés sont en lecture.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/log_transfer.py"/>
        <source>Stopped. No spreadsheet was written.</source>
        <extracomment>LogTransfer._ended</extracomment>
        <translation>Arrêté. Aucun tableau n'a été écrit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/main_window.py"/>
        <source>Opening the fish room</source>
        <extracomment>MainWindow.__init__</extracomment>
        <translation>Ouverture de la salle d'aquariums</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/notice_page.py"/>
        <source>&amp;Try again</source>
        <extracomment>NoticePage.__init__</extracomment>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Slower</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Plus lent</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Faster</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Plus vite</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a slower pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Choisir une allure plus lente</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>Choose a faster pace</source>
        <extracomment>PaceButtons.__init__</extracomment>
        <translation>Choisir une allure plus rapide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pace_buttons.py"/>
        <source>This is the fastest pace allowed.</source>
        <extracomment>PaceButtons.offer</extracomment>
        <translation>C'est l'allure la plus rapide permise.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {page} yet: the sheet has no answer.</source>
        <extracomment>PageActions._dress, PageActions.changed</extracomment>
        <translation>Pas encore là ({page})&#xa0;: la feuille n'a pas de réponse.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>It is still being worked out.</source>
        <extracomment>PageActions.halt</extracomment>
        <translation>Le calcul est encore en cours.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} saved as {path}.</source>
        <extracomment>PageActions.write</extracomment>
        <translation>Enregistré&#xa0;: {named}, sous {path}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>{named} sent to the printer.</source>
        <extracomment>PageActions.send</extracomment>
        <translation>Envoyé à l'imprimante&#xa0;: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>No printer is set up on this computer. Save the {named} as PDF instead.</source>
        <extracomment>PageActions._print</extracomment>
        <translation>Aucune imprimante n'est installée sur cet ordinateur. Enregistrez plutôt en PDF&#xa0;: {named}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>Save {named} as PDF</source>
        <extracomment>PageActions._save</extracomment>
        <translation>Enregistrer en PDF&#xa0;: {named}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/page_actions.py"/>
        <source>There is no {named} now. Take down an older one.</source>
        <extracomment>PageActions._show_preview</extracomment>
        <translation>Il n'y en a pas maintenant ({named}). Décrochez une version plus ancienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>S&amp;tart</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Com&amp;mencer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Follow this correction from now on, and note it in the log</source>
        <extracomment>PlanActions.__init__</extracomment>
        <translation>Suivre désormais cette correction, et le noter dans le journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Not started. {why}</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>Non commencé. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>The card of this very plan is out of use. Change the question, or wait a minute, then start.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>La fiche de ce plan même est hors d'usage. Changez la question, ou attendez une minute, puis commencez.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/plan_actions.py"/>
        <source>Plan {plan_id} is started. Hang its card on the stand and take down the older one.</source>
        <extracomment>PlanActions._start</extracomment>
        <translation>Le plan {plan_id} est commencé. Accrochez sa fiche au meuble et décrochez l'ancienne.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Motor</source>
        <extracomment>PumpForm._pump</extracomment>
        <translation>Moteur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Flow in use</source>
        <extracomment>PumpForm._pump</extracomment>
        <translation>Débit en service</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head and line</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Tête et tuyau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Outlet above the water</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Sortie au-dessus de l'eau</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Head fitted on</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Tête montée le</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours it has run</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Heures déjà tournées</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>by now, where it counts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>jusqu'ici, si elle compte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Hours a head lasts</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Durée d'une tête (h)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pump_form.py"/>
        <source>Tubing</source>
        <extracomment>PumpForm._head</extracomment>
        <translation>Tube</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>No pump yet</source>
        <translation>Pas encore de pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>What follows</source>
        <translation>Ce qui s'ensuit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Before it runs by itself</source>
        <translation>Avant qu'elle ne tourne seule</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today</source>
        <extracomment>PumpsSheet.__init__</extracomment>
        <translation>Utiliser le débit &amp;attendu aujourd'hui</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Calibrations of this pump</source>
        <extracomment>PumpsSheet._lay_out</extracomment>
        <translation>Étalonnages de cette pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has no calibration yet.</source>
        <extracomment>PumpsSheet.recompute</extracomment>
        <translation>La pompe n'a pas encore d'étalonnage.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>The pump has this flow already</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>La pompe a déjà ce débit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Only the newest calibration counts</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Seul le dernier étalonnage compte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Use the flow &amp;expected today, {expected}</source>
        <extracomment>PumpsSheet._offer</extracomment>
        <translation>Utiliser le débit &amp;attendu aujourd'hui, {expected}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Card {plan_id} must not be followed. {why} Print a new card.</source>
        <extracomment>PumpsSheet._notes, StocksSheet._note</extracomment>
        <translation>La fiche {plan_id} ne doit pas être suivie. {why} Imprimez une nouvelle fiche.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>With this flow, cards {cards} are no longer right. Print new ones after using it.</source>
        <extracomment>for 1: With this flow, card {cards} is no longer right. Print new ones after using it.; PumpsSheet._notes</extracomment>
        <translation>
            <numerusform>Avec ce débit, la fiche {cards} n'est plus juste. Imprimez-en une nouvelle après l'avoir repris.</numerusform>
            <numerusform>Avec ce débit, les fiches {cards} ne sont plus justes. Imprimez-en de nouvelles après l'avoir repris.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>None yet. Press New calibration, or fill in the runs.</source>
        <extracomment>PumpsSheet._list_calibrations</extracomment>
        <translation>Encore aucun. Appuyez sur Nouvel étalonnage, ou remplissez les essais.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Doses are reckoned with {flow}&#xa0;mL per min from now on.</source>
        <extracomment>PumpsSheet._take_over</extracomment>
        <translation>Les doses sont désormais calculées avec {flow}&#xa0;mL par min.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/pumps_sheet.py"/>
        <source>Cards {cards} are out of date: print new ones.</source>
        <extracomment>for 1: Card {cards} is out of date: print new ones.; _down</extracomment>
        <translation>
            <numerusform>La fiche {cards} est périmée&#xa0;: imprimez-en une nouvelle.</numerusform>
            <numerusform>Les fiches {cards} sont périmées&#xa0;: imprimez-en de nouvelles.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Not converted: correct the number first, or relabel it.</source>
        <translation>Non converti&#xa0;: corrigez d'abord le nombre, ou changez seulement l'unité.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/quantity_field.py"/>
        <source>Unit of {quantity}</source>
        <extracomment>QuantityField._show_units</extracomment>
        <translation>Unité de {quantity}</translation>
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
        <translation>Répondu d'après ce seul fichier. Votre journal n'a pas été consulté, donc rien de ce qui a été dosé avant ne compte.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>There is no plan, so there is no card.</source>
        <extracomment>QuestionWindow.__init__</extracomment>
        <translation>Il n'y a pas de plan, donc pas de fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/question_window.py"/>
        <source>Saved: {file}</source>
        <extracomment>QuestionWindow.write_card</extracomment>
        <translation>Enregistré&#xa0;: {file}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Fish room</source>
        <translation>Salle des bacs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Systems</source>
        <translation>Systèmes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Add system</source>
        <translation>Ajouter un système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove system</source>
        <translation>Retirer le système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Shelf</source>
        <translation>Étagère</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Jugs</source>
        <translation>Bidons</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Pumps</source>
        <translation>Pompes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>&amp;Add</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>&amp;Ajouter</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>Remove</source>
        <extracomment>RecordsPane.__init__</extracomment>
        <translation>Retirer</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/records_pane.py"/>
        <source>The list is empty.</source>
        <extracomment>RecordsPane._fill</extracomment>
        <translation>La liste est vide.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The water is cl&amp;oudy</source>
        <translation>L'eau est tr&amp;ouble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>There is a white fil&amp;m</source>
        <translation>Il y a un fil&amp;m blanc</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>empty before a test</source>
        <translation>vide avant un test</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>The &amp;whole jug ran in</source>
        <extracomment>RecoveryForm.__init__</extracomment>
        <translation>Tout le &amp;bidon s'est vidé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Ce qui a coulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>How much ran in</source>
        <extracomment>RecoveryForm._ran_in</extracomment>
        <translation>Combien a coulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is too high</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Ce qui est trop haut</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Tested since</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>Testé depuis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>To come down to</source>
        <extracomment>RecoveryForm._too_high</extracomment>
        <translation>À faire redescendre à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What is seen</source>
        <extracomment>RecoveryForm._seen</extracomment>
        <translation>Ce que l'on voit</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>What can be done</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Ce que l'on peut faire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Exchanged in a day at most</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Renouvelé par jour au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>never more than half of the tank</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>jamais plus de la moitié du bac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Hold {name} too</source>
        <extracomment>RecoveryForm._exchanged</extracomment>
        <translation>Suspendre aussi&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>None: a test shows it</source>
        <extracomment>RecoveryForm.set_jugs</extracomment>
        <translation>Aucun&#xa0;: un test le montre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <source>Choose first what is too high.</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>D'abord ce qui est trop haut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_form.py"/>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>usually kept</source>
        <extracomment>RecoveryForm.set_values</extracomment>
        <translation>tenu d'ordinaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Hold only</source>
        <translation>&amp;Seulement suspendre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>E&amp;xchange</source>
        <translation>&amp;Renouveler</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>&amp;Both</source>
        <translation>Les &amp;deux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does</source>
        <translation>Ce que fait chaque choix</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Of each value: its end, in brackets the lowest and highest it comes to wherever in its interval the net volume lies, and the most it moves in 24&#xa0;hours.</source>
        <translation>Pour chaque valeur&#xa0;: sa fin, entre parenthèses le plus bas et le plus haut où elle arrive où que soit le volume net dans son intervalle, et le plus qu'elle bouge en 24&#xa0;heures.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Hold only</source>
        <translation>Seulement suspendre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>May move in 24&#xa0;h</source>
        <translation>Peut bouger en 24&#xa0;h</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>First, in this order: </source>
        <extracomment>StopList.__init__</extracomment>
        <translation>D'abord, dans cet ordre&#xa0;: </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>Choose: {choose}</source>
        <extracomment>ChoicePanel.__init__</extracomment>
        <translation>Choisir&#xa0;: {choose}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>, chosen</source>
        <extracomment>ChoicePanel.render</extracomment>
        <translation>, choisi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>What each choice does to every value</source>
        <extracomment>Choices.__init__</extracomment>
        <translation>Ce que fait chaque choix à chaque valeur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>now {now}, may move {most}</source>
        <extracomment>_in_two</extracomment>
        <translation>maintenant {now}, peut bouger de {most}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_panels.py"/>
        <source>{end} ({low} to {high})
moves {moves}{own}</source>
        <extracomment>_cells</extracomment>
        <translation>{end} ({low} à {high})
bouge de {moves}{own}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Choose the jug that ran in first.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Choisissez d'abord le bidon qui s'est vidé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Nobody wrote down what is in this jug. Type in how much ran in.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>Personne n'a noté ce qu'il y a dans ce bidon. Tapez combien a coulé.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>its level as last read</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>son niveau au dernier relevé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>what was made up</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>ce qui a été préparé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{left} is {what}, less the doses logged since. Doses nobody logged are not taken off.</source>
        <extracomment>RecoveryRecords.whole_jug</extracomment>
        <translation>{left}&#xa0;: {what}, moins les doses notées depuis. Les doses que personne n'a notées ne sont pas déduites.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>{amount} ran in from {document}{contents}. </source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>{amount} ont coulé de {document}{contents}. </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_records.py"/>
        <source>Emergency, found {date_words}. {what}{said}</source>
        <extracomment>RecoveryRecords.note</extracomment>
        <translation>Urgence, constatée le {date_words}. {what}{said}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Say at the left what ran in, or what is too high. The list above holds before any figure is known.</source>
        <translation>Dites à gauche ce qui a coulé, ou ce qui est trop haut. La liste ci-dessus vaut avant que l'on connaisse un chiffre.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Choose a way: then it stands here day by day, and on the emergency card.</source>
        <translation>Choisissez une voie&#xa0;: elle figure alors ici jour par jour, et sur la fiche d'urgence.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>&amp;Note it in the log</source>
        <translation>&amp;Noter dans le journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>No way down was chosen yet.</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Aucune voie n'a encore été choisie.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Chosen: {title}. {takes}</source>
        <extracomment>RecoverySheet._said</extracomment>
        <translation>Choisi&#xa0;: {title}. {takes}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>It is in the log already.</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>C'est déjà dans le journal.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>Noted in the log</source>
        <extracomment>RecoverySheet._show_noted</extracomment>
        <translation>Noté dans le journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/recovery_sheet.py"/>
        <source>The emergency is noted in the log. Undo takes it out again.</source>
        <extracomment>RecoverySheet._note</extracomment>
        <translation>L'urgence est notée dans le journal. Annuler l'en retire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Bac&amp;kups</source>
        <extracomment>Room._foot</extracomment>
        <translation>&amp;Copies</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the backups</source>
        <extracomment>Room._foot</extracomment>
        <translation>Montrer les copies de sauvegarde</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Show the settings</source>
        <extracomment>Room._foot</extracomment>
        <translation>Montrer les réglages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/room.py"/>
        <source>Settings: colours and letters (Ctrl and comma)</source>
        <extracomment>Room._foot</extracomment>
        <translation>Réglages&#xa0;: couleurs et lettres (Ctrl et virgule)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Print round sheet</source>
        <translation>&amp;Imprimer la feuille</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save round sheet as P&amp;DF</source>
        <translation>Enregistrer en P&amp;DF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>&amp;Look at round sheet</source>
        <translation>&amp;Voir la feuille</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>feuille de tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>Save &amp;reminders</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Enregistrer les &amp;rappels</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>For any calendar program, as an iCalendar file. Save them again after a change.</source>
        <extracomment>RoundActions.__init__</extracomment>
        <translation>Pour tout agenda, en fichier iCalendar. Enregistrez-les de nouveau après un changement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>feuille de tournée.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>round sheet {date}.pdf</source>
        <extracomment>RoundActions.file_name</extracomment>
        <translation>feuille de tournée {date}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>The reminders could not be written there. Choose another folder.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>Les rappels n'ont pas pu y être écrits. Choisissez un autre dossier.</translation>
    </message>
    <message numerus="yes">
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{n} reminders</source>
        <extracomment>for 1: 1 reminder; RoundActions._write_down</extracomment>
        <translation>
            <numerusform>{n} rappel</numerusform>
            <numerusform>{n} rappels</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>{said} saved as {file}. Open the file with your calendar.</source>
        <extracomment>RoundActions._write_down</extracomment>
        <translation>{said}&#xa0;: enregistré sous {file}. Ouvrez le fichier avec votre agenda.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_actions.py"/>
        <source>reminders {date}.ics</source>
        <extracomment>RoundActions._remind</extracomment>
        <translation>rappels {date}.ics</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/round_watch.py"/>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Its jug is empty or gone.</source>
        <extracomment>RoundWatch._why_not, VoidCards._of_jug</extracomment>
        <translation>Son bidon est vide ou n'existe plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>The fish room</source>
        <extracomment>RoundsSheet.__init__</extracomment>
        <translation>La salle d'aquariums</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>Looking at the log of {unread} more systems.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation>Lecture du journal de {unread} autres systèmes.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source> Reckoning what {unplanned} more systems take from the jugs.</source>
        <extracomment>RoundsSheet._show</extracomment>
        <translation> Calcul de ce que {unplanned} autres systèmes prennent aux bidons.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/rounds_sheet.py"/>
        <source>It was kept by another version. End it, then plan again from a fresh reading.</source>
        <extracomment>RoundsSheet._plans</extracomment>
        <translation>Il a été gardé par une autre version. Terminez-le, puis planifiez de nouveau à partir d'un relevé récent.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Several laptops work on one log that lies on a server of your own (PostgreSQL). Nothing goes anywhere else. While the server does not answer, the last state is shown, and what you log is kept on this computer and sent later.</source>
        <translation>Plusieurs portables travaillent sur un journal placé sur un serveur à vous (PostgreSQL). Rien ne va ailleurs. Tant que le serveur ne répond pas, le dernier état est montré, et ce que vous notez est gardé sur cet ordinateur et envoyé plus tard.</translation>
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
        <translation>Un journal pour toute l'installation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Keep the password in this computer's keyring</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>&amp;Garder le mot de passe dans le trousseau de cet ordinateur</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>&amp;Open this log</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>&amp;Ouvrir ce journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Use the log on &amp;this computer</source>
        <extracomment>ServerPage.__init__</extracomment>
        <translation>Utiliser le journal de &amp;cet ordinateur</translation>
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
        <translation>Mot de &amp;passe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/server_page.py"/>
        <source>Asking the server</source>
        <extracomment>ServerPage.ask</extracomment>
        <translation>Le serveur est interrogé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the system &amp;has them</source>
        <translation>Comme le &amp;système les a</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>&amp;Dark</source>
        <translation>So&amp;mbre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High &amp;contrast, light</source>
        <translation>Contraste &amp;fort, clair</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>High contrast, d&amp;ark</source>
        <translation>Contraste fort, som&amp;bre</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>{number}&#xa0;%</source>
        <translation>{number}&#xa0;%</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Letters</source>
        <translation>Lettres</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>As the &amp;system speaks</source>
        <translation>Comme parle le s&amp;ystème</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>From 150&#xa0;% on the sheets are read standing back from the tank. Ctrl with plus or minus changes the letters on every sheet, F11 takes the whole screen.</source>
        <translation>À partir de 150&#xa0;%, les feuilles se lisent à distance du bac. Ctrl avec plus ou moins change les lettres sur chaque feuille, F11 prend tout l'écran.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/settings_window.py"/>
        <source>▲ The settings could not be written. They hold until the program is closed.</source>
        <translation>▲ Les réglages n'ont pas pu être écrits. Ils tiennent jusqu'à la fermeture du programme.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>No system yet</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Pas encore de système</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>&amp;Fish room</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>&amp;Salle</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Show the lists of sheets, systems and jugs</source>
        <extracomment>SheetHeader.__init__</extracomment>
        <translation>Montrer les listes des feuilles, systèmes et bidons</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Annuler</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Redo</source>
        <extracomment>SheetHeader.__init__, SheetHeader._show_state</extracomment>
        <translation>Rétablir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Find an action</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Trouver une action</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>By some of its words; Ctrl and K</source>
        <extracomment>SheetHeader._find_button</extracomment>
        <translation>Par quelques-uns de ses mots&#xa0;; Ctrl et K</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Undone</source>
        <extracomment>SheetHeader._undo</extracomment>
        <translation>Annulé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Done again</source>
        <extracomment>SheetHeader._redo</extracomment>
        <translation>Rétabli</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Nothing was done yet that could be taken back or done again.</source>
        <extracomment>SheetHeader._show_state</extracomment>
        <translation>Rien n'a encore été fait que l'on puisse annuler ou rétablir.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_header.py"/>
        <source>Everything is saved again.</source>
        <extracomment>SheetHeader._save_restored</extracomment>
        <translation>Tout est de nouveau enregistré.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Rounds</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Upkeep</source>
        <extracomment>upkeep</extracomment>
        <translation>Entretien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Stocks</source>
        <translation>Solutions</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <location filename="../glossary.toml"/>
        <source>Recovery</source>
        <extracomment>recovery</extracomment>
        <translation>Rétablissement</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/sheet_list.py"/>
        <source>Sheets</source>
        <extracomment>SheetList.__init__</extracomment>
        <translation>Feuilles</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>The jug</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>New &amp;batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Nouvelle &amp;préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Remove batch</source>
        <extracomment>StockForm._jug</extracomment>
        <translation>Retirer la préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Contents</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Contenu</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Its strength</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Sa concentration</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>To match the jug</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>À accorder au bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>A dose of</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Une dose de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>is to raise it by</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>doit la relever de</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>And of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Et du sulfate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Purity of the sulfate</source>
        <extracomment>StockForm._contents</extracomment>
        <translation>Pureté du sulfate</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>On its label</source>
        <extracomment>StockForm._label</extracomment>
        <translation>Sur son étiquette</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>Mixed by</source>
        <extracomment>StockForm._label</extracomment>
        <translation>Préparé par</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_form.py"/>
        <source>like 2027-02-25</source>
        <extracomment>StockForm._label</extracomment>
        <translation>comme 2027-02-25</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stock_records.py"/>
        <source>This batch</source>
        <extracomment>StockRecords.outdated</extracomment>
        <translation>Cette préparation</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>What it carries</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Ce qu'il porte</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Put it in the &amp;jug</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Mettre dans le &amp;bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Enter as &amp;weighed</source>
        <extracomment>StocksSheet.__init__</extracomment>
        <translation>Saisir comme pe&amp;sé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Batches of this jug</source>
        <extracomment>StocksSheet._lay_out</extracomment>
        <translation>Préparations de ce bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The jug has no batch.</source>
        <extracomment>StocksSheet._fill</extracomment>
        <translation>Le bidon n'a pas de préparation.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The recipe is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>La recette n'est pas complète.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>It is in the jug already</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Elle est déjà dans le bidon</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>The batch is not complete.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>La préparation n'est pas complète.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>Used for: {used}.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Sert pour&#xa0;: {used}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>No correction uses this jug.</source>
        <extracomment>StocksSheet.recompute</extracomment>
        <translation>Aucune correction ne se sert de ce bidon.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>With this batch in the jug, card {plan_id} becomes void. {why}</source>
        <extracomment>StocksSheet._note</extracomment>
        <translation>Avec cette préparation dans le bidon, la fiche {plan_id} est annulée. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source> Take down card {void}: void.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation> Décrochez la fiche {void}&#xa0;: annulée.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/stocks_sheet.py"/>
        <source>This batch is in the jug now.{down} Put its label on, and prime the line before the next dose.</source>
        <extracomment>StocksSheet._put_in_use</extracomment>
        <translation>Cette préparation est maintenant dans le bidon.{down} Collez son étiquette, et amorcez le tuyau avant la prochaine dose.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}, date and time</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}, date et heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>today 08:00</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>auj. 08:00</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/time_field.py"/>
        <source>{label}: now</source>
        <extracomment>TimeField.__init__</extracomment>
        <translation>{label}&#xa0;: maintenant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Print timetable</source>
        <translation>&amp;Imprimer l'horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Save timetable as PDF</source>
        <translation>&amp;Enregistrer l'horaire en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>&amp;Look at timetable</source>
        <translation>&amp;Voir l'horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable</source>
        <extracomment>TimetableActions.__init__</extracomment>
        <translation>horaire</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_actions.py"/>
        <source>timetable {code}.pdf</source>
        <extracomment>TimetableActions.file_name</extracomment>
        <translation>horaire {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours from</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Heures de calme dès</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>no pump runs then</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>aucune pompe ne tourne</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Quiet hours to</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Heures de calme jusqu'à</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Opposing doses apart</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>Écart des doses opposées</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>at least, from the end of a dose</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>au moins, dès la fin d'une dose</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Only &amp;one pump at a time</source>
        <extracomment>TimetableForm.__init__</extracomment>
        <translation>&amp;Une seule pompe à la fois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>its plan says how many</source>
        <extracomment>TimetableForm.set_usual</extracomment>
        <translation>son plan dit combien</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Open</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open {parameter} on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>Ouvrir sur la feuille Correction&#xa0;: {parameter}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Open it on the Correct sheet</source>
        <extracomment>TimetableForm._make, UpkeepSheet._button</extracomment>
        <translation>Ouvrir sur la feuille Correction</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>First dose not before</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Première dose pas avant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>any time</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>toute heure</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Fewest</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Au moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_form.py"/>
        <source>Most</source>
        <extracomment>TimetableForm._make</extracomment>
        <translation>Au plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>Doses</source>
        <translation>Doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_list.py"/>
        <source>Doses in order of time</source>
        <extracomment>TimetableList.__init__</extracomment>
        <translation>Doses dans l'ordre des heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>No pump gives anything yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Aucune pompe ne donne encore rien. Indiquez sur la feuille Correction ce que le bac consomme en un jour, son bidon et sa pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In 24 hours</source>
        <translation>En 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>The timetable could not be worked out. Please keep this log and report it.</source>
        <extracomment>TimetableSheet._failed</extracomment>
        <translation>L'horaire n'a pas pu être établi. Gardez ce journal et signalez-le, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_sheet.py"/>
        <source>In order of time · timetable {code}</source>
        <extracomment>TimetableSheet._show</extracomment>
        <translation>Dans l'ordre des heures · horaire {code}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>No timetable yet.</source>
        <translation>Pas encore d'horaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Alkalinity: filled head, upwards.</source>
        <translation>Alcalinité&#xa0;: tête pleine, vers le haut.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Calcium: open head, downwards.</source>
        <translation>Calcium&#xa0;: tête ouverte, vers le bas.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Doses of the day</source>
        <extracomment>TimetableStrip.__init__</extracomment>
        <translation>Doses du jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Next at {at}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>Prochaine à {at}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{cursor}.  Then after {wait}&#xa0;min: {pump}</source>
        <extracomment>TimetableStrip.reading</extracomment>
        <translation>{cursor}.  Puis après {wait}&#xa0;min&#xa0;: {pump}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Hatched: no doses.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Hachuré&#xa0;: pas de doses.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>Upright line: now.</source>
        <extracomment>TimetableStrip.legend</extracomment>
        <translation>Trait vertical&#xa0;: maintenant.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{pump}, {additive}: {marks} doses</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{pump}, {additive}&#xa0;: {marks} doses</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>quiet hours {begin} to {end}</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>heures de calme de {begin} à {end}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/timetable_strip.py"/>
        <source>{join}. Left and right go from dose to dose, up and down from pump to pump.</source>
        <extracomment>TimetableStrip.in_words</extracomment>
        <translation>{join}. Gauche et droite vont de dose en dose, haut et bas de pompe en pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Print card of all plans</source>
        <translation>Imprimer la fiche de tous les plans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Save card of all plans as PDF</source>
        <translation>Enregistrer la fiche de tous les plans en PDF</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Look at card of all plans</source>
        <translation>Voir la fiche de tous les plans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>together card</source>
        <extracomment>TogetherActions.__init__</extracomment>
        <translation>fiche commune</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>There is no card yet.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>Il n'y a pas encore de fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>Not while something must stop: see the card.</source>
        <extracomment>TogetherActions.set_page</extracomment>
        <translation>Pas tant que quelque chose doit s'arrêter&#xa0;: voyez la fiche.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>tous les plans.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_actions.py"/>
        <source>all plans {code}.pdf</source>
        <extracomment>TogetherActions.file_name</extracomment>
        <translation>tous les plans {code}.pdf</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Without a reading there is no course to draw.</source>
        <translation>Sans relevé, il n'y a pas de cours à dessiner.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_chart.py"/>
        <source>Chart of all plans together</source>
        <extracomment>TogetherChart.__init__</extracomment>
        <translation>Graphique de tous les plans ensemble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>All plans together</source>
        <translation>Tous les plans ensemble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Fold all plans away</source>
        <translation>Replier tous les plans</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Together</source>
        <translation>Ensemble</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>then</source>
        <translation>puis</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>What moves it</source>
        <translation>Ce qui la fait bouger</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>per day</source>
        <translation>par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Value to look at</source>
        <extracomment>TogetherPanel.__init__</extracomment>
        <translation>Valeur à regarder</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/together_panel.py"/>
        <source>Stop: {name}</source>
        <extracomment>_row</extracomment>
        <translation>Stop&#xa0;: {name}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/too_high.py"/>
        <source>What to do first, and how it comes down without harm</source>
        <extracomment>TooHigh.__init__</extracomment>
        <translation>Que faire d'abord, et comment elle redescend sans dommage</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go &amp;back</source>
        <extracomment>UnsavedQuestion.__init__</extracomment>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>{edits} could not be saved.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>Impossible d'enregistrer&#xa0;: {edits}.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>Go back, make room on the disk or bring the folder back, and they are saved with the next edit. Closed now, they are lost.</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>Revenez, faites de la place sur le disque ou rétablissez le dossier&#xa0;: elles seront enregistrées avec la prochaine modification. Si vous fermez maintenant, elles sont perdues.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/unsaved_question.py"/>
        <source>&amp;Close and lose {edits}</source>
        <extracomment>UnsavedQuestion.ask</extracomment>
        <translation>&amp;Fermer et perdre&#xa0;: {edits}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Nothing is kept yet. Enter on the Correct sheet what the tank uses in a day, its jug and its pump.</source>
        <translation>Rien n'est encore tenu. Indiquez sur la feuille Correction ce que le bac consomme en un jour, son bidon et sa pompe.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>At which minute each pump doses, and in how many doses, stands on the Timetable sheet.</source>
        <translation>À quelle minute dose chaque pompe, et en combien de doses, se lit sur la feuille Horaire.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Set on the pump</source>
        <translation>Réglage de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>The jug is empty</source>
        <translation>Bidon vide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>In time</source>
        <translation>Avec le temps</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a week</source>
        <translation>une semaine</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a month</source>
        <translation>un mois</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>a year</source>
        <translation>un an</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>Water exchanged</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>Eau renouvelée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>continuously; leave it empty for none</source>
        <extracomment>UpkeepSheet.__init__</extracomment>
        <translation>en continu&#xa0;; laissez vide s'il n'y en a pas</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>New water, {rest}</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>Eau neuve, {rest}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{what}: {message} It stands on the Exchange sheet.</source>
        <extracomment>UpkeepSheet._placed</extracomment>
        <translation>{what}&#xa0;: {message} Cela figure sur la feuille Renouvellement.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>used: {use}</source>
        <extracomment>UpkeepSheet._used</extracomment>
        <translation>consommé&#xa0;: {use}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>{in_24_hours} in 24 hours</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>{in_24_hours} en 24 heures</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/upkeep_sheet.py"/>
        <source>after {jug}</source>
        <extracomment>UpkeepSheet._row</extracomment>
        <translation>après {jug}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>{why} Its pump now gives another flow.</source>
        <extracomment>of_pump</extracomment>
        <translation>{why} Sa pompe donne maintenant un autre débit.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} is void. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ La fiche {plan_id} est annulée. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>▲ Card {plan_id} must not be followed. {why}</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>▲ La fiche {plan_id} ne doit pas être suivie. {why}</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source> And {void} more.</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation> Et {void} de plus.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>It is taken &amp;down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>Elle est &amp;décrochée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/void_cards.py"/>
        <source>Card {plan_id} is taken down</source>
        <extracomment>VoidCards._refresh</extracomment>
        <translation>La fiche {plan_id} est décrochée</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>Lea&amp;ve (Escape)</source>
        <extracomment>WalkStrip.__init__</extracomment>
        <translation>&amp;Quitter (Échap)</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Next</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>&amp;Suivant</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/walk_page.py"/>
        <source>&amp;Do it for me</source>
        <extracomment>WalkStrip.__init__, WalkPage._show</extracomment>
        <translation>&amp;Le faire pour moi</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>No calibration with running hours yet. With two or more, the wear of the head shows here.</source>
        <translation>Pas encore d'étalonnage avec des heures de marche. À partir de deux, l'usure de la tête se montre ici.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>mL per min against running hours of the head</source>
        <translation>mL par min selon les heures de marche de la tête</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% less</source>
        <translation>5&#xa0;% de moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% less</source>
        <translation>10&#xa0;% de moins</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>5&#xa0;% more</source>
        <translation>5&#xa0;% de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>10&#xa0;% more</source>
        <translation>10&#xa0;% de plus</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>flow in use</source>
        <translation>débit en service</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>Chart of the pump's wear</source>
        <extracomment>WearChart.__init__</extracomment>
        <translation>Graphique de l'usure de la pompe</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/wear_chart.py"/>
        <source>{spoken} The arrow keys read them one by one.</source>
        <extracomment>WearChart.render</extracomment>
        <translation>{spoken} Les flèches les lisent un par un.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Evenwater reckons how many mL per hour raise a value slowly and safely, draws what the water will do, and prints the card that hangs on the stand. Everything you type is kept on this computer and nowhere else, unless you open a log on a server of your own.</source>
        <translation>Evenwater calcule combien de mL par heure relèvent une valeur lentement et sans danger, dessine ce que fera l'eau, et imprime la fiche à accrocher au meuble. Tout ce que vous tapez reste sur cet ordinateur et nulle part ailleurs, sauf si vous ouvrez un journal sur un serveur à vous.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>A wrong dose kills animals, and the stocks can hurt people. Read each bag's safety sheet, follow local rules, and when unsure dose less and test again.</source>
        <translation>Une dose erronée tue des animaux, et les solutions mères peuvent blesser les gens. Lisez la fiche de données de sécurité de chaque sac, suivez les règles locales, et en cas de doute dosez moins et testez de nouveau.</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Your fish room is empty</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Votre salle d'aquariums est vide</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Start with &amp;my own tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Commencer avec &amp;mon bac</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Be &amp;led through it on an invented tank</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Être &amp;guidé sur un bac inventé</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Look round an &amp;invented room of three systems</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Regarder une salle &amp;inventée de trois systèmes</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/ui/welcome_page.py"/>
        <source>Open the log of a &amp;facility, on its server</source>
        <extracomment>WelcomePage.__init__</extracomment>
        <translation>Ouvrir le &amp;journal d'une installation, sur son serveur</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>alkalinity</source>
        <extracomment>a name</extracomment>
        <translation>alcalinité</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>calcium</source>
        <extracomment>a name</extracomment>
        <translation>calcium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>magnesium</source>
        <extracomment>a name</extracomment>
        <translation>magnésium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>potassium</source>
        <extracomment>a name</extracomment>
        <translation>potassium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>strontium</source>
        <extracomment>a name</extracomment>
        <translation>strontium</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>iodide</source>
        <extracomment>a name</extracomment>
        <translation>iodure</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrate</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>phosphate</source>
        <extracomment>a name</extracomment>
        <translation>phosphate</translation>
    </message>
    <message>
        <location filename="../parameters.toml"/>
        <source>salinity</source>
        <extracomment>a name</extracomment>
        <translation>salinité</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>carbonate de sodium anhydre</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate anhydrous</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>CARBonate de sodium anhydre</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Warning</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Attention</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>WARNING</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>ATTENTION</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H319 causes serious eye irritation</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>H319 provoque une sévère irritation des yeux</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear goggles and gloves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Portez des lunettes étanches et des gants.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it warms as it dissolves.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate</extracomment>
        <translation>Versez-le lentement dans l'eau, jamais l'eau sur le sel&#xa0;; il chauffe en se dissolvant.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes and heats.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Tenez les acides à l'écart&#xa0;: il mousse et chauffe.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium.</source>
        <extracomment>sodium carbonate anhydrous, sodium carbonate monohydrate, sodium carbonate decahydrate</extracomment>
        <translation>Ne le mélangez jamais avec un concentré de calcium.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it takes up water and cakes.</source>
        <extracomment>sodium carbonate anhydrous</extracomment>
        <translation>Gardez le sac hermétique&#xa0;: il prend l'eau et s'agglomère.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate monohydrate</source>
        <extracomment>a name</extracomment>
        <translation>carbonate de sodium monohydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate monohydrate</source>
        <extracomment>sodium carbonate monohydrate</extracomment>
        <translation>CARBonate de sodium monohydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium carbonate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>carbonate de sodium décahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CARBonate decahydrate</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>CARBonate de sodium décahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly, never water onto the salt; it cools as it dissolves.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Versez-le lentement dans l'eau, jamais l'eau sur le sel&#xa0;; il refroidit en se dissolvant.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it loses water in dry air and then weighs too strong.</source>
        <extracomment>sodium carbonate decahydrate</extracomment>
        <translation>Gardez le sac hermétique&#xa0;: à l'air sec il perd de l'eau et devient trop fort à la pesée.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium bicarbonate</source>
        <extracomment>a name</extracomment>
        <translation>bicarbonate de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium BICARBonate</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>BICARBonate de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear spectacles.</source>
        <extracomment>sodium bicarbonate, magnesium chloride hexahydrate, magnesium sulfate heptahydrate</extracomment>
        <translation>Portez des lunettes.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep acids away: it fizzes.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>Tenez les acides à l'écart&#xa0;: il mousse.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not heat it: heat turns it into sodium carbonate, 1.59 times as strong per gram.</source>
        <extracomment>sodium bicarbonate</extracomment>
        <translation>Ne le chauffez pas&#xa0;: la chaleur en fait du carbonate de sodium, 1,59 fois plus fort par gramme.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>hydroxyde de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium HYDROXide</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>HYDROXyde de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>DANGER</source>
        <extracomment>sodium hydroxide, calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>DANGER</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H290 may be corrosive to metals</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>H290 peut être corrosif pour les métaux</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H314 causes severe skin burns and eye damage</source>
        <extracomment>sodium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H314 provoque de graves brûlures de la peau et de graves lésions des yeux</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Restricted: use a carbonate instead unless you are trained to handle caustics.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Réservé&#xa0;: prenez plutôt un carbonate, sauf si vous êtes formé à manier des caustiques.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear a face shield or goggles, chemical-proof gloves and an apron.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Portez un écran facial ou des lunettes étanches, des gants résistant aux produits chimiques et un tablier.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to cold water in small portions, never water onto the solid; it heats strongly and can boil and spit.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Versez-le par petites portions dans l'eau froide, jamais l'eau sur le solide&#xa0;; il chauffe fortement et peut bouillir et gicler.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a heat-proof plastic vessel, never glass with a stopper and never aluminium.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Prenez un récipient en plastique résistant à la chaleur, jamais de verre bouché ni d'aluminium.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let it cool before topping up to the mark.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Laissez refroidir avant de compléter au trait.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it airtight and away from acids.</source>
        <extracomment>sodium hydroxide</extracomment>
        <translation>Gardez-le hermétique et loin des acides.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium hydroxide</source>
        <extracomment>a name</extracomment>
        <translation>hydroxyde de calcium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium HYDROXide</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>HYDROXyde de calcium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H315 causes skin irritation</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>H315 provoque une irritation cutanée</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H318 causes serious eye damage</source>
        <extracomment>calcium hydroxide, strontium chloride hexahydrate</extracomment>
        <translation>H318 provoque de graves lésions des yeux</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H335 may cause respiratory irritation</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous</extracomment>
        <translation>H335 peut irriter les voies respiratoires</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Goggles or a face shield are mandatory; wear gloves.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Lunettes étanches ou écran facial obligatoires&#xa0;; portez des gants.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Raise no dust: the powder burns wet eyes and lungs, and clumps lodge under the lids.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Ne soulevez pas de poussière&#xa0;: la poudre brûle les yeux humides et les poumons, et des grumeaux se logent sous les paupières.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>If swallowed, do not induce vomiting; get medical help.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>En cas d'ingestion, ne faites pas vomir&#xa0;; consultez un médecin.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep strong acids away.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Tenez les acides forts à l'écart.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Let the slurry settle and dose only the clear water; never stir slurry into the tank.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Laissez le lait de chaux se déposer et ne dosez que l'eau claire&#xa0;; ne remuez jamais le dépôt vers le bac.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never dose limewater faster than the tank evaporates.</source>
        <extracomment>calcium hydroxide</extracomment>
        <translation>Ne dosez jamais l'eau de chaux plus vite que le bac n'évapore.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate or bicarbonate.</source>
        <extracomment>calcium hydroxide, calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Ne le mélangez jamais avec un concentré de carbonate ou de bicarbonate.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride anhydrous</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de calcium anhydre</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide anhydrous</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>CHLORure de calcium anhydre</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H303 may be harmful if swallowed</source>
        <extracomment>calcium chloride anhydrous</extracomment>
        <translation>H303 peut être nocif en cas d'ingestion</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It heats strongly as it dissolves: add the salt slowly to cold water, never water onto the salt.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Il chauffe fortement en se dissolvant&#xa0;: versez lentement le sel dans l'eau froide, jamais l'eau sur le sel.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a vented, heat-proof vessel and let it cool before topping up to the mark.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate</extracomment>
        <translation>Prenez un récipient ouvert résistant à la chaleur et laissez refroidir avant de compléter au trait.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag airtight: it draws water from the air.</source>
        <extracomment>calcium chloride anhydrous, calcium chloride dihydrate, magnesium chloride hexahydrate</extracomment>
        <translation>Gardez le sac hermétique&#xa0;: il attire l'eau de l'air.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride dihydrate</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de calcium dihydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide dihydrate</source>
        <extracomment>calcium chloride dihydrate</extracomment>
        <translation>CHLORure de calcium dihydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de calcium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>calcium CHLORide hexahydrate</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>CHLORure de calcium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add the salt slowly to the water, never water onto the salt.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Versez lentement le sel dans l'eau, jamais l'eau sur le sel.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>It cools as it dissolves: top up to the mark only when it is at room temperature again.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Il refroidit en se dissolvant&#xa0;: ne complétez au trait que lorsqu'il est revenu à la température de la pièce.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep the bag cool and airtight: it melts in its own water at about 30 degrees Celsius.</source>
        <extracomment>calcium chloride hexahydrate</extracomment>
        <translation>Gardez le sac au frais et hermétique&#xa0;: il fond dans sa propre eau vers 30 degrés Celsius.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de magnésium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium CHLORide hexahydrate</source>
        <extracomment>magnesium chloride hexahydrate</extracomment>
        <translation>CHLORure de magnésium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium sulfate heptahydrate</source>
        <extracomment>a name</extracomment>
        <translation>sulfate de magnésium heptahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>magnesium SULFate heptahydrate</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>SULFate de magnésium heptahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Mop up spills: the floor becomes slippery.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Essuyez ce qui est renversé&#xa0;: le sol devient glissant.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: gypsum falls out.</source>
        <extracomment>magnesium sulfate heptahydrate</extracomment>
        <translation>Ne le mélangez jamais avec un concentré de calcium&#xa0;: du gypse précipite.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium chloride</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium CHLORide</source>
        <extracomment>potassium chloride</extracomment>
        <translation>CHLORure de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Do not swallow.</source>
        <extracomment>potassium chloride</extracomment>
        <translation>Ne pas avaler.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium chloride hexahydrate</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de strontium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>strontium CHLORide hexahydrate</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>CHLORure de strontium hexahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Add it to the water slowly and raise no dust.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Versez-le lentement dans l'eau et ne soulevez pas de poussière.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of carbonate, bicarbonate or sulfate: strontium falls out.</source>
        <extracomment>strontium chloride hexahydrate</extracomment>
        <translation>Ne le mélangez jamais avec un concentré de carbonate, de bicarbonate ou de sulfate&#xa0;: le strontium précipite.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium iodide</source>
        <extracomment>a name</extracomment>
        <translation>iodure de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium IODide</source>
        <extracomment>potassium iodide</extracomment>
        <translation>IODure de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H372 causes damage to the thyroid through prolonged or repeated exposure</source>
        <extracomment>potassium iodide</extracomment>
        <translation>H372 risque avéré d'effets graves pour la thyroïde à la suite d'expositions répétées ou d'une exposition prolongée</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves, raise no dust, and do not eat or drink at the bench.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Portez des gants, ne soulevez pas de poussière, ne mangez ni ne buvez au poste de travail.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Make a dilute stock only: the doses are milligrams.</source>
        <extracomment>potassium iodide, potassium dihydrogen phosphate</extracomment>
        <translation>Ne préparez qu'une solution diluée&#xa0;: les doses sont des milligrammes.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Keep it in a light-tight bottle.</source>
        <extracomment>potassium iodide</extracomment>
        <translation>Gardez-le dans un flacon opaque.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrate de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium NITRate</source>
        <extracomment>sodium nitrate</extracomment>
        <translation>NITRate de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H272 may intensify fire; oxidiser</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>H272 peut aggraver un incendie&#xa0;; comburant</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Oxidiser: keep it from paper, wood dust, sugar, oil and heat.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Comburant&#xa0;: gardez-le loin du papier, de la poussière de bois, du sucre, de l'huile et de la chaleur.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use a clean scoop and keep only a small pack.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Prenez une cuillère propre et ne gardez qu'un petit paquet.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Flood a fire with water.</source>
        <extracomment>sodium nitrate, potassium nitrate</extracomment>
        <translation>Noyez un feu sous l'eau.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium nitrate</source>
        <extracomment>a name</extracomment>
        <translation>nitrate de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium NITRate</source>
        <extracomment>potassium nitrate</extracomment>
        <translation>NITRate de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen phosphate</source>
        <extracomment>a name</extracomment>
        <translation>dihydrogénophosphate de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>potassium dihydrogen PHOSPHate</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>dihydrogénoPHOSPHate de potassium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Never mix it with a concentrate of calcium: calcium phosphate falls out.</source>
        <extracomment>potassium dihydrogen phosphate</extracomment>
        <translation>Ne le mélangez jamais avec un concentré de calcium&#xa0;: du phosphate de calcium précipite.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium chloride</source>
        <extracomment>a name</extracomment>
        <translation>chlorure de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium CHLORide</source>
        <extracomment>sodium chloride</extracomment>
        <translation>CHLORure de sodium</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Use salt without anti-caking agent or added iodine.</source>
        <extracomment>sodium chloride</extracomment>
        <translation>Prenez du sel sans antiagglomérant ni iode ajouté.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>boric acid</source>
        <extracomment>a name</extracomment>
        <translation>acide borique</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>BORIC acid</source>
        <extracomment>boric acid</extracomment>
        <translation>acide BORIQue</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>H360FD may damage fertility; may damage the unborn child</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>H360FD peut nuire à la fertilité&#xa0;; peut nuire au fœtus</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wear gloves and goggles and raise no dust.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Portez des gants et des lunettes étanches et ne soulevez pas de poussière.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Not to be handled by anyone who is or may become pregnant.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>À ne pas manier par une personne qui est ou pourrait être enceinte.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>Wash hands afterwards.</source>
        <extracomment>boric acid, sodium tetraborate decahydrate</extracomment>
        <translation>Lavez-vous les mains ensuite.</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraborate decahydrate</source>
        <extracomment>a name</extracomment>
        <translation>tétraborate de sodium décahydraté</translation>
    </message>
    <message>
        <location filename="../chemicals.toml"/>
        <source>sodium tetraBORate decahydrate</source>
        <extracomment>sodium tetraborate decahydrate</extracomment>
        <translation>tétraBORate de sodium décahydraté</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is too low and is to be raised. Each value of a tank has a correction of its own, which keeps its figures.</source>
        <extracomment>correction.parameter</extracomment>
        <translation>Ce qui est trop bas et doit être relevé. Chaque valeur d'un bac a sa propre correction, qui garde ses chiffres.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What your test showed, in the unit printed on the kit: choose that unit rather than converting by head. The plan starts from this figure.</source>
        <extracomment>correction.measured</extracomment>
        <translation>Ce que votre test a montré, dans l'unité imprimée sur le kit&#xa0;: choisissez cette unité plutôt que de convertir de tête. Le plan part de ce chiffre.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the test was made. A reading that is too old is no basis for a correction. Empty: its age is not checked, and the plan says so.</source>
        <extracomment>correction.measured_at</extracomment>
        <translation>Quand le test a été fait. Un relevé trop ancien n'est pas une base pour une correction. Vide&#xa0;: son âge n'est pas vérifié, et le plan le dit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where the value should come to rest. The line below names what is usually kept; aim for the middle of it when in doubt.</source>
        <extracomment>correction.target</extracomment>
        <translation>Où la valeur doit se stabiliser. La ligne en dessous nomme ce que l'on tient d'ordinaire&#xa0;; dans le doute, visez-en le milieu.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most the value may rise in any 24 hours. Empty: the recommended rise. Beyond it a reason is asked for, and never more than the hard limit.</source>
        <extracomment>correction.fastest_rise</extracomment>
        <translation>Le plus que la valeur peut monter en 24 heures. Vide&#xa0;: la hausse recommandée. Au-delà une raison est demandée, et jamais plus que la limite stricte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the value falls in a day when nothing is dosed: two tests a few days apart show it. Empty: none, so the water rises a little less than planned.</source>
        <extracomment>correction.daily_use</extracomment>
        <translation>De combien la valeur baisse en un jour sans dosage&#xa0;: deux tests à quelques jours d'écart le montrent. Vide&#xa0;: rien, si bien que la valeur monte un peu moins que prévu.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Why this once may go faster than recommended. It is printed on the card, for whoever reads it after you.</source>
        <extracomment>correction.reason</extracomment>
        <translation>Pourquoi cette fois peut aller plus vite que recommandé. C'est imprimé sur la fiche, pour qui la lira après vous.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this correction is dosed from. What is in it is shared by every plan that uses it.</source>
        <extracomment>correction.stock</extracomment>
        <translation>Le bidon d'où cette correction est dosée. Son contenu est partagé par tous les plans qui s'en servent.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that doses this. Its flow turns millilitres into running time.</source>
        <extracomment>correction.pump</extracomment>
        <translation>La pompe qui le dose. Son débit change les millilitres en temps de marche.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call this tank. It stands on every card and label, so that nobody doses the wrong one.</source>
        <extracomment>system.name</extracomment>
        <translation>Le nom que vous donnez à ce bac. Il figure sur chaque fiche et étiquette, pour que personne ne dose le mauvais.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>All the water that moves together: display and sump, without rock, sand and equipment. Not the size of the glass. Every dose is in proportion to it.</source>
        <extracomment>system.net_volume</extracomment>
        <translation>Toute l'eau qui bouge ensemble&#xa0;: bac et décantation, sans roches, sable ni matériel. Pas la taille des vitres. Chaque dose lui est proportionnelle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How you found the net volume. Counted as within {filled}&#xa0;% by filling, {dosed}&#xa0;% by dose and test, {dimensions}&#xa0;% from dimensions. Unknown: its low end is taken, {unknown}&#xa0;% less.</source>
        <extracomment>system.volume_known</extracomment>
        <translation>Comment vous avez trouvé le volume net. Compté juste à {filled}&#xa0;% près par remplissage, {dosed}&#xa0;% en dosant et testant, {dimensions}&#xa0;% d'après les dimensions. Inconnu&#xa0;: sa borne basse est prise, {unknown}&#xa0;% de moins.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far the net volume may be off, either way. Empty: what is usual for how it was found. The band around the ramp comes from it.</source>
        <extracomment>system.volume_uncertainty</extracomment>
        <translation>De combien le volume net peut être faux, dans un sens ou dans l'autre. Vide&#xa0;: ce qui est usuel pour la façon de le trouver. La bande autour de la rampe en vient.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How salty the tank is, from a refractometer, hydrometer or conductivity meter. Figures per kilogram and the pH need it. Empty: {salinity}.</source>
        <extracomment>system.salinity</extracomment>
        <translation>Combien le bac est salé, d'après un réfractomètre, un densimètre ou un conductimètre. Les chiffres par kilogramme et le pH en ont besoin. Vide&#xa0;: {salinity}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, from its thermometer. Density and pH depend on it. Empty: {temperature}&#xa0;°C.</source>
        <extracomment>system.temperature</extracomment>
        <translation>Du bac, d'après son thermomètre. La densité et le pH en dépendent. Vide&#xa0;: {temperature}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the tank, in the morning, when it is lowest of the day. Empty: {ph} is taken for the rise of a dose, and no highest pH is held.</source>
        <extracomment>system.ph</extracomment>
        <translation>Du bac, le matin, quand il est au plus bas du jour. Vide&#xa0;: {ph} est pris pour la hausse d'une dose, et aucun pH maximal n'est tenu.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: it says how far a dose moves the pH. Empty: that of natural seawater.</source>
        <extracomment>system.alkalinity</extracomment>
        <translation>Ne sert que lorsque autre chose est corrigé&#xa0;: elle dit de combien une dose déplace le pH. Vide&#xa0;: celle de l'eau de mer naturelle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Only used when something else is corrected: with alkalinity it says how near lime is to falling out. Empty: that of natural seawater.</source>
        <extracomment>system.calcium</extracomment>
        <translation>Ne sert que lorsque autre chose est corrigé&#xa0;: avec l'alcalinité il dit si le calcaire est près de précipiter. Vide&#xa0;: celui de l'eau de mer naturelle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much fresh water replaces what evaporates in a day: mark the top-off jug and look a day later. Limewater never goes in faster than this. Empty: not checked, and the plan says so.</source>
        <extracomment>system.evaporation</extracomment>
        <translation>Combien d'eau douce remplace ce qui s'évapore en un jour&#xa0;: marquez le bidon d'appoint et regardez un jour plus tard. L'eau de chaux n'entre jamais plus vite. Vide&#xa0;: non vérifié, et le plan le dit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water goes out, and new water in, in a day. Upkeep, foods and recovery reckon with the same figure. Empty: none.</source>
        <extracomment>system.exchanged</extracomment>
        <translation>Combien d'eau sort, et d'eau neuve entre, en un jour. Entretien, nourritures et rétablissement comptent avec le même chiffre. Vide&#xa0;: rien.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug is called on the shelf, such as its colour and what is in it. It stands on its label and on every card.</source>
        <extracomment>stock.name</extracomment>
        <translation>Comment le bidon s'appelle sur l'étagère, par exemple sa couleur et son contenu. Cela figure sur son étiquette et sur chaque fiche.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug takes when full. Needed to say how long it lasts, and what would happen if all of it ran in.</source>
        <extracomment>stock.holds</extracomment>
        <translation>Ce que tient le bidon plein. Nécessaire pour dire combien il dure, et ce qui arriverait si tout coulait dans le bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What stays in the jug below the end of its tube and is never pumped. Empty: none.</source>
        <extracomment>stock.unreachable</extracomment>
        <translation>Ce qui reste dans le bidon sous le bout de son tube et n'est jamais pompé. Vide&#xa0;: rien.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How closely you can read the level: half a line of its scale. Empty: {level}&#xa0;% of what it holds. The pump check is no finer than this.</source>
        <extracomment>stock.level_accuracy</extracomment>
        <translation>Avec quelle finesse vous lisez le niveau&#xa0;: une demi-ligne de son échelle. Vide&#xa0;: {level}&#xa0;% de ce qu'il tient. Le contrôle de la pompe n'est pas plus fin.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The words on the bag, water of crystallisation included: two salts of nearly the same name differ by a half or more in strength.</source>
        <extracomment>batch.chemical</extracomment>
        <translation>Les mots du sac, eau de cristallisation comprise&#xa0;: deux sels presque du même nom diffèrent de moitié ou plus en force.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it was weighed into the jug.</source>
        <extracomment>batch.dissolved</extracomment>
        <translation>Combien il en a été pesé dans le bidon.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of the second salt, magnesium sulfate, was weighed into the same jug.</source>
        <extracomment>batch.also_dissolved</extracomment>
        <translation>Combien du second sel, le sulfate de magnésium, a été pesé dans le même bidon.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>To what mark the jug was filled in the end, salt included. Not how much water went in.</source>
        <extracomment>batch.made_up_to</extracomment>
        <translation>Jusqu'à quel trait le bidon a été rempli à la fin, sel compris. Pas combien d'eau y est allée.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date it was mixed, for its label and card.</source>
        <extracomment>batch.mixed_on</extracomment>
        <translation>La date de préparation, pour son étiquette et sa fiche.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For a bottle known by its label only: the dose that the label speaks of, as in 'x mL raise y L by z'.</source>
        <extracomment>batch.label_dose</extracomment>
        <translation>Pour un flacon connu par sa seule étiquette&#xa0;: la dose dont parle l'étiquette, comme dans «&#xa0;x mL relèvent y L de z&#xa0;».</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in that sentence of the label. Not your tank's.</source>
        <extracomment>batch.label_water</extracomment>
        <translation>L'eau dans cette phrase de l'étiquette. Pas celle de votre bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in that sentence of the label, in the unit it uses.</source>
        <extracomment>batch.label_raises</extracomment>
        <translation>La hausse dans cette phrase de l'étiquette, dans son unité.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bottle raises. One bottle, one value: take the label's sentence about the value you dose it for.</source>
        <extracomment>batch.label_parameter</extracomment>
        <translation>Ce que le flacon relève. Un flacon, une valeur&#xa0;: prenez la phrase de l'étiquette sur la valeur pour laquelle vous le dosez.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the bag says; technical salts are often below 100&#xa0;%. Empty: 100&#xa0;%, so that a weaker salt does less than planned, never more.</source>
        <extracomment>batch.purity</extracomment>
        <translation>Ce que dit le sac&#xa0;; les sels techniques sont souvent sous 100&#xa0;%. Vide&#xa0;: 100&#xa0;%, si bien qu'un sel plus faible fait moins que prévu, jamais plus.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the second salt, from its own bag. Empty: 100&#xa0;%.</source>
        <extracomment>batch.also_purity</extracomment>
        <translation>Du second sel, d'après son propre sac. Vide&#xa0;: 100&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The coldest the jug will stand, as in a garage in winter. What just dissolves in the warm falls out in the cold. Empty: {room}&#xa0;°C.</source>
        <extracomment>batch.temperature</extracomment>
        <translation>Le plus froid où sera le bidon, comme dans un garage en hiver. Ce qui se dissout tout juste au chaud précipite au froid. Vide&#xa0;: {room}&#xa0;°C.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you know: what you weighed, the strength you want, or the jug it is to match. The other figures are reckoned from it.</source>
        <extracomment>batch.recipe</extracomment>
        <translation>Ce que vous savez&#xa0;: ce que vous avez pesé, la force voulue, ou le bidon auquel il doit être accordé. Les autres chiffres en sont calculés.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that this one must match, so that equal millilitres of both keep alkalinity and calcium in step.</source>
        <extracomment>batch.partner</extracomment>
        <translation>Le bidon auquel celui-ci doit être accordé, pour que des millilitres égaux des deux gardent alcalinité et calcium au même pas.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose that you want to be enough for the rise beside it.</source>
        <extracomment>batch.wanted_dose</extracomment>
        <translation>La dose qui doit suffire pour la hausse à côté.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water that this dose goes into, usually your net volume.</source>
        <extracomment>batch.wanted_water</extracomment>
        <translation>L'eau dans laquelle va cette dose, d'ordinaire votre volume net.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far that one dose is to raise it. The amount to weigh out follows.</source>
        <extracomment>batch.wanted_raises</extracomment>
        <translation>De combien cette seule dose doit la relever. La quantité à peser en découle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who mixed it, for the label.</source>
        <extracomment>batch.mixed_by</extracomment>
        <translation>Qui l'a préparé, pour l'étiquette.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last day this batch is to be used; it stands on the label. Empty: none is printed.</source>
        <extracomment>batch.use_by</extracomment>
        <translation>Le dernier jour où cette préparation peut servir&#xa0;; il figure sur l'étiquette. Vide&#xa0;: aucun n'est imprimé.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call the pump, such as where it hangs. It stands on every card.</source>
        <extracomment>pump.name</extracomment>
        <translation>Le nom que vous donnez à la pompe, par exemple l'endroit où elle est fixée. Il figure sur chaque fiche.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it really delivers while it runs, with its own line and jug: calibrate it on the Pumps sheet. The figure on its box is only a start.</source>
        <extracomment>pump.flow</extracomment>
        <translation>Ce qu'elle débite vraiment en marche, avec son propre tuyau et son bidon&#xa0;: étalonnez-la sur la feuille Pompes. Le chiffre de la boîte n'est qu'un départ.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many times it runs in a day, evenly spread. Many small doses move the water least. Empty: {doses}.</source>
        <extracomment>pump.doses_per_day</extracomment>
        <translation>Combien de fois elle tourne par jour, à intervalles égaux. Beaucoup de petites doses secouent le moins l'eau. Vide&#xa0;: {doses}.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The least it gives reliably in one run, from its manual or your own tests. Empty: not checked.</source>
        <extracomment>pump.smallest_dose</extracomment>
        <translation>Le moins qu'elle donne de façon fiable en une fois, d'après sa notice ou vos propres essais. Vide&#xa0;: non vérifié.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The steps in which its dose can be set, as 0.1&#xa0;mL. Doses are rounded down to it. Empty: a tenth of a millilitre, finer for small doses.</source>
        <extracomment>pump.step</extracomment>
        <translation>Le pas auquel sa dose se règle, par exemple 0,1&#xa0;mL. Les doses y sont arrondies vers le bas. Vide&#xa0;: un dixième de millilitre, plus fin pour de petites doses.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most it may run, as a share of the time: motors and heads need rest. Empty: {share}&#xa0;%.</source>
        <extracomment>pump.largest_share</extracomment>
        <translation>Le plus qu'elle doit tourner, en part du temps&#xa0;: moteurs et têtes ont besoin de repos. Vide&#xa0;: {share}&#xa0;%.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A brushed motor slows as it ages, a stepper motor keeps its pace. Empty: nothing is said about it.</source>
        <extracomment>pump.motor</extracomment>
        <translation>Un moteur à balais ralentit en vieillissant, un moteur pas à pas garde son allure. Vide&#xa0;: rien n'en est dit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How high the end of the line hangs above the water. Below the water, or with no air gap, the jug can siphon into the tank.</source>
        <extracomment>pump.outlet_height</extracomment>
        <translation>À quelle hauteur le bout du tuyau pend au-dessus de l'eau. Sous l'eau, ou sans coupure d'air, le bidon peut se siphonner dans le bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of the line, from the tubing's label. With its length it says how much must be primed after a refill.</source>
        <extracomment>pump.line_bore</extracomment>
        <translation>Diamètre intérieur du tuyau, d'après son étiquette. Avec sa longueur il dit combien il faut amorcer après un remplissage.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of the line from the jug to the water.</source>
        <extracomment>pump.line_length</extracomment>
        <translation>Longueur du tuyau du bidon jusqu'à l'eau.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The date its head or tubing was last changed. Wear is counted from it.</source>
        <extracomment>pump.head_fitted</extracomment>
        <translation>La date où sa tête ou son tube a été changé pour la dernière fois. L'usure est comptée à partir de là.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Hours this head has run by now, where the pump counts them. Wear goes with hours, not with age.</source>
        <extracomment>pump.head_hours</extracomment>
        <translation>Les heures que cette tête a tournées jusqu'ici, si la pompe les compte. L'usure suit les heures, pas l'âge.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many running hours a head of this kind lasts. Empty: {life}, which is common practice.</source>
        <extracomment>pump.head_life</extracomment>
        <translation>Combien d'heures de marche dure une tête de ce genre. Vide&#xa0;: {life}, selon la pratique courante.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Kind and size of the tubing, so that the next one is the same.</source>
        <extracomment>pump.tubing</extracomment>
        <translation>Genre et taille du tube, pour que le prochain soit le même.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the runs were made. What is calibrated is what the pump gave that day.</source>
        <extracomment>calibration.at</extracomment>
        <translation>Quand les essais ont été faits. Ce qui est étalonné est ce que la pompe donnait ce jour-là.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump's hour counter showed, if it has one. A line through several calibrations then shows the wear.</source>
        <extracomment>calibration.hours</extracomment>
        <translation>Ce que montrait le compteur d'heures de la pompe, si elle en a un. Une droite à travers plusieurs étalonnages montre alors l'usure.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the water was caught and measured with. A scale is usually closer than a cylinder for small amounts.</source>
        <extracomment>calibration.method</extracomment>
        <translation>Avec quoi l'eau a été recueillie et mesurée. Pour de petites quantités, une balance est d'ordinaire plus juste qu'une éprouvette.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The smallest step of the cylinder's scale. Empty: the last digit you wrote.</source>
        <extracomment>calibration.graduation</extracomment>
        <translation>La plus petite graduation de l'éprouvette. Vide&#xa0;: le dernier chiffre que vous avez écrit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The last digit the scale shows. Empty: the last digit you wrote.</source>
        <extracomment>calibration.readability</extracomment>
        <translation>Le dernier chiffre que montre la balance. Vide&#xa0;: le dernier chiffre que vous avez écrit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the water that was weighed: warm water weighs less. Empty: an ordinary room, which widens the interval a little.</source>
        <extracomment>calibration.water_temperature</extracomment>
        <translation>De l'eau qui a été pesée&#xa0;: l'eau chaude pèse moins. Vide&#xa0;: une pièce ordinaire, ce qui élargit un peu l'intervalle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who made the runs.</source>
        <extracomment>calibration.who</extracomment>
        <translation>Qui a fait les essais.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>A hand on a stop watch is a little late or early each time; the pump's own clock is not. It counts in the interval.</source>
        <extracomment>calibration.timed</extracomment>
        <translation>Une main sur un chronomètre est chaque fois un peu en retard ou en avance&#xa0;; l'horloge de la pompe ne l'est pas. Cela compte dans l'intervalle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How many doses made up one run, where the pump cannot run without stopping. Empty: one.</source>
        <extracomment>calibration.doses</extracomment>
        <translation>De combien de doses était fait un essai, si la pompe ne peut pas tourner sans s'arrêter. Vide&#xa0;: une.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Weighing only: air lifts a little. It matters high in the mountains. Empty: that of sea level, within a wide interval.</source>
        <extracomment>calibration.air_pressure</extracomment>
        <translation>Seulement pour la pesée&#xa0;: l'air porte un peu. Cela compte en haute montagne. Vide&#xa0;: celle du niveau de la mer, dans un large intervalle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long this run lasted. Run about as long as a dose in use, and longer for a weak pump. Empty: as the run before.</source>
        <extracomment>calibration.run_seconds</extracomment>
        <translation>Combien de temps a duré cet essai. Faites tourner à peu près aussi longtemps qu'une dose en service, et plus longtemps pour une pompe faible. Vide&#xa0;: comme l'essai d'avant.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What came out in this run. {runs} runs show how well the pump repeats itself; prime the line before the first.</source>
        <extracomment>calibration.run_reads</extracomment>
        <translation>Ce qui est sorti pendant cet essai. {runs} essais montrent si la pompe se répète bien&#xa0;; amorcez le tuyau avant le premier.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you call it. It stands on its label and in the plan of the day.</source>
        <extracomment>food.name</extracomment>
        <translation>Le nom que vous lui donnez. Il figure sur son étiquette et dans le plan du jour.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What it is decides how it is handled and how long it may stand in a line. A liquid food spoils.</source>
        <extracomment>food.sort</extracomment>
        <translation>Ce que c'est décide comment on la manie et combien de temps elle peut rester dans un tuyau. Une nourriture liquide se gâte.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The day it was opened. With how long it keeps it gives the day to throw it away.</source>
        <extracomment>food.opened_on</extracomment>
        <translation>Le jour où elle a été ouverte. Avec sa durée de conservation, il donne le jour où il faut la jeter.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Days it keeps once opened, from its label. Empty: no date is given.</source>
        <extracomment>food.keeps_days</extracomment>
        <translation>Jours de conservation après ouverture, d'après son étiquette. Vide&#xa0;: aucune date n'est donnée.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it stands in the cold. A liquid food in the warm keeps {warm} day at most, which is common practice.</source>
        <extracomment>food.cold</extracomment>
        <translation>Si elle est au froid. Une nourriture liquide au chaud se garde {warm} jour au plus, selon la pratique courante.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was in its jug when it was opened. It says when it runs out, and what is left when it must be thrown away.</source>
        <extracomment>food.jug_volume</extracomment>
        <translation>Combien il y avait dans son bidon à l'ouverture. Cela dit quand il sera vide, et ce qui reste quand il faut la jeter.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How its label speaks: what a millilitre carries, percent by mass, or what a dose does to so much water.</source>
        <extracomment>food.says</extracomment>
        <translation>Comment parle son étiquette&#xa0;: ce que porte un millilitre, un pourcentage en masse, ou ce qu'une dose fait à tant d'eau.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Nitrogen in a millilitre, from the label or its maker. What the animals do not keep becomes nitrate. It is needed.</source>
        <extracomment>food.nitrogen</extracomment>
        <translation>L'azote d'un millilitre, d'après l'étiquette ou le fabricant. Ce que les animaux ne gardent pas devient nitrate. Il est nécessaire.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Phosphorus in a millilitre, as the element: a figure as P2O5 is more than twice as large. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus</extracomment>
        <translation>Le phosphore d'un millilitre, en tant qu'élément&#xa0;: un chiffre en P2O5 est plus de deux fois plus grand. Vide&#xa0;: le phosphate n'est pas suivi.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent protein on the label. Divided by {protein} it is nitrogen.</source>
        <extracomment>food.protein</extracomment>
        <translation>Pourcentage de protéines sur l'étiquette. Divisé par {protein}, c'est de l'azote.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent nitrogen, where the label says so itself; it goes before the protein.</source>
        <extracomment>food.nitrogen_share</extracomment>
        <translation>Pourcentage d'azote, si l'étiquette le dit elle-même&#xa0;; il passe avant les protéines.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Percent phosphorus by mass, as the element, not as P2O5. Empty: phosphate is not followed.</source>
        <extracomment>food.phosphorus_share</extracomment>
        <translation>Pourcentage de phosphore en masse, en tant qu'élément, pas en P2O5. Vide&#xa0;: le phosphate n'est pas suivi.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How heavy a millilitre is, to turn percent by mass into amounts. Empty: as heavy as water.</source>
        <extracomment>food.density</extracomment>
        <translation>Combien pèse un millilitre, pour changer un pourcentage en masse en quantités. Vide&#xa0;: comme l'eau.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What its label says it raises.</source>
        <extracomment>food.label_parameter</extracomment>
        <translation>Ce que son étiquette dit qu'elle relève.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The dose in the label's sentence.</source>
        <extracomment>food.label_dose</extracomment>
        <translation>La dose dans la phrase de l'étiquette.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The water in the label's sentence. Not your tank's.</source>
        <extracomment>food.label_water</extracomment>
        <translation>L'eau dans la phrase de l'étiquette. Pas celle de votre bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The rise in the label's sentence.</source>
        <extracomment>food.label_raises</extracomment>
        <translation>La hausse dans la phrase de l'étiquette.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much of it is given in a whole day, all feedings together.</source>
        <extracomment>food.per_day</extracomment>
        <translation>Combien il en est donné en un jour entier, tous les repas ensemble.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many portions. Empty: the doses a day of its pump, else one.</source>
        <extracomment>food.feedings</extracomment>
        <translation>En combien de portions. Vide&#xa0;: les doses par jour de sa pompe, sinon une.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether it is being given now. A paused food counts for nothing.</source>
        <extracomment>food.paused</extracomment>
        <translation>Si elle est donnée en ce moment. Une nourriture en pause ne compte pour rien.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The pump that gives it, if one does. A pump draws from one jug only.</source>
        <extracomment>food.pump</extracomment>
        <translation>La pompe qui la donne, s'il y en a une. Une pompe ne puise que dans un bidon.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Inside diameter of its line. Food that stands in a warm line spoils. Empty: that of its pump.</source>
        <extracomment>food.line_bore</extracomment>
        <translation>Diamètre intérieur de son tuyau. La nourriture qui reste dans un tuyau chaud se gâte. Vide&#xa0;: celui de sa pompe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Length of its line. Empty: that of its pump.</source>
        <extracomment>food.line_length</extracomment>
        <translation>Longueur de son tuyau. Vide&#xa0;: celle de sa pompe.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>One figure for both pumps, what the exchange equals as a batch change, or each pump by itself where they differ.</source>
        <extracomment>water.way</extracomment>
        <translation>Un chiffre pour les deux pompes, ce que le renouvellement vaut en un changement d'un coup, ou chaque pompe pour elle-même si elles diffèrent.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The share of the water you used to change at once. The continuous exchange is made as strong as that.</source>
        <extracomment>water.as_much_as</extracomment>
        <translation>La part de l'eau que vous changiez d'un coup. Le renouvellement continu est rendu aussi fort.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How often you changed that much. Empty: every {week} days.</source>
        <extracomment>water.every_days</extracomment>
        <translation>Tous les combien de jours vous en changiez autant. Vide&#xa0;: tous les {week} jours.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of old water takes out in a day, as calibrated. Top-off fills what is missing.</source>
        <extracomment>water.out</extracomment>
        <translation>Ce que la pompe d'eau usée sort en un jour, d'après l'étalonnage. L'eau d'appoint complète ce qui manque.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the pump of new water brings in a day. If it differs from the other, salinity drifts.</source>
        <extracomment>water.in</extracomment>
        <translation>Ce que la pompe d'eau neuve apporte en un jour. Si elle diffère de l'autre, la salinité dérive.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of old water takes before it overflows. It says when to empty it.</source>
        <extracomment>water.old_jug</extracomment>
        <translation>Ce que contient le bidon d'eau usée avant de déborder. Cela dit quand le vider.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the jug of new water holds. It says when to fill it, and whether it could flood the tank.</source>
        <extracomment>water.new_jug</extracomment>
        <translation>Ce que contient le bidon d'eau neuve. Cela dit quand le remplir, et s'il pourrait faire déborder le bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How far ahead the values are followed. Empty: {ahead} days.</source>
        <extracomment>water.days</extracomment>
        <translation>Jusqu'où les valeurs sont suivies. Vide&#xa0;: {ahead} jours.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water, tested when all salt is clear. Empty: that of the tank.</source>
        <extracomment>water.salinity</extracomment>
        <translation>De l'eau neuve, mesurée quand tout le sel est dissous. Vide&#xa0;: celle du bac.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Of the new water as it goes in. Far from the tank's, and you are warned. Empty: not checked.</source>
        <extracomment>water.temperature</extracomment>
        <translation>De l'eau neuve telle qu'elle entre. Si elle est loin de celle du bac, vous êtes averti. Vide&#xa0;: non vérifié.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the new water holds of this, from a test of it. Empty: that of natural seawater at the same salinity, which a salt mix may miss.</source>
        <extracomment>water.value</extracomment>
        <translation>Ce que l'eau neuve en contient, d'après un test. Vide&#xa0;: autant que l'eau de mer naturelle à la même salinité, ce qu'un mélange de sel peut manquer.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much new water you mix at a time.</source>
        <extracomment>water.mix_volume</extracomment>
        <translation>Combien d'eau neuve vous préparez à la fois.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag of salt mix: how much of it the bag says to take.</source>
        <extracomment>water.label_mass</extracomment>
        <translation>Sur le sac de mélange de sel&#xa0;: combien il dit d'en prendre.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: for how much water that is.</source>
        <extracomment>water.label_water</extracomment>
        <translation>Sur le sac&#xa0;: pour combien d'eau.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From the bag: the salinity that it is said to give.</source>
        <extracomment>water.label_salinity</extracomment>
        <translation>Sur le sac&#xa0;: la salinité qu'il est censé donner.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What you measured in the bucket when all was clear. What to add, salt or water, follows from it.</source>
        <extracomment>water.mix_measured</extracomment>
        <translation>Ce que vous avez mesuré dans le seau quand tout était clair. Ce qu'il faut ajouter, sel ou eau, en découle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What skimmer, algae and media take out in a day, as a share. Empty: nothing leaves but by exchange.</source>
        <extracomment>water.nitrate_loss, water.phosphate_loss</extracomment>
        <translation>Ce que l'écumeur, les algues et les masses filtrantes enlèvent en un jour, en part. Vide&#xa0;: rien ne part sauf par le renouvellement.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What is in the jug now. Two levels show what the pump really took out of it.</source>
        <extracomment>level.level</extracomment>
        <translation>Ce qu'il y a maintenant dans le bidon. Deux niveaux montrent ce que la pompe y a vraiment pris.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was left before you filled it up. Empty: nobody looked, and the time before is not checked.</source>
        <extracomment>level.before</extracomment>
        <translation>Ce qui restait avant le remplissage. Vide&#xa0;: personne n'a regardé, et le temps d'avant n'est pas vérifié.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When the level was read. Empty: now.</source>
        <extracomment>level.at</extracomment>
        <translation>Quand le niveau a été lu. Vide&#xa0;: maintenant.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who read it.</source>
        <extracomment>level.who</extracomment>
        <translation>Qui l'a lu.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When somebody is back at the tank. What must be filled before, and what falls due meanwhile, follows.</source>
        <extracomment>absence.until</extracomment>
        <translation>Quand quelqu'un sera de retour au bac. Ce qu'il faut remplir avant, et ce qui sera à faire entre-temps, en découle.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What happened: a test, a dose by hand, a water change, or only a note.</source>
        <extracomment>entry.kind</extracomment>
        <translation>Ce qui s'est passé&#xa0;: un test, une dose à la main, un changement d'eau, ou seulement une note.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What was tested.</source>
        <extracomment>entry.parameter</extracomment>
        <translation>Ce qui a été testé.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What the test showed, in the unit of the kit. Note every test, good ones too: the use per day is learned from them.</source>
        <extracomment>entry.value</extracomment>
        <translation>Ce que le test a montré, dans l'unité du kit. Notez chaque test, les bons aussi&#xa0;: la consommation journalière s'apprend d'eux.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug the dose came from. What its batch carried is kept with the dose.</source>
        <extracomment>entry.stock</extracomment>
        <translation>Le bidon d'où venait la dose. Ce que portait sa préparation est gardé avec la dose.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much was given, all of it at this one time.</source>
        <extracomment>entry.amount</extracomment>
        <translation>Combien a été donné, le tout à ce seul moment.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much water was changed at once.</source>
        <extracomment>entry.litres</extracomment>
        <translation>Combien d'eau a été changée d'un coup.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Anything worth finding again: a lost coral, a new lamp, a cleaned pump.</source>
        <extracomment>entry.text</extracomment>
        <translation>Tout ce qui vaut d'être retrouvé&#xa0;: un corail perdu, une lampe neuve, une pompe nettoyée.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>When it was. Empty: now.</source>
        <extracomment>entry.at</extracomment>
        <translation>Quand c'était. Vide&#xa0;: maintenant.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which kit or meter, so that a jump can be laid at a new kit's door.</source>
        <extracomment>entry.kit</extracomment>
        <translation>Quel kit ou quel appareil, pour qu'un saut puisse être mis sur le compte d'un nouveau kit.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Who did it, so that two people do not dose twice.</source>
        <extracomment>entry.who</extracomment>
        <translation>Qui l'a fait, pour que deux personnes ne dosent pas deux fois.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>From when nobody wants to hear a pump. Empty: pumps may run at any time.</source>
        <extracomment>timetable.quiet_from</extracomment>
        <translation>À partir de quand personne ne veut entendre de pompe. Vide&#xa0;: les pompes peuvent tourner à toute heure.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Until when it is to be quiet. Over midnight is fine.</source>
        <extracomment>timetable.quiet_to</extracomment>
        <translation>Jusqu'à quand le calme doit durer. Passer minuit est possible.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How long doses of alkalinity and of calcium stay apart, so that they do not meet undiluted. Empty: {apart} minutes; never less than {least_apart}. Common practice.</source>
        <extracomment>timetable.apart</extracomment>
        <translation>Combien de temps les doses d'alcalinité et de calcium restent séparées, pour qu'elles ne se rencontrent pas sans être diluées. Vide&#xa0;: {apart} minutes&#xa0;; jamais moins de {least_apart}. Pratique courante.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>For pumps on one supply or outlet: no two run at once.</source>
        <extracomment>timetable.one_at_a_time</extracomment>
        <translation>Pour des pompes sur une même alimentation ou sortie&#xa0;: jamais deux en marche à la fois.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>In how many doses the day's amount is given. Empty: as the pump is set, or fewer where the quiet hours leave less room.</source>
        <extracomment>timetable.doses_wanted</extracomment>
        <translation>En combien de doses la quantité du jour est donnée. Vide&#xa0;: comme la pompe est réglée, ou moins si les heures de calme laissent moins de place.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>No dose of this pump before that time of day. Empty: any time.</source>
        <extracomment>timetable.first_at</extracomment>
        <translation>Aucune dose de cette pompe avant cette heure. Vide&#xa0;: à toute heure.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The fewest doses you would accept where the wanted number does not fit. Empty: no bound.</source>
        <extracomment>timetable.doses_fewest</extracomment>
        <translation>Le moins de doses que vous accepteriez si le nombre voulu ne tient pas. Vide&#xa0;: pas de borne.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most doses you would accept. Empty: no bound.</source>
        <extracomment>timetable.doses_most</extracomment>
        <translation>Le plus de doses que vous accepteriez. Vide&#xa0;: pas de borne.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The jug that ran in. None, if a test alone shows that a value is too high.</source>
        <extracomment>recovery.stock</extracomment>
        <translation>Le bidon qui s'est vidé dans le bac. Aucun, si seul un test montre qu'une valeur est trop haute.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>How much ran in: what is missing from the jug. If unsure, take the most it can have been.</source>
        <extracomment>recovery.ran_in</extracomment>
        <translation>Combien a coulé&#xa0;: ce qui manque dans le bidon. En cas de doute, prenez le plus que cela peut avoir été.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The value that is too high. What ran in may raise several; take the worst.</source>
        <extracomment>recovery.parameter</extracomment>
        <translation>La valeur trop haute. Ce qui a coulé peut en relever plusieurs&#xa0;; prenez la pire.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>What a test showed since. Empty: what ran in, on top of the last test before.</source>
        <extracomment>recovery.measured</extracomment>
        <translation>Ce qu'un test a montré depuis. Vide&#xa0;: ce qui a coulé, en plus du dernier test d'avant.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Where it is to come down to. Empty: the top of what is usually kept.</source>
        <extracomment>recovery.target</extracomment>
        <translation>Jusqu'où elle doit redescendre. Vide&#xa0;: le haut de ce que l'on tient d'ordinaire.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Milky water means that lime is falling out: what was dosed is leaving the water by itself, and a test is needed before anything else.</source>
        <extracomment>recovery.cloudy</extracomment>
        <translation>Une eau laiteuse veut dire que du calcaire précipite&#xa0;: ce qui a été dosé quitte l'eau de lui-même, et un test est nécessaire avant toute chose.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>White film on glass or heaters is lime that has fallen out.</source>
        <extracomment>recovery.white_film</extracomment>
        <translation>Un film blanc sur les vitres ou les chauffages est du calcaire précipité.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The most new water you can mix and bring in, in a day. Empty: {largest}&#xa0;% of the tank, which is the most in any case.</source>
        <extracomment>recovery.most_per_day</extracomment>
        <translation>Le plus d'eau neuve que vous pouvez préparer et apporter en un jour. Vide&#xa0;: {largest}&#xa0;% du bac, ce qui est le maximum en tout cas.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Whether doses of this one stop as well while the other value comes down. It then falls by what the animals use.</source>
        <extracomment>recovery.hold</extracomment>
        <translation>Si les doses de celle-ci s'arrêtent aussi pendant que l'autre valeur redescend. Elle baisse alors de ce que les animaux consomment.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>Which value the chart below shows. It changes nothing in the plan.</source>
        <extracomment>shown.parameter</extracomment>
        <translation>Quelle valeur montre le graphique ci-dessous. Cela ne change rien au plan.</translation>
    </message>
    <message>
        <location filename="../why.toml"/>
        <source>The paper in your printer. The letters keep their size; smaller paper takes more sheets.</source>
        <extracomment>printed.paper</extracomment>
        <translation>Le papier de votre imprimante. Les lettres gardent leur taille&#xa0;; un papier plus petit demande plus de feuilles.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Alkalinity</source>
        <extracomment>alkalinity</extracomment>
        <translation>Alcalinité</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much acid the water can take up before its pH falls for good. Corals build skeleton from it: two equivalents for every calcium. Counted in dKH, meq per L or ppm as CaCO3.</source>
        <extracomment>alkalinity</extracomment>
        <translation>Combien d'acide l'eau peut absorber avant que son pH ne baisse pour de bon. Les coraux en bâtissent leur squelette&#xa0;: deux équivalents par calcium. Comptée en dKH, meq par L ou ppm comme CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far the water is above the point at which lime dissolves. Corals need it above 1; where it is very high, lime falls out by itself.</source>
        <extracomment>aragonite saturation</extracomment>
        <translation>De combien l'eau dépasse le point où le calcaire se dissout. Les coraux en ont besoin au-dessus de 1&#xa0;; si elle est très haute, le calcaire précipite de lui-même.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What was mixed in a jug at one time. A new batch of another strength makes the cards of the old one void.</source>
        <extracomment>batch</extracomment>
        <translation>Ce qui a été préparé en une fois dans un bidon. Une nouvelle préparation d'une autre concentration annule les fiches de l'ancienne.</translation>
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
        <translation>Avec l'alcalinité, la matière du squelette des coraux. À un meq d'alcalinité consommé répondent 20,04 mg de calcium.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Finding out what a pump really gives: let it run for a known time, measure what came out, three times or more.</source>
        <extracomment>calibration</extracomment>
        <translation>Trouver ce qu'une pompe donne vraiment&#xa0;: la faire tourner un temps connu, mesurer ce qui est sorti, trois fois ou plus.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Correction</source>
        <extracomment>correction</extracomment>
        <translation>Correction</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing back a value that has fallen, slowly, over days. A fast rise harms animals more than the low value did.</source>
        <extracomment>correction</extracomment>
        <translation>Ramener une valeur qui a baissé, lentement, sur des jours. Une hausse rapide nuit plus aux animaux que la valeur basse.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>dKH (degrees of carbonate hardness)</source>
        <extracomment>dKH</extracomment>
        <translation>dKH (degrés de dureté carbonatée)</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A unit of alkalinity. 2.8 dKH are 1 meq per L, or 50 ppm as CaCO3.</source>
        <extracomment>dKH</extracomment>
        <translation>Une unité d'alcalinité. 2,8 dKH font 1 meq par L, ou 50 ppm comme CaCO3.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Dose and test</source>
        <extracomment>dose and test</extracomment>
        <translation>Doser et tester</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A way to find the net volume: give a known dose, test the rise, and see how much water it was spread through.</source>
        <extracomment>dose and test</extracomment>
        <translation>Une façon de trouver le volume net&#xa0;: donner une dose connue, mesurer la hausse, et voir dans combien d'eau elle s'est répartie.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The paper that hangs on the stand: how much of what, when, until which date, and when to stop.</source>
        <extracomment>dose card</extracomment>
        <translation>Le papier accroché au meuble&#xa0;: combien de quoi, quand, jusqu'à quelle date, et quand s'arrêter.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hard limit</source>
        <extracomment>hard limit</extracomment>
        <translation>Limite stricte</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A bound that no plan passes, whatever the reason. Inside it lies the recommended one, which may be passed with a written reason.</source>
        <extracomment>hard limit</extracomment>
        <translation>Une borne qu'aucun plan ne passe, quelle que soit la raison. En deçà se trouve la borne recommandée, que l'on peut passer avec une raison écrite.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Hydrate</source>
        <extracomment>hydrate</extracomment>
        <translation>Hydrate</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt with water built into its crystals. A gram of it holds less of what you want: calcium chloride dihydrate is a quarter water.</source>
        <extracomment>hydrate</extracomment>
        <translation>Un sel qui a de l'eau dans ses cristaux. Un gramme contient moins de ce que vous voulez&#xa0;: le chlorure de calcium dihydraté est pour un quart de l'eau.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Limewater</source>
        <extracomment>limewater</extracomment>
        <translation>Eau de chaux</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Water saturated with calcium hydroxide. It brings calcium and alkalinity in step and lifts the pH, so never more of it than evaporates.</source>
        <extracomment>limewater</extracomment>
        <translation>De l'eau saturée d'hydroxyde de calcium. Elle apporte calcium et alcalinité au même pas et fait monter le pH&#xa0;: donc jamais plus qu'il ne s'en évapore.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Filled with water until salt and water together reach the mark. A litre of water poured on the salt makes more than a litre.</source>
        <extracomment>made up to</extracomment>
        <translation>Rempli d'eau jusqu'à ce que sel et eau ensemble atteignent le trait. Un litre d'eau versé sur le sel donne plus d'un litre.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Magnesium</source>
        <extracomment>magnesium</extracomment>
        <translation>Magnésium</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Keeps lime from falling out too readily. Set it right first, then calcium and alkalinity.</source>
        <extracomment>magnesium</extracomment>
        <translation>Empêche le calcaire de précipiter trop facilement. Réglez-le d'abord, puis le calcium et l'alcalinité.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Metering pump</source>
        <extracomment>metering pump</extracomment>
        <translation>Pompe doseuse</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A pump that gives small known amounts. In most, rollers squeeze a soft tube, so that the jug's water touches nothing else.</source>
        <extracomment>metering pump</extracomment>
        <translation>Une pompe qui donne de petites quantités connues. Dans la plupart, des galets pressent un tube souple, si bien que l'eau du bidon ne touche rien d'autre.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Natural seawater</source>
        <extracomment>natural seawater</extracomment>
        <translation>Eau de mer naturelle</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The open sea at salinity 35. What is not known of new water is taken to be so.</source>
        <extracomment>natural seawater</extracomment>
        <translation>La haute mer à une salinité de 35. Ce que l'on ne sait pas de l'eau neuve est pris ainsi.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>All the water that moves together, without rock, sand and equipment. Often a quarter less than the glass would hold.</source>
        <extracomment>net volume</extracomment>
        <translation>Toute l'eau qui bouge ensemble, sans roches, sable ni matériel. Souvent un quart de moins que ce que tiendraient les vitres.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Nitrate</source>
        <extracomment>nitrate</extracomment>
        <translation>Nitrate</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the nitrogen in food. A little feeds corals and algae; much of it comes from feeding too much.</source>
        <extracomment>nitrate</extracomment>
        <translation>Ce que devient l'azote des nourritures. Un peu nourrit coraux et algues&#xa0;; beaucoup vient de trop de nourriture.</translation>
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
        <translation>À quel point l'eau est acide ou alcaline. Il varie avec la lumière et l'air&#xa0;; aucune dose ne devrait le relever de plus de 0,2 environ en une heure.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Phosphate</source>
        <extracomment>phosphate</extracomment>
        <translation>Phosphate</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What becomes of the phosphorus in food. Corals need a trace of it; a label in P2O5 or P must not be read as phosphate.</source>
        <extracomment>phosphate</extracomment>
        <translation>Ce que devient le phosphore des nourritures. Les coraux en ont besoin d'une trace&#xa0;; une étiquette en P2O5 ou en P ne doit pas être lue comme du phosphate.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Precipitation</source>
        <extracomment>precipitation</extracomment>
        <translation>Précipitation</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Lime falling out of the water: milky clouds, white films, crust on pumps. It takes calcium and alkalinity with it, so no figure holds any longer.</source>
        <extracomment>precipitation</extracomment>
        <translation>Du calcaire qui tombe de l'eau&#xa0;: nuages laiteux, films blancs, croûte sur les pompes. Il emporte calcium et alcalinité, si bien qu'aucun chiffre ne tient plus.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Prime</source>
        <extracomment>prime</extracomment>
        <translation>Amorcer</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Run the pump until liquid stands at the end of the line. Without it the first doses are air.</source>
        <extracomment>prime</extracomment>
        <translation>Faire tourner la pompe jusqu'à ce que le liquide arrive au bout du tuyau. Sans cela les premières doses sont de l'air.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Pump head</source>
        <extracomment>pump head</extracomment>
        <translation>Tête de pompe</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>The part with rollers and tube that wears. A worn head turns as before and gives less.</source>
        <extracomment>pump head</extracomment>
        <translation>La partie à galets et à tube, qui s'use. Une tête usée tourne comme avant et donne moins.</translation>
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
        <translation>La ligne du graphique qu'une valeur doit suivre pendant une correction, avec une bande pour ce qui n'est pas connu exactement.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What a test showed, with the time of the test. It is never exact: every kit has its plus and minus.</source>
        <extracomment>reading</extracomment>
        <translation>Ce qu'un test a montré, avec l'heure du test. Ce n'est jamais exact&#xa0;: chaque kit a son plus ou moins.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Bringing down a value that is too high: stop the doses, change water, or both. Never by dosing something against it.</source>
        <extracomment>recovery</extracomment>
        <translation>Faire redescendre une valeur trop haute&#xa0;: arrêter les doses, changer de l'eau, ou les deux. Jamais en dosant quelque chose contre elle.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How salty the water is; open sea has about 35. Shown as ppt, practical salinity or specific gravity.</source>
        <extracomment>salinity</extracomment>
        <translation>Combien l'eau est salée&#xa0;; la haute mer a environ 35. Montrée en ppt, en salinité pratique ou en densité relative.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Siphon</source>
        <extracomment>siphon</extracomment>
        <translation>Siphon</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A jug emptying itself into the tank through its line. End the line above the water with an air gap, and stand the jug low.</source>
        <extracomment>siphon</extracomment>
        <translation>Un bidon qui se vide de lui-même dans le bac par son tuyau. Terminez le tuyau au-dessus de l'eau avec une coupure d'air, et posez le bidon bas.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Solubility</source>
        <extracomment>solubility</extracomment>
        <translation>Solubilité</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much of a salt will dissolve. In the cold most dissolve less; lime dissolves less in the warm.</source>
        <extracomment>solubility</extracomment>
        <translation>Combien d'un sel se dissout. Au froid la plupart se dissolvent moins&#xa0;; la chaux se dissout moins au chaud.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Specific gravity</source>
        <extracomment>specific gravity</extracomment>
        <translation>Densité relative</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How much heavier than fresh water the tank's water is, as a hydrometer shows it. It depends on temperature, so say at which.</source>
        <extracomment>specific gravity</extracomment>
        <translation>Combien l'eau du bac est plus lourde que l'eau douce, comme le montre un densimètre. Elle dépend de la température&#xa0;: dites donc à laquelle.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stale reading</source>
        <extracomment>stale reading</extracomment>
        <translation>Relevé périmé</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A reading too old to dose from: alkalinity after 3 days, calcium after 7, magnesium after 14. Test again first.</source>
        <extracomment>stale reading</extracomment>
        <translation>Un relevé trop ancien pour doser&#xa0;: l'alcalinité après 3 jours, le calcium après 7, le magnésium après 14. Testez d'abord de nouveau.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Stock solution</source>
        <extracomment>stock solution</extracomment>
        <translation>Solution mère</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A salt dissolved in water, strong enough to be dosed by the millilitre.</source>
        <extracomment>stock solution</extracomment>
        <translation>Un sel dissous dans l'eau, assez fort pour être dosé au millilitre.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Top-off</source>
        <extracomment>top-off</extracomment>
        <translation>Eau d'appoint</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Fresh water that replaces what evaporates, so that salinity stays.</source>
        <extracomment>top-off</extracomment>
        <translation>De l'eau douce qui remplace ce qui s'évapore, pour que la salinité reste.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two-part</source>
        <extracomment>two-part</extracomment>
        <translation>Deux bidons accordés</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Two jugs, one for alkalinity and one for calcium, so strong that equal millilitres keep both in step. They must never meet undiluted.</source>
        <extracomment>two-part</extracomment>
        <translation>Deux bidons, un pour l'alcalinité et un pour le calcium, si concentrés que des millilitres égaux gardent les deux au même pas. Ils ne doivent jamais se rencontrer sans être dilués.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Uncertainty</source>
        <extracomment>uncertainty</extracomment>
        <translation>Incertitude</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>How far a figure may be off, either way. Nineteen in twenty true values lie within the ± that is shown.</source>
        <extracomment>uncertainty</extracomment>
        <translation>De combien un chiffre peut être faux, dans un sens ou dans l'autre. Dix-neuf vraies valeurs sur vingt sont dans le ± affiché.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Giving back every day what the animals use in a day, so that values stay where they are.</source>
        <extracomment>upkeep</extracomment>
        <translation>Rendre chaque jour ce que les animaux consomment en un jour, pour que les valeurs restent où elles sont.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Use per day</source>
        <extracomment>use per day</extracomment>
        <translation>Consommation journalière</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>What the animals take out of the water in a day. It grows with the corals and falls when they suffer.</source>
        <extracomment>use per day</extracomment>
        <translation>Ce que les animaux prennent à l'eau en un jour. Elle croît avec les coraux et baisse quand ils souffrent.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Void card</source>
        <extracomment>void card</extracomment>
        <translation>Fiche annulée</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>A card that must not be followed any more, since its plan or its jug has changed. Take it off the stand and say so in the window.</source>
        <extracomment>void card</extracomment>
        <translation>Une fiche qu'il ne faut plus suivre, parce que son plan ou son bidon a changé. Retirez-la du meuble et dites-le dans la fenêtre.</translation>
    </message>
    <message>
        <location filename="../glossary.toml"/>
        <source>Old water out, new water in, at once or slowly all day. A slow exchange of the whole volume leaves a little over a third of the old water.</source>
        <extracomment>water exchange</extracomment>
        <translation>L'eau usée sort, l'eau neuve entre, d'un coup ou lentement toute la journée. Un renouvellement lent de tout le volume laisse un peu plus d'un tiers de l'eau usée.</translation>
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
        <translation>L par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>US gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>US gal par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>imperial gal per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>imperial gal par jour</translation>
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
        <translation>mL par cm</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>kg per m3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>kg par m3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>g per 100 mL</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>g par 100 mL</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq par L</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm comme CaCO3</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par kg</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme N</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme P</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>meq per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>meq par L par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>dKH per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>dKH par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mmol per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mmol par L par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppm as CaCO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppm comme CaCO3 par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per kg per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par kg par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as NO3 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme NO3 par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as N per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme N par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as PO4 per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme PO4 par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>mg per L as P per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>mg par L comme P par jour</translation>
    </message>
    <message>
        <location filename="../../desktop/evenwater/engine/units.py"/>
        <source>ppt per day</source>
        <extracomment>a unit beside a figure</extracomment>
        <translation>ppt par jour</translation>
    </message>
</context>
</TS>
