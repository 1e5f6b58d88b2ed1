using Gatewright.Words.HowRead;
using Gatewright.Words.Judged;
using Gatewright.Words.Naming;
using Gatewright.Words.OnTheWater;
using Gatewright.Words.Suspected;
using Gatewright.Words.TheChange;
using Gatewright.Words.TheOars;
using Gatewright.Words.TheRig;
using Gatewright.Words.Told;
using Gatewright.Words.ToMend;
using Gatewright.Words.ToRead;

namespace Gatewright.Words;

/// <summary>Everything that is said of a check, in one language: plain text, to be dressed by whoever shows it.</summary>
/// <example><c>Wording.English.Reasons.Of(gate, reason, standard)</c></example>
public sealed class Wording
{
    private static readonly Wording EnglishOnScreen = new(Language.English.OnScreen());
    private static readonly Wording GermanOnScreen = new(Language.German.OnScreen());

    private Wording(Language language)
    {
        Language = language;
        Figures = new(language);
        Names = new(this);
        Levels = new(this);
        Budgets = new(this);
        Reasons = new(this);
        Standards = new(this);
        Spreads = new(this);
        Causes = new(this);
        Shared = new(this);
        Next = new(this);
        Work = new(this);
        Remedies = new(this);
        Rechecks = new(this);
        Cautions = new(this);
        Boats = new(this);
        Shed = new(this);
        Tales = new(this);
        Rig = new(this);
        Changes = new(this);
        Comparing = new(this);
        Travel = new(this);
        Oars = new(this);
        Stroke = new(this);
        Load = new(this);
    }

    /// <summary>In English.</summary>
    public static Wording English { get; } = new(Language.English);

    /// <summary>In German.</summary>
    public static Wording German { get; } = new(Language.German);

    /// <summary>The language it is said in.</summary>
    public Language Language { get; }

    /// <summary>Numbers.</summary>
    public FigureWords Figures { get; }

    /// <summary>The trade's nouns: verdicts, stations, sides, gates, causes, parts, remedies.</summary>
    public NameWords Names { get; }

    /// <summary>How a boat was read: its lie, how its level is known, and what that costs.</summary>
    public LevelWords Levels { get; }

    /// <summary>Where a reading's uncertainty comes from.</summary>
    public BudgetWords Budgets { get; }

    /// <summary>Why a gate is not good.</summary>
    public ReasonWords Reasons { get; }

    /// <summary>What boats are judged by.</summary>
    public StandardWords Standards { get; }

    /// <summary>From where to where a boat's pitches go.</summary>
    public SpreadWords Spreads { get; }

    /// <summary>What is probably wrong with a gate.</summary>
    public CauseWords Causes { get; }

    /// <summary>What a boat's gates share: its level, a gauge.</summary>
    public SharedWords Shared { get; }

    /// <summary>What to read next.</summary>
    public NextWords Next { get; }

    /// <summary>What to do, step by step.</summary>
    public WorkWords Work { get; }

    /// <summary>The rig: its measures, targets, and why one is not good.</summary>
    public RigWords Rig { get; }

    /// <summary>The way from one rig to another.</summary>
    public ChangeWords Changes { get; }

    /// <summary>Two rigs side by side.</summary>
    public CompareWords Comparing { get; }

    /// <summary>A boat on the road.</summary>
    public TravelWords Travel { get; }

    /// <summary>Oars and their sets.</summary>
    public OarWords Oars { get; }

    /// <summary>Gearing and arc, and what a change does to them.</summary>
    public StrokeWords Stroke { get; }

    /// <summary>A boat's balance on the water, by a model.</summary>
    public LoadWords Load { get; }

    /// <summary>Ways to mend.</summary>
    public RemedyWords Remedies { get; }

    /// <summary>What a re-check found.</summary>
    public RecheckWords Rechecks { get; }

    /// <summary>What is to be minded.</summary>
    public CautionWords Cautions { get; }

    /// <summary>A boat as a whole.</summary>
    public BoatWords Boats { get; }

    /// <summary>A shed as a whole.</summary>
    public ShedWords Shed { get; }

    /// <summary>A boat in a few sentences.</summary>
    public TaleWords Tales { get; }

    /// <summary>The wording of a language.</summary>
    public static Wording In(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return language.Tag == Language.German.Tag ? German : English;
    }

    /// <summary>The wording of a language on a screen: −0.5 with a true minus, where terminals and files have a hyphen.</summary>
    public static Wording OnScreen(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return language.Tag == Language.German.Tag ? GermanOnScreen : EnglishOnScreen;
    }

    internal string Text(string key) => Language.Text(key);

    internal string Text(string key, params ReadOnlySpan<object?> places) => Language.Text(key, places);

    internal string Counted(string key, int count, params ReadOnlySpan<object?> places) => Language.Counted(key, count, places);
}
