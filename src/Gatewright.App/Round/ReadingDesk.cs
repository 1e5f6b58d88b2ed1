using Gatewright.App.Device;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.App.Round;

/// <summary>One boat being read: what the page shows, and what a touch of it does.</summary>
public sealed class ReadingDesk
{
    private readonly ClubInHand _inHand;
    private readonly RoundPlan _plan;
    private readonly Stack<Guid> _beside = [];
    private SeenBoat? _foreseen;
    private Station _station;

    /// <summary>The desk for a boat on a round.</summary>
    /// <param name="inHand">The club.</param>
    /// <param name="plan">How this device reads.</param>
    /// <param name="round">The round's key.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="asked">What is to be read first; null for what comes next.</param>
    public ReadingDesk(ClubInHand inHand, RoundPlan plan, string round, string boat, ReadingStep? asked)
    {
        (_inHand, _plan, Round) = (inHand, plan, round);
        var view = new BoatView(inHand.Club, boat);
        Gates = BoatGates.Of(inHand.Club, view);
        var here = new BoatInRound(view, round);
        Walk = BoatWalk.Open(RoundOrder.Of(Gates, plan.Stations), here, asked);
        Laying = Laying.Usual(inHand.Club, here);
        _station = Walk.Now?.Station ?? plan.Stations[0];
        Seen = SeenBoat.Of(inHand.Club, here, _station);
    }

    /// <summary>The round's key.</summary>
    public string Round { get; }

    /// <summary>The boat.</summary>
    public BoatView View => Seen.View;

    /// <summary>Its gates, from the bow.</summary>
    public IReadOnlyList<GatePlace> Gates { get; }

    /// <summary>Where the walk round it stands.</summary>
    public BoatWalk Walk { get; private set; }

    /// <summary>How it lies, as the club tells: what another device says of it holds here too.</summary>
    public Laying Laying { get; private set; }

    /// <summary>How it is judged at the station that was read last.</summary>
    public BoatVerdict? Verdict => Seen.Verdict;

    /// <summary>What it is read with; null for a gauge without a name.</summary>
    public string? Gauge => _plan.Gauge;

    /// <summary>The boat as the club tells of it.</summary>
    public SeenBoat Seen { get; private set; }

    /// <summary>The reading that is told of under the plan; null for none.</summary>
    public TakenReading? Told { get; private set; }

    /// <summary>The reading that is told of, with level and zero taken out; null for none, and where it is of no face.</summary>
    public CorrectedFace? Face => Told is not null && Walk.Boat.Last is { } last ? CorrectedFace.Of(View, last, MeasuringSettings.Default) : null;

    /// <summary>What was taken back last; null for nothing.</summary>
    public TakenReading? TakenBack { get; private set; }

    /// <summary>Whether there is something to take back.</summary>
    public bool CanUndo => _beside.Count > 0 || Walk.Boat.Last is not null;

    /// <summary>Looks at the club again.</summary>
    /// <returns>Whether anything about the boat is new.</returns>
    public bool Look()
    {
        Club club = _inHand.Club;
        if (club.IsLike(Seen.Club, Subject.Boat(View.Key)) && club.IsLike(Seen.Club, Subject.Journal))
        {
            return false;
        }

        (Seen, _foreseen) = (_foreseen?.Club == club ? _foreseen : Seen.In(club, _station), null);
        Walk = Walk.With(Seen.Boat);
        Laying = Laying.Usual(club, Seen.Boat);
        return true;
    }

    /// <summary>
    /// Looks up what every reading of the boat as it lies here rests on, its rack's level and its gauge, by a reading that nobody takes:
    /// the first that is taken need not wait for it.
    /// </summary>
    public void Ready() => _ = RehearsedReading.From(this, 1).Count();

    /// <summary>Records what the gauge shows, and moves on. A note on the gate that was typed and not kept is recorded with it: the walk leaves it behind.</summary>
    public async Task RecordAsync(decimal value)
    {
        ReadingStep step = Walk.Now!;
        Recorded? slip = ToTakeBack(value);
        IReadOnlyList<Fact> reading = Walk.Reading(value, Laying, NewKey(), Gauge);
        (string thing, string key) = Here;
        string note = _inHand.Drafts.GetValueOrDefault(key, string.Empty).Trim();
        _station = step.Station ?? _station;
        BoatWalk? walked = null;
        IReadOnlyList<Guid> ids = await _inHand.RecordAsync(
            [.. reading, .. slip is null ? [] : (Fact[])[new Retracted(slip.Entry.Id)], .. note.Length == 0 ? [] : (Fact[])[new Noted(thing, key, note)]],
            next =>
            {
                _foreseen = Seen.In(next, _station);
                walked = Walk.Recorded(_foreseen.Boat);
            });
        _beside.Clear();
        _inHand.Drafts.Remove(key);
        Look();

        // What another device sent meanwhile makes the boat another than was foreseen.
        Walk = walked is not null && ReferenceEquals(walked.Boat, Seen.Boat) ? walked : Walk.Recorded(Walk.Boat);
        decimal? before = Walk.Boat.ValueBeforeLast(step);
        (Told, TakenBack) = (new(step, value, before, ids[reading.Count - 1], (slip?.Fact as ReadingTaken)?.Value, IsNoted: note.Length > 0), null);
    }

