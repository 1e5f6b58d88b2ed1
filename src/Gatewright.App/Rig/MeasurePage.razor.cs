using System.Globalization;
using Gatewright.App.Device;
using Gatewright.App.Round;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Drawings;
using Gatewright.Drawings.Plan;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Rig;

/// <summary>A boat's rig measured place by place: each tap is on this device's disk before the next place lights up.</summary>
public sealed partial class MeasurePage
{
    private const string OnPad = "#pad [tabindex='0']";
    private WalkKeys? _keys;
    private DrawingLabels _labels = DrawingLabels.None;
    private RigSaid _said = null!;
    private Club? _of;
    private BoatView? _view;
    private BoatRig? _rig;
    private RigWalk? _walk;
    private RigStep? _told;
    private string? _opened;
    private string? _takenBack;
    private string _typed = string.Empty;
    private string _spoken = string.Empty;
    private bool _isMore;
    private bool _isNoted;
    private bool _may;

    /// <summary>The boat's key.</summary>
    [Parameter]
    public required string Boat { get; set; }

    // That page has a name of its own.
    private bool IsChoosing => _walk is null && _may && _view is { Class: not null, Records.Count: > 0 };

    private RigHere Here => new(Device, InHand);

    private decimal? Typed => _walk?.Now is { } step ? TypedMeasure.Parse(_typed, step.Measure, Unit(step)) : null;

