using System.Text.Json;
using Gatewright.App.Device;
using Gatewright.Journal.Members;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Keeping.People;

/// <summary>
/// The names of a club's members as this device last heard them from the server, and on a keeper's what the links of its crews
/// are called. They are kept beside the journal, never in
/// it, and go with the club; whoever has left has none here from the next exchange on.
/// </summary>
public sealed class MemberNames : IDisposable
{
    private const string Setting = "names";
    private static readonly TimeSpan Every = TimeSpan.FromHours(1);
    private static readonly TimeSpan EveryForUnknown = TimeSpan.FromMinutes(1);
    private readonly ClubPeople _people;
    private readonly Sharing _sharing;
    private readonly ThisDevice _device;
    private readonly ClubInHand _inHand;
    private readonly TimeProvider _clock;
    private (string Text, IReadOnlyDictionary<string, string> Names) _read = (string.Empty, new Dictionary<string, string>());
    private (string Club, DateTimeOffset At)? _asked;
    private bool _isUnknownMet;

    /// <summary>Listens for the server.</summary>
    public MemberNames(ClubPeople people, Sharing sharing, ThisDevice device, ClubInHand inHand, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(sharing);
        (_people, _sharing, _device, _inHand, _clock) = (people, sharing, device, inHand, clock);
        _sharing.Changed += Listen;
    }

    /// <summary>A member's name; empty for one who has left; null for one of whom nothing was heard.</summary>
    public string? Of(string member)
    {
        string? name = Names.GetValueOrDefault(member);
        _isUnknownMet |= name is null;
        return name;
    }

    /// <summary>Asks the server for the names, and keeps them; where it does not answer, those heard last stay.</summary>
    public async Task AskAsync()
    {
        if (!_inHand.IsOpen || _inHand.Held is not { Home: ClubHome.Server, Club: var club, Role: var role })
        {
            return;
        }

        (_asked, _isUnknownMet) = ((club, _clock.GetUtcNow()), false);
        try
        {
            Dictionary<string, string> names = (await _people.MembersAsync(club))
                .ToDictionary(p => p.Member, p => p.Role == PersonSeen.Former ? string.Empty : p.Name);
            foreach (LinkListed crew in await CrewsAsync(club, role))
            {
                names.TryAdd(crew.Invitation, crew.Label);
            }

            string text = JsonSerializer.Serialize(names, PeopleJson.Default.DictionaryStringString);
            if (_device.Device.Of(club, Setting) != text)
            {
                await _device.Device.SetAsync(club, Setting, text);
                _inHand.NamesHeard();
            }
        }
        catch (Exception cannot) when (cannot is PeopleException or ShelfException)
        {
            // A name is a help to the reader: what is read without one is no less true.
        }
    }

    /// <summary>
    /// The links of crews: what was told over one stands under the link's own id. Keepers alone may list them, and whoever is
    /// none any more hears the members' names all the same.
    /// </summary>
    private async Task<IEnumerable<LinkListed>> CrewsAsync(string club, string role)
    {
        if (Roles.Of(role) != Role.Keeper)
        {
            return [];
        }

        try
        {
            return (await _people.LinksAsync(club)).Where(l => Roles.Of(l.Role) == Role.Crew);
        }
        catch (PeopleException refused) when (!refused.IsUnreachable)
        {
            return [];
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _sharing.Changed -= Listen;

    private IReadOnlyDictionary<string, string> Names
    {
        get
        {
            string text = _device.IsOpen ? _device.Device.Of(_inHand.Held.Club, Setting) ?? string.Empty : string.Empty;
            if (text != _read.Text)
            {
                _read = (text, Read(text));
            }

            return _read.Names;
        }
    }

    private static Dictionary<string, string> Read(string text)
    {
        try
        {
            return text.Length == 0 ? [] : JsonSerializer.Deserialize(text, PeopleJson.Default.DictionaryStringString) ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }

    private void Listen()
    {
        if (_sharing.Exchange?.Status.Phase is ExchangePhase.Shared or ExchangePhase.Refused && _inHand.IsOpen && IsDue)
        {
            _ = AskAsync();
        }
    }

    private bool IsDue => _asked is not { } asked
        || asked.Club != _inHand.Held.Club
        || _clock.GetUtcNow() - asked.At >= (_isUnknownMet ? EveryForUnknown : Every);
}
