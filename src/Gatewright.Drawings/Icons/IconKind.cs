namespace Gatewright.Drawings.Icons;

/// <summary>What an icon stands for.</summary>
public enum IconKind
{
    /// <summary>A walk along the racks.</summary>
    Round,

    /// <summary>A boat.</summary>
    Boat,

    /// <summary>Work to be done.</summary>
    Jobs,

    /// <summary>Telling of something that happened.</summary>
    Report,

    /// <summary>Parts on the shelf.</summary>
    Stores,

    /// <summary>The pitch gauge.</summary>
    Gauge,

    /// <summary>The boathouse.</summary>
    Shed,

    /// <summary>Take back the last step.</summary>
    Undo,

    /// <summary>Pass over this one.</summary>
    Skip,

    /// <summary>Once more.</summary>
    Repeat,

    /// <summary>A note.</summary>
    Note,

    /// <summary>A photograph.</summary>
    Photo,

    /// <summary>Onwards.</summary>
    Next,

    /// <summary>Back to where one came from.</summary>
    Back,

    /// <summary>Everything is shared with the others.</summary>
    Shared,

    /// <summary>Something here is not shared yet.</summary>
    Unshared,

    /// <summary>Sharing goes on now.</summary>
    Sharing,

    /// <summary>There is no network.</summary>
    Offline,

    /// <summary>Search.</summary>
    Search,

    /// <summary>Show some only.</summary>
    Filter,

    /// <summary>The club's people.</summary>
    People,

    /// <summary>What can be set.</summary>
    Settings,

    /// <summary>Why it is so.</summary>
    Explain,

    /// <summary>The spirit level.</summary>
    Level,

    /// <summary>An oar.</summary>
    Oar,

    /// <summary>Held ashore.</summary>
    Hold,

    /// <summary>Something new.</summary>
    Add,

    /// <summary>Away with it.</summary>
    Close,

    /// <summary>Read a code.</summary>
    Scan,

    /// <summary>History over the days.</summary>
    History,

    /// <summary>A rack that boats lie on.</summary>
    Rack,

    /// <summary>The limits that boats are judged by.</summary>
    Standard,

    /// <summary>More below.</summary>
    More,
}
