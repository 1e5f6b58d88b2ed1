using System.Globalization;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Drawings;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Round;

/// <summary>A boat read gate by gate.</summary>
public sealed partial class ReadPage
{
    /// <summary>So long nobody has tapped when the whole check begins: in the browser it holds up what is tapped meanwhile.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(1200);
    private static readonly TimeSpan BeforeRehearsal = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Painted = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan BeforeReady = TimeSpan.FromMilliseconds(60);

    /// <summary>So long after a reading the plan is drawn with it: by then the verdict under it has been painted, which somebody waits for.</summary>
    private static readonly TimeSpan BeforePlan = TimeSpan.FromMilliseconds(120);

    private const string OnPad = "#pad [tabindex='0']";
    private DrawingLabels _labels = DrawingLabels.None;
    private ReadingWords _words = null!;
    private ReadOnPlan _plan = null!;
    private PlanShown? _shown;
    private bool _isPlanLate;
    private WalkKeys? _keys;
    private RestingCheck _check = null!;
    private ReadingDesk? _desk;
    private ReadingDesk? _readied;
    private IReadOnlyList<LevelWay> _ways = [];
    private string? _rack;
    private string? _next;
    private string? _opened;
    private string _said = string.Empty;
    private string _typed = string.Empty;
    private Panel _panel;
    private bool _toReadLevel;
    private bool _isStory;
    private bool _isOther;
    private (int, HybridTime, bool) _club;

    private enum Panel
    {
        None,
        More,
        Lie,
    }

    /// <summary>The round's key.</summary>
    [Parameter]
    public required string Round { get; set; }

    /// <summary>The boat's key.</summary>
    [Parameter]
    public required string Boat { get; set; }

    /// <summary>What is to be read first, by its code: "gate", "pin-aft".</summary>
    [SupplyParameterFromQuery]
    public string? Item { get; set; }

    /// <summary>The seat of what is to be read first.</summary>
    [SupplyParameterFromQuery]
    public int? Seat { get; set; }

    /// <summary>Its side: "port" or "starboard".</summary>
    [SupplyParameterFromQuery]
    public string? Side { get; set; }

    /// <summary>Its station, for a gate's face.</summary>
    [SupplyParameterFromQuery]
    public string? At { get; set; }

    private bool IsStory => _isStory || _desk is { Walk.IsOver: true };

    /// <summary>What is read now; nothing while what came of it is told, even where steps are left.</summary>
    private ReadingStep? Now => IsStory ? null : _desk?.Walk.Now;

    private decimal? Value => TypedDegrees.Parse(_typed) is { } value && _desk?.Walk.Now is { } step && Math.Abs(value) <= TypedDegrees.Most(step.Item)
        ? value
        : null;

    private string Progress => _desk!.Walk.Order is { Count: > 0 } order
        ? T["Progress", order.Count - _desk.Walk.Left.Count, order.Count]
        : string.Empty;

    private string? NextName => _next is null ? null : new BoatView(InHand.Club, _next).Name;