    /// <summary>Takes back what was recorded last, and goes back there.</summary>
    public async Task UndoAsync()
    {
        if (_beside.TryPeek(out Guid beside))
        {
            await _inHand.RecordAsync(new Retracted(beside));
            _beside.Pop();
        }
        else if (Walk is { Undoing: { Count: > 0 } undoing, Boat.Last.Fact: ReadingTaken taken })
        {
            BoatWalk before = Walk;
            await _inHand.RecordAsync([.. undoing]);
            Look();
            Walk = before.Undone(Walk.Boat);
            (Told, TakenBack) = (null, ReadingStep.Of(taken) is { } step ? new(step, taken.Value, null, Slip: undoing.Count > 1 ? Walk.Boat.LastValue(step) : null) : null);
        }
    }

    /// <summary>Passes over what is read now.</summary>
    public void Skip() => To(Walk.Skip());

    /// <summary>Goes to a step.</summary>
    public void GoTo(ReadingStep step) => To(Walk.GoTo(step));

    /// <summary>Goes to a gate: to what is read now, there.</summary>
    public void GoTo(GatePlace gate) => GoTo(Walk.Now is { } now ? now with { Gate = gate } : ReadingStep.Face(gate, _plan.Stations[0]));

    /// <summary>Goes so many steps along the walk.</summary>
    public void Move(int steps) => To(Walk.Move(steps));

    /// <summary>Goes to the reading that is told of, to take it once more.</summary>
    public void Repeat()
    {
        if (Walk.Boat.Last?.Fact is ReadingTaken taken && ReadingStep.Of(taken) is { } step)
        {
            GoTo(step);
        }
    }

    /// <summary>Records that the reading that is told of is no slip: no device asks about it once more, or takes it back by itself.</summary>
    public async Task KeepAsync()
    {
        if (Told is { Entry: { } entry })
        {
            await _inHand.RecordAsync(new ReadingKept(View.Key, entry));
            Look();
            Told = Told with { IsKept = true };
        }
    }

    /// <summary>Says how the boat lies: it is recorded at once, so that the round goes on with it whatever stops it.</summary>
    /// <param name="laying">How.</param>
    /// <param name="isMoved">Whether it was moved since it was last read: what was read before is not touched then. Else that is put right too.</param>
    /// <returns>Whether anything about it is new.</returns>
    public async Task<bool> LayAsync(Laying laying, bool isMoved)
    {
        BoatLaid? said = Walk.Boat.Said(laying, isMoved, NewKey());
        if (said is not null)
        {
            await _inHand.RecordAsync(said);
            Look();
        }

        return said is not null;
    }

    /// <summary>Records a note on the gate that is read; on the boat where none is.</summary>
    public async Task NoteAsync(string text)
    {
        (string thing, string key) = Here;
        Beside(await _inHand.RecordAsync(new Noted(thing, key, text)));
        _inHand.Drafts.Remove(key);
    }

    /// <summary>Keeps and records a photo of the gate that is read; of the boat where none is.</summary>
    public async Task PhotoAsync(Photos photos, byte[] taken)
    {
        ArgumentNullException.ThrowIfNull(photos);
        Beside(await photos.RecordAsync(taken, Here.Thing, Here.Key));
    }

    /// <summary>Holds the boat ashore.</summary>
    public async Task HoldAsync(Held hold)
    {
        await _inHand.RecordAsync(hold);
        Look();
    }

    private (string Thing, string Key) Here => Walk.Now is { Gate: var gate }
        ? (Things.Gate, Things.GateKey(View.Key, gate))
        : (Things.Boat, View.Key);

    /// <summary>The slip that a value puts right, where the member here may take it back.</summary>
    private Recorded? ToTakeBack(decimal value) =>
        Walk.PutRight(value, Laying) is { } slip && _inHand.MayTakeBack(slip) ? slip : null;

    /// <summary>A key for a thing that is new.</summary>
    private static string NewKey() => Guid.CreateVersion7().ToString("N");

    private void Beside(IReadOnlyList<Guid> ids)
    {
        Look();
        _beside.Push(ids[0]);
    }

    private void To(BoatWalk walk) => (Walk, Told, TakenBack) = (walk, null, null);
}
