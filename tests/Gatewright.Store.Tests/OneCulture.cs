// What is kept is JSON and SQL; no number is written for people.
[assembly: Trait(Runs.Name, Runs.Once)]
