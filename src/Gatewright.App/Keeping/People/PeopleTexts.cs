namespace Gatewright.App.Keeping.People;

/// <summary>Names the texts of the club's people.</summary>
public sealed class PeopleTexts;
