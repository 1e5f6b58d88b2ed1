using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Device;

/// <summary>The club that is open on the screen: its journal as this device has it, its boats and how they stand.</summary>
/// <remarks>Pages read from it and record through it; they draw themselves anew when it says that it changed.</remarks>
public sealed class ClubInHand
{
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(2);
    private ClubCopy? _copy;
    private LearntChances? _learnt;
    private ShedVerdicts? _shed;
    private (int Count, HybridTime Last) _recorded;
    private (string Member, string Role, ClubHome Home) _standing;

    /// <summary>Said when anything in the club changed, here or elsewhere.</summary>
    public event Action? Changed;

    /// <summary>
    /// Said when an entry came to the club, from here or elsewhere: what was shown of it before is old. That the server has taken
    /// one says nothing new.
    /// </summary>
    public event Action? Recorded;

    /// <summary>
    /// Said when the member here is another, may do other things, or has left, as the server told: no entry comes with it. It is
    /// not said of what was so when the club was opened.
    /// </summary>
    public event Action? StandsOtherwise;

    /// <summary>What long work in the background takes between its pieces.</summary>
    public Breath Breath { get; } = new();

    /// <summary>Whether a club is open.</summary>
    public bool IsOpen => _copy is not null;

    /// <summary>The copy, for what is told of it.</summary>
    /// <exception cref="InvalidOperationException">No club is open.</exception>
    public ClubCopy Copy => _copy ?? throw new InvalidOperationException("No club is open.");

    /// <summary>The club.</summary>
    public Club Club => Copy.Club;

    /// <summary>Its id, the member here, their role.</summary>
    public HeldClub Held => Copy.Held;

    /// <summary>Its boats and how they stand; what did not change is not worked out again.</summary>
    public ShedVerdicts Shed => _shed ?? throw new InvalidOperationException("No club is open.");

    /// <summary>What was typed of a note on a thing and is not recorded yet, by the thing's key: a panel that closes loses nothing.</summary>
    public Dictionary<string, string> Drafts { get; } = [];

    /// <summary>What it is called.</summary>
    public string Name => ClubSettings.Name(Club) ?? Held.Name;

    /// <summary>Whether the member here may record a fact: what the server would refuse is not offered.</summary>
    /// <remarks>Whoever has left the club records nothing more in it: it would never leave this device.</remarks>
    public bool May(Fact fact) => May(role => RecordingRules.May(role, fact));

    /// <summary>Whether the member here may record facts of a kind, before there is one.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="thing">The kind of thing it is of, where properties are set or a note is made; null asks for every kind of thing.</param>
    public bool May<T>(string? thing = null)
        where T : Fact => May(role => RecordingRules.May<T>(role, thing));

    /// <summary>Whether the member here may take an entry back: only a keeper takes back what another recorded.</summary>
    public bool MayTakeBack(Recorded record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return May<Retracted>()
            && (Held.Home == ClubHome.Device || Roles.Of(Held.Role) == Role.Keeper || record.Entry.Member == Held.Member);
    }

    /// <summary>Whether there are entries, and the member here may take all of them back.</summary>
    public bool MayTakeBackAll(IEnumerable<Recorded> records)
    {
        ArgumentNullException.ThrowIfNull(records);
        bool any = false;
        foreach (Recorded record in records)
        {
            if (!MayTakeBack(record))
            {
                return false;
            }

            any = true;
        }

        return any;
    }

    /// <summary>Opens a club in place of the one before.</summary>
    /// <param name="copy">The club.</param>
    /// <param name="device">The device it is on, which remembers what its jobs have taught.</param>
    public void Open(ClubCopy copy, Replica.Device device)
    {
        ArgumentNullException.ThrowIfNull(copy);
        if (_copy == copy)
        {
            return;
        }

        Close();
        (_copy, _recorded, _standing) = (copy, Recordings(copy), Standing(copy));
        LearntChances learnt = _learnt = new(device, copy.Held.Club, Breath);
        FoundCauses? remembered = learnt.Remembered;
        _shed = ShedVerdicts.Of(
            copy.Club, () => remembered is null ? learnt.CountAsync(copy.Club) : Task.FromResult(ClubSettings.Chances(remembered)));
        copy.Changed += Follow;
        Changed?.Invoke();
        if (remembered is not null)
        {
            _ = RecountAsync(copy);
        }
    }

