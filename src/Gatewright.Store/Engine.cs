namespace Gatewright.Store;

/// <summary>The database a store is kept in.</summary>
public enum Engine
{
    /// <summary>One file: the default, for one machine.</summary>
    Sqlite,

    /// <summary>A server: for many processes over one store.</summary>
    Postgres,
}