    private RoundsHere Rounds => new(Device, InHand, Clock);

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        _labels = new() { Port = T["Port"], Starboard = T["Starboard"], Culture = CultureInfo.CurrentCulture };
        _words = new(T, Say);
        _plan = new(T, Say, _words);
        _check = new(InHand, StateHasChanged, broken => _ = DispatchExceptionAsync(broken));
    }

    /// <inheritdoc/>
    protected override Task ReadAsync()
    {
        string opened = $"{Round}/{Boat}?{Item}/{Seat}/{Side}/{At}";
        (int, HybridTime, bool) club = (InHand.Club.Count, InHand.Club.Last, InHand.May<RoundStarted>());
        _isOther = club != _club;
        _club = club;
        if (opened != _opened || _desk is null)
        {
            RoundPlan plan = Rounds.Plan;
            _desk = new(InHand, plan, Round, Boat, AskedStep.Of(Item, Seat, Side, At));
            (_opened, _isStory, _panel, _typed, _said) = (opened, false, Panel.None, string.Empty, string.Empty);
            Deed.Forget();
            (_shown, _isPlanLate) = (null, false);
            _check.Forget();
            _rack = BoatBerth.Of(_desk.View).Rack;
            _ways = LevelWays.Of(InHand.Club, _rack, Rounds.Today, MeasuringSettings.Default);
            _next = plan.Round == Round ? plan.After(Boat, IsRead) : null;
            if (Item == "level")
            {
                ReadLevel();
            }

            if (_desk.Walk.IsOver)
            {
                InHand.Breath.LetGo();
                _check.Later(Boat, Painted);
            }
            else
            {
                InHand.Breath.Hold();
            }
        }
        else if (!Deed.IsBusy && _desk.Look())
        {
            _isOther = true;
            _check.Later(Boat, Pause);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    protected override bool ShouldRender() => !Deed.IsBusy;

    /// <inheritdoc/>
    /// <remarks>After each reading the server's answer comes, and says nothing that is not on the screen already.</remarks>
    protected override bool IsOther => _isOther;

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        await base.OnAfterRenderAsync(firstRender);
        if (_desk is { } desk && desk != _readied)
        {
            _readied = desk;
            _ = ReadyAsync(desk);
        }

        if (firstRender)
        {
            _keys = new(Move, UndoAsync, Close, StateHasChanged);
            if (await _keys.ListenAsync(Script))
            {
                await Task.Delay(BeforeRehearsal);
                if (!Deed.IsBusy && Services.GetService<Rehearsals>() is { } rehearsals)
                {
                    await rehearsals.RehearseAsync(Round, Boat);
                }
            }
        }
    }

    private async Task ReadyAsync(ReadingDesk desk)
    {
        await Task.Delay(BeforeReady);
        if (desk == _desk && !Deed.IsBusy)
        {
            desk.Ready();
        }
    }

    /// <summary>Lets go of the keyboard.</summary>
    public async ValueTask DisposeAsync()
    {
        Dispose();
        InHand.Breath.LetGo();
        _check.Stop();
        if (_keys is not null)
        {
            await _keys.DisposeAsync();
        }
    }

    private void Move(int steps)
    {
        // While a value is being written the walk stands still: it goes on by itself then.
        if (!Deed.IsBusy)
        {
            Go(d => d.Move(steps));
            _said = _desk?.Walk.Now is { } step ? _words.Spoken(step) : string.Empty;
        }
    }

    private bool IsRead(string boat) => new BoatInRound(new(InHand.Club, boat), Round).Readings.Count > 0;

    private async Task RecordAsync(decimal value)
    {
        _isPlanLate = true;
        try
        {
            await TakeAsync(value);
        }
        finally
        {
            _ = CatchUpAsync();
        }
    }

    private async Task CatchUpAsync()
    {
        await Task.Delay(BeforePlan);
        _isPlanLate = false;
        StateHasChanged();
    }

    private Task TakeAsync(decimal value) => DoAsync(async desk =>
    {
        await desk.RecordAsync(value);
        _check.Forget();
        _typed = string.Empty;
        _isStory = false;
        _said = _words.Said(desk, JudgedFace(desk.Told));
    });

    /// <summary>What is typed was recorded by its button, which goes with it.</summary>
    private async Task PressedAsync()
    {
        await TypedAsync();
        FocusThen(OnPad);
    }

    private Task TypedAsync() => Value is { } value ? RecordAsync(value) : Task.CompletedTask;

    private Task UndoAsync() => DoAsync(async desk =>
    {
        if (IsStory)
        {
            FocusThen(OnPad);
        }

        await desk.UndoAsync();
        _check.Forget();
        _isStory = false;
        _said = desk.TakenBack is { } back ? _words.TakenBack(back) : T["Undo"];
    });

    private Task LaidAsync((Laying Laying, bool IsMoved) laid) => DoAsync(async desk =>
    {
        if (await desk.LayAsync(laid.Laying, laid.IsMoved))
        {
            _check.Forget();
            _said = _words.Lies(desk, _ways);
        }

        Close();
    });

    private Task NoteAsync(string text) => DoAsync(async desk =>
    {
        await desk.NoteAsync(text);
        Close();
        _said = T["NoteKept"];
    });

    private Task PhotoAsync(byte[]? taken) => DoAsync(async desk =>
    {
        await desk.PhotoAsync(Photos, taken ?? throw new PhotoException(null));
        Close();
        _said = T["PhotoKept"];
    });

    private Task HoldAsync(Held hold) => DoAsync(async desk =>
    {
        await desk.HoldAsync(hold);
        FocusThen("#ashore");
    });

    private Task KeepAsync() => DoAsync(async desk =>
    {
        await desk.KeepAsync();
        FocusThen(OnPad, "#story");
    });

    private Task EndAsync() => DoAsync(async _ =>
    {
        await Rounds.EndAsync(Round);
        Navigation.NavigateTo($"round/{Round}");
    });

    /// <summary>Does what writes; what cannot be written is told, and what was typed stays.</summary>
    private async Task DoAsync(Func<ReadingDesk, Task> what)
    {
        if (Deed.IsBusy || _desk is not { } desk)
        {
            return;
        }

        InHand.Breath.Hold();
        _check.Stop();
        try
        {
            await Deed.TryAsync(() => what(desk));
        }
        finally
        {
            if (desk.Walk.IsOver)
            {
                InHand.Breath.LetGo();
            }

            _check.Later(Boat, desk.Walk.IsOver ? Painted : Pause);
        }
    }

    private void Go(Action<ReadingDesk> where)
    {
        if (!Deed.IsBusy && _desk is { } desk)
        {
            if (IsStory)
            {
                FocusThen(OnPad);
            }

            where(desk);
            _isStory = false;
            Close();
        }
    }

    private void Repeat()
    {
        Go(d => d.Repeat());
        FocusThen(OnPad);
    }

    private void Close()
    {
        if (_panel != Panel.None)
        {
            FocusThen(_panel == Panel.Lie ? "#lies" : "#more", "#more", OnPad, "#story");
        }

        (_panel, _toReadLevel) = (Panel.None, false);
    }

    private void ShowStory()
    {
        _isStory = true;
        InHand.Breath.LetGo();
        Close();
        _check.Later(Boat, Painted);
    }

    private void ReadLevel() => (_panel, _toReadLevel) = (Panel.Lie, true);

    private void TurnSign() => _typed = Figures.Turned(_typed);

    /// <summary>Whether the boat's story waits for the whole check; until then what was just read is told.</summary>
    private bool IsJudging => _check.Standing is null && _desk is { Walk.Boat.Readings.Count: > 0 };

    /// <summary>What the plan shows: for a moment after a reading still what it showed before.</summary>
    private PlanShown Shown(ReadingDesk desk, BoatClass boatClass) => _isPlanLate && _shown is { } before ? before
        : _shown = new(_plan.Of(desk.Gates, desk.Walk.Boat, Now, Judged), Now?.Gate, ReadOnPlan.OarAt(boatClass, Now));

    private GateVerdict? Judged(GatePlace gate) => (_check.Standing?.Check?.Verdict ?? _desk?.Verdict)?.Gates.FirstOrDefault(g => g.Gate == gate);

    /// <summary>The verdict on a gate whose face was read: a pin or a sleeve is judged by nothing alone.</summary>
    private GateVerdict? JudgedFace(TakenReading? taken) => taken is { Step: { Item: ReadItem.Gate, Gate: var gate } } ? Judged(gate) : null;

    /// <summary>Why what was just read is judged by another figure than the one that was entered.</summary>
    private string? Entered(ReadingDesk desk) =>
        desk.Told?.Step.Station is { } at && JudgedFace(desk.Told)?.At(at) is { Read: true } pitch
            ? desk.Face?.Why(Say, pitch.Pitch.Value.Degrees, pitch.Repeats)
            : null;

    private string Where(ReadingStep step) => _words.Where(step);
}
