// The program runs without cultures (InvariantGlobalization), whatever machine it is on.
[assembly: Trait(Runs.Name, Runs.Once)]
