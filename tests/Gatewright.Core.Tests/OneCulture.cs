// Core asks for no culture: the compiler holds it (BannedSymbols.txt).
[assembly: Trait(Runs.Name, Runs.Once)]
