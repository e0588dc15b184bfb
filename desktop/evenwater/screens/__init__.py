"""View models without Qt: results of the engine turned into rows, sentences and series."""
