using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Rigging;
using Gatewright.Words;

namespace Gatewright.App.Rig;

/// <summary>Measures of the rig as they are written here: in this device's unit, in the language of the app.</summary>
public sealed class RigSaid(Wording say, RigHere here)
{

    /// <summary>"Spread", "Oar length".</summary>
    public string Measure(RigMeasure measure) => Sentence.Capital(say.Rig.Measure(measure));

    /// <summary>"Seat 3", "Seat 3 port".</summary>
    public string Place(RigPlace place) => Sentence.Capital(say.Rig.Place(place));

    /// <summary>"Seat 3 port, height".</summary>
    public string Step(RigStep step) => $"{Place(step.Place)}, {say.Rig.Measure(step.Measure)}";

    /// <summary>"86.5 cm".</summary>
    public string Figure(RigMeasure measure, double own) => say.Rig.Figure(own, here.Unit(measure));

    /// <summary>"86.5 ± 0.3 cm".</summary>
    public string Figure(RigMeasure measure, RigEstimate figure) => say.Rig.Figure(figure, here.Unit(measure));

    /// <summary>"86 cm, from 84.5 to 87.5"; from seat to seat "at most 1 cm".</summary>
    public string Target(RigTarget target) => say.Rig.Target(target, here.Unit(target.Measure));

    /// <summary>Why a figure is not good.</summary>
    public string Why(RigReason reason) => say.Rig.Of(reason, here.IsInInches);

    /// <summary>A figure as it stands on the pad: "86.5", "34.25", "42".</summary>
    public static string OnPad(RigUnit unit, decimal value)
    {
        string size = Math.Abs(value).ToString(
            unit switch { RigUnit.Inches => "0.00", RigUnit.Degrees => "0.##", _ => "0.0#" }, CultureInfo.CurrentCulture);
        return value < 0 ? Figures.TrueMinus + size : size;
    }

    /// <summary>A figure as it was entered, with its unit: "86.5 cm", "42°".</summary>
    public static string Entered(RigUnit unit, decimal value) =>
        OnPad(unit, value) + (unit == RigUnit.Degrees ? "°" : " " + unit.Word());
}
