using System.Diagnostics.CodeAnalysis;
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
        Page<Boat.BoatPage>(),
        Page<Boat.GatePage>(),
        Page<Changing.ChangePage>(),
        Page<Changing.ComparePage>(),
        Page<Changing.KeptChangePage>(),
        Page<Changing.TravelPage>(),
        Page<Explaining.ExplainPage>(),
        Page<NoSuchPage>(),
        Page<Jobs.JobPage>(),
        Page<Jobs.JobsPage>(),
        Page<Jobs.NewJobPage>(),
        Page<Jobs.RecheckPage>(),
        Page<Keeping.Boats.BoatFormPage>(),
        Page<Keeping.Boats.BoatsPage>(),
        Page<Keeping.Gauges.GaugePage>(),
        Page<Keeping.Gauges.GaugesPage>(),
        Page<Keeping.MorePage>(),
        Page<Keeping.Oars.GunwalePage>(),
        Page<Keeping.Oars.OarFormPage>(),
        Page<Keeping.Oars.OarPage>(),
        Page<Keeping.Oars.OarSetPage>(),
        Page<Keeping.Oars.OarsPage>(),
        Page<Keeping.People.PeoplePage>(),
        Page<Keeping.Racks.RackPage>(),
        Page<Keeping.Racks.RacksPage>(),
        Page<Keeping.Settings.SettingsPage>(),
        Page<Keeping.Standards.StandardPage>(),
        Page<Keeping.Standards.StandardsPage>(),
        Page<Keeping.Stores.StoresPage>(),
        Page<OnTheWater.ChangePage>(),
        Page<OnTheWater.WaterPage>(),
        Page<Printing.PrintPage>(),
        Page<Reporting.ReportPage>(),
        Page<Rig.MeasurePage>(),
        Page<Rig.RigPage>(),
        Page<Rig.TargetsPage>(),
        Page<Round.ChoosePage>(),
        Page<Round.ReadPage>(),
        Page<Round.RoundPage>(),
        Page<SharingPages.SharingPage>(),
        Page<Shed.ShedPage>(),
    ];

    private Pages()
    {
    }

    /// <summary>What stands round them.</summary>
    public static Type Frame { get; } = Page<Layout>();

    /// <summary>All of them.</summary>
    public static Pages All { get; } = new();

    /// <inheritdoc/>
    public override IEnumerable<Type> ExportedTypes => _pages;

    /// <summary>Of a page, and of their frame, nothing is left out when the app is published: the framework finds its parts by their names.</summary>
    private static Type Page<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.All)] T>() => typeof(T);
}
