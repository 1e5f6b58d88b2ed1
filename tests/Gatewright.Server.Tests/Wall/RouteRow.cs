namespace Gatewright.Server.Tests.Wall;

/// <summary>What each caller hears from a route.</summary>
/// <param name="Route">The method, or PAGE, and the route's pattern.</param>
/// <param name="Answers">A status for each caller.</param>
internal sealed record RouteRow(string Route, string Answers)
{
    /// <summary>Where to ask, where the pattern alone does not say; of a club's route, what follows the club.</summary>
    public string? Path { get; init; }

    /// <summary>What to send, given the caller's member id.</summary>
    public Func<string, HttpContent>? Body { get; init; }

    /// <summary>Whether it lies under a club.</summary>
    public bool IsOfClub { get; init; }

    /// <summary>Whether it ends the caller's session.</summary>
    public bool IsLast { get; init; }

    public HttpMethod Method => Route.StartsWith("PAGE ", StringComparison.Ordinal) ? HttpMethod.Get : new(Route.Split(' ')[0]);

    /// <summary>The address, in a club.</summary>
    public string Address(string club) => IsOfClub
        ? $"/api/clubs/{club}{Path ?? Route.Split(' ')[1]["/api/clubs/{club}".Length..]}"
        : Path ?? Route.Split(' ')[1];

    public override string ToString() => Route;
}
