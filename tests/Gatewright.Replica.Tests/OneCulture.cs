// What a device keeps and sends is JSON; no number is written for people.
[assembly: Trait(Runs.Name, Runs.Once)]
