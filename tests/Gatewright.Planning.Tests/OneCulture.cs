// What is planned is numbers; how they are told is tried with the words.
[assembly: Trait(Runs.Name, Runs.Once)]
