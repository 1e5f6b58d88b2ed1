using System.Reflection;

namespace Gatewright.App.Frame;

/// <summary>The pages of the app, as the framework's router asks for them: by an assembly and its types.</summary>
/// <remarks>
/// Of the app's own assembly it would load every type, some hundreds, and ask each for its addresses before the first screen
/// is drawn: a twentieth of the time that a slow phone takes to start.
/// </remarks>
public sealed class Pages : Assembly
{
    private static readonly Type[] _pages =
    [
        typeof(Boat.BoatPage),
        typeof(Boat.GatePage),
        typeof(Changing.ChangePage),
        typeof(Changing.ComparePage),
        typeof(Changing.KeptChangePage),
        typeof(Changing.TravelPage),
        typeof(Explaining.ExplainPage),
        typeof(Frame.NoSuchPage),
        typeof(Jobs.JobPage),
        typeof(Jobs.JobsPage),
        typeof(Jobs.NewJobPage),
        typeof(Jobs.RecheckPage),
        typeof(Keeping.Boats.BoatFormPage),
        typeof(Keeping.Boats.BoatsPage),
        typeof(Keeping.Gauges.GaugePage),
        typeof(Keeping.Gauges.GaugesPage),
        typeof(Keeping.MorePage),
        typeof(Keeping.Oars.GunwalePage),
        typeof(Keeping.Oars.OarFormPage),
        typeof(Keeping.Oars.OarPage),
        typeof(Keeping.Oars.OarSetPage),
        typeof(Keeping.Oars.OarsPage),
        typeof(Keeping.People.PeoplePage),
        typeof(Keeping.Racks.RackPage),
        typeof(Keeping.Racks.RacksPage),
        typeof(Keeping.Settings.SettingsPage),
        typeof(Keeping.Standards.StandardPage),
        typeof(Keeping.Standards.StandardsPage),
        typeof(Keeping.Stores.StoresPage),
        typeof(OnTheWater.ChangePage),
        typeof(OnTheWater.WaterPage),
        typeof(Printing.PrintPage),
        typeof(Reporting.ReportPage),
        typeof(Rig.MeasurePage),
        typeof(Rig.RigPage),
        typeof(Rig.TargetsPage),
        typeof(Round.ChoosePage),
        typeof(Round.ReadPage),
        typeof(Round.RoundPage),
        typeof(SharingPages.SharingPage),
        typeof(Shed.ShedPage),
    ];

    private Pages()
    {
    }

    /// <summary>All of them.</summary>
    public static Pages All { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Type> ExportedTypes => _pages;
}