    /// <summary>Closes it.</summary>
    public void Close()
    {
        if (_copy is { } copy)
        {
            copy.Changed -= Follow;
            (_copy, _shed, _learnt) = (null, null, null);
            Drafts.Clear();
        }
    }

    /// <summary>Closes it and says so: no club is open then.</summary>
    public void PutDown()
    {
        Close();
        Changed?.Invoke();
    }

    /// <summary>The members' names were heard anew: pages that tell who recorded something are drawn with them.</summary>
    public void NamesHeard() => Changed?.Invoke();

    /// <summary>Something was heard of the clubs on this device: where it changes what the member here may do, it is said.</summary>
    public void ClubsHeard()
    {
        if (_copy is { } copy && Standing(copy) != _standing)
        {
            _standing = Standing(copy);
            StandsOtherwise?.Invoke();
        }
    }

    /// <summary>Records facts: they are on this device's disk when this returns, all of them or none.</summary>
    /// <returns>The ids of their entries, in the order of the facts.</returns>
    /// <exception cref="NotAllowedException">The member here may not record one of them.</exception>
    /// <exception cref="NotRecordedException">A fact says what cannot be.</exception>
    /// <exception cref="ShelfException">This device cannot keep them.</exception>
    public Task<IReadOnlyList<Guid>> RecordAsync(params Fact[] facts) => RecordAsync(facts, _ => { });

    /// <summary>Records facts, and has something worked out while the disk takes them.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="meanwhile">Gets the club as it is going to be, unless the disk refuses.</param>
    /// <returns>The ids of their entries, in the order of the facts.</returns>
    /// <exception cref="NotAllowedException">The member here may not record one of them.</exception>
    /// <exception cref="NotRecordedException">A fact says what cannot be.</exception>
    /// <exception cref="ShelfException">This device cannot keep them.</exception>
    public Task<IReadOnlyList<Guid>> RecordAsync(Fact[] facts, Action<Club> meanwhile)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Array.TrueForAll(facts, IsAllowed)
            ? Copy.RecordAsync(facts, meanwhile)
            : throw new NotAllowedException(Held.Home == ClubHome.Left);
    }

    /// <summary>A boat and how it stands; null for a key that no boat has.</summary>
    public async Task<BoatStanding?> BoatAsync(string key)
    {
        await RecordReading.ReadAsync(Club.Everything(Subject.Boat(key)), Breath.TakeAsync);
        return await Shed.BoatAsync(key);
    }

    /// <summary>What no page should offer and the server would refuse, however it came to be asked for.</summary>
    private bool IsAllowed(Fact fact) => fact is Retracted back && Club.Find(back.Entry) is { } record ? MayTakeBack(record) : May(fact);

    private bool May(Func<Role, bool> rule) => Held.Home switch
    {
        ClubHome.Device => true,
        ClubHome.Left => false,
        _ => Roles.Of(Held.Role) is { } role && rule(role),
    };

    private static (int Count, HybridTime Last) Recordings(ClubCopy copy) => (copy.Club.Count, copy.Club.Last);

    private static (string Member, string Role, ClubHome Home) Standing(ClubCopy copy) => (copy.Held.Member, copy.Held.Role, copy.Held.Home);

    private void Follow(ClubCopy copy)
    {
        _shed = Shed.With(copy.Club, teaches: false);
        (int, HybridTime) before = _recorded;
        _recorded = Recordings(copy);
        if (_recorded != before)
        {
            Recorded?.Invoke();
        }

        Changed?.Invoke();
        _ = RecountAsync(copy);
    }

    /// <summary>
    /// Counts once more what the club's jobs have taught, when there is a moment's rest: the count goes over the whole
    /// journal, and nobody who taps readings in should wait for it.
    /// </summary>
    private async Task RecountAsync(ClubCopy copy)
    {
        Club club = copy.Club;
        LearntChances learnt = _learnt!;
        do
        {
            await Task.Delay(Rest);
            if (_copy != copy || copy.Club != club)
            {
                return;
            }
        }
        while (learnt.IsCounting);

        FoundCauses? before = learnt.Found;
        PriorChances chances = await learnt.CountAsync(club);
        if (_copy == copy && learnt.Found != before)
        {
            _shed = Shed.With(copy.Club, chances);
            Changed?.Invoke();
        }
    }
}