    /// <summary>What was last taken here by the member who holds this device: only that is taken back.</summary>
    private TakenMeasure? LastOwn => _walk?.Taken.LastOrDefault(t => t.Record.Entry.Member == InHand.Held.Member);

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        _said = new(Say, Here);
        _labels = new() { Port = Say.Names.Side(Side.Port), Starboard = Say.Names.Side(Side.Starboard), Culture = CultureInfo.CurrentCulture };
    }

    /// <inheritdoc/>
    protected override Task ReadAsync()
    {
        Look();
        _may = InHand.May<MeasureTaken>();
        if (_opened != Boat)
        {
            (_opened, _walk, _told, _takenBack, _typed, _isMore) = (Boat, null, null, null, string.Empty, false);
            if (Here.Walk is { } walk && walk.Boat == Boat)
            {
                // Of a boat that has been given another class meanwhile nothing may be left to ask for.
                _walk = RigWalk.Of(_rig!.View, Here.Measures, walk.Since) is { Order.Count: > 0 } begun ? begun : null;
            }
        }
        else if (_walk is not null)
        {
            _walk = _walk.With(_rig!.View);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        await base.OnAfterRenderAsync(firstRender);
        if (firstRender)
        {
            _keys = new(Move, UndoAsync, Close, StateHasChanged);
            await _keys.ListenAsync(Script);
        }
    }

    /// <summary>Lets go of the keyboard.</summary>
    public async ValueTask DisposeAsync()
    {
        Dispose();
        if (_keys is not null)
        {
            await _keys.DisposeAsync();
        }
    }

    private void Move(int steps)
    {
        Go(w => w.Move(steps));
        _spoken = _walk?.Now is { } step ? _said.Step(step) : string.Empty;
    }

    private async Task BeginAsync(IReadOnlyList<RigMeasure> measures)
    {
        Look();

        // What boats of the other kind are measured for stays remembered beside it.
        IReadOnlyList<RigMeasure> others = [.. Here.Measures.Where(m => _rig!.View.Places(m).Count == 0)];
        if (await Deed.TryAsync(() => Here.BeginAsync(Boat, [.. measures, .. others])))
        {
            _walk = RigWalk.Of(_rig!.View, measures, InHand.Club.Last);
            FocusThen(OnPad);
        }
    }

    private async Task RecordAsync(decimal value)
    {
        if (_walk?.Now is not { } step)
        {
            return;
        }

        // A note on the place that was typed and not kept goes with it: the walk leaves it behind.
        string note = InHand.Drafts.GetValueOrDefault(Draft(step), string.Empty).Trim();
        var taken = new MeasureTaken(Boat, step.Measure.Word(), step.Place.Seat, value, Unit(step).Word(), step.Place.Side);
        if (!await TryRecordAsync(note.Length == 0 ? [taken] : [taken, NoteOn(step.Place, note)]))
        {
            return;
        }

        InHand.Drafts.Remove(Draft(step));
        _isNoted = note.Length > 0;
        Look();
        _walk = _walk!.GoTo(step).Recorded(_rig!.View);
        (_told, _takenBack, _typed, _isMore) = (step, null, string.Empty, false);
        if (_walk.Now is null)
        {
            FocusThen("#end-measuring");
        }

        string verdict = _rig.Verdict?.Find(step.Measure, step.Place) is { Target: not null } judged ? Say.Names.Verdict(judged.Verdict) : string.Empty;
        _spoken = T["Recorded", _said.Step(step), RigSaid.Entered(Unit(step), value), verdict]
            + (_isNoted ? " " + T["NoteKept"] : null) + " " + (_walk.Now is { } next ? T["NextIs", _said.Step(next)] : T["AllTaken"]);
    }

    /// <summary>What is typed was recorded by its button, which goes with it.</summary>
    private async Task PressedAsync()
    {
        await TypedAsync();
        FocusThen(OnPad, "#end-measuring");
    }

    private Task TypedAsync() => Typed is { } value ? RecordAsync(value) : Task.CompletedTask;

    private async Task UndoAsync()
    {
        bool isOver = _walk is { Now: null };
        if (LastOwn is { } last && await TryRecordAsync(new Retracted(last.Record.Entry.Id)))
        {
            RigStep step = RigWalk.StepOf(last);
            Look();
            _walk = _walk!.With(_rig!.View).GoTo(step);
            if (isOver)
            {
                FocusThen(OnPad);
            }

            (_told, _typed, _isMore) = (null, string.Empty, false);
            _spoken = _takenBack = T["TakenBack", _said.Step(step), RigSaid.Entered(last.Written.Unit, last.Written.Value)];
        }
    }

    private void Close()
    {
        if (_isMore)
        {
            FocusThen("#more");
        }

        _isMore = false;
    }

    private Task AgainAsync()
    {
        if (_told is { } step)
        {
            Go(w => w.GoTo(step));
            FocusThen(OnPad);
        }

        return Task.CompletedTask;
    }

    private async Task NoteAsync(string text)
    {
        if (_walk?.Now is { } step && await TryRecordAsync(NoteOn(step.Place, text)))
        {
            InHand.Drafts.Remove(Draft(step));
            Close();
            _spoken = T["NoteKept"];
        }
    }

    private async Task EndAsync()
    {
        if (await Deed.TryAsync(Here.EndAsync))
        {
            Navigation.NavigateTo(RigLinks.Rig(Boat));
        }
    }

    /// <summary>On the gate where there is one alone; else on the boat, with the seat before it.</summary>
    private Noted NoteOn(RigPlace place, string text) => GateAt(place) is { } gate
        ? new(Things.Gate, FormattableString.Invariant($"{Boat}/{gate.Seat}/{gate.Side.Word()}"), text)
        : new(Things.Boat, Boat, $"{_said.Place(place)}: {text}");

    /// <summary>The key of a note that is being typed at a step.</summary>
    private string Draft(RigStep step)
    {
        Noted note = NoteOn(step.Place, string.Empty);
        return note.Key + note.Text;
    }

    private void Go(Func<RigWalk, RigWalk> where)
    {
        if (_walk is { } walk)
        {
            _walk = where(walk);
            (_told, _takenBack, _typed, _isMore) = (null, null, string.Empty, false);
        }
    }

    private void GoToGate(GatePlace gate) => Go(w => w.Now is { } now
        ? w.GoTo(now with { Place = new(gate.Seat, now.Measure.HasSide() ? gate.Side : null) })
        : w);

    private void Look()
    {
        // A tap is heard of twice: as the club's change, and when it is done.
        if (_rig is not null && ReferenceEquals(_of, InHand.Club) && _view?.Key == Boat)
        {
            return;
        }

        _of = InHand.Club;
        _view = new(InHand.Club, Boat);
        _rig = BoatRig.Of(InHand.Club, _view);
    }

    private RigUnit Unit(RigStep step) => Here.Unit(step.Measure);

    private RigTarget? TargetOf(RigStep step) => _rig?.View.Targets?.Find(step.Measure, RigAspect.Value, step.Place);

    private double? LastOf(RigStep step) => _rig?.View.History(step.Measure, step.Place) is [{ } last, ..] ? last.Reading.Value : null;

    private RigPad PadOf(RigStep step) => RigPad.For(step.Measure, Unit(step), TargetOf(step)?.Value, LastOf(step));

    private static GatePlace? LitGate(RigStep? step) => step is { Place: { Side: { } side, Seat: var seat } } ? new(seat, side) : null;

    private GatePlace? GateAt(RigPlace place)
    {
        GatePlace? only = null;
        foreach (GatePlace gate in _rig!.View.Gates)
        {
            if (gate.Seat == place.Seat && (place.Side is null || place.Side == gate.Side))
            {
                only = only is null ? gate : null;
            }
        }

        return only;
    }

    /// <summary>What the plan shows of the measure that is taken now; of a seat's measure on the side where it stands, or port.</summary>
    private List<PlanGate> PlanGates(RigWalk walk)
    {
        RigMeasure measure = (walk.Now ?? walk.Order[^1]).Measure;
        return [.. _rig!.View.Gates.Select(gate => PlanOf(walk, gate, measure))];
    }

    private PlanGate PlanOf(RigWalk walk, GatePlace gate, RigMeasure measure)
    {
        var place = new RigPlace(gate.Seat, measure.HasSide() ? gate.Side : null);
        string name = $"{_said.Place(place)}, {Say.Rig.Measure(measure)}";
        if (!walk.IsDone(new(measure, place)) || _rig!.Verdict?.Find(measure, place) is not { } judged)
        {
            return new(gate, $"{name}: {T["NotTaken"]}");
        }

        RigUnit unit = Here.Unit(measure);
        string value = RigSaid.OnPad(unit, (decimal)Math.Round(unit.FromOwn(judged.Figure.Value.Value), 2));
        string sure = "± " + Say.Figures.Fixed(unit.FromOwn(judged.Figure.Value.U), unit == RigUnit.Inches ? 2 : 1);
        bool isJudged = judged.Target is not null || judged.Reasons.Count > 0;
        return new(gate, $"{name}: {_said.Figure(measure, judged.Figure.Value)}" + (isJudged ? ", " + Say.Names.Verdict(judged.Verdict) : null),
            isJudged ? judged.Verdict : null, value, sure, IsRead: true);
    }
}
