namespace Gatewright.Replica.Exchanging;

/// <summary>A request came to nothing.</summary>
internal sealed class ServerException(ServerTrouble trouble, string message, TimeSpan? wait = null, Exception? cause = null) : Exception(message, cause)
{
    public ServerTrouble Trouble { get; } = trouble;

    /// <summary>How long the server asks to be left alone.</summary>
    public TimeSpan? Wait { get; } = wait;
}

/// <summary>Why a request came to nothing.</summary>
public enum ServerTrouble
{
    /// <summary>No network, no server, or an answer that did not come whole.</summary>
    Unreachable,

    /// <summary>The server is there and cannot answer now.</summary>
    Busy,

    /// <summary>Nobody is signed in, the token is stale, or whoever is signed in may not: ask who is.</summary>
    Session,

    /// <summary>It was too much at once.</summary>
    TooLarge,

    /// <summary>The server does not take it.</summary>
    Refused,
}
