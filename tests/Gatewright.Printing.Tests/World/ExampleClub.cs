using System.Reflection;
using Gatewright.Core.Checking;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.World;

/// <summary>The example shed as a club, and more on record of it where a test says so. All of it is invented.</summary>
internal sealed class ExampleClub
{
    public static readonly DateTimeOffset Now = new(2026, 11, 20, 9, 0, 0, TimeSpan.Zero);

    private HybridClock _clock;
    private (Club Club, IReadOnlyList<BoatStanding> Boats)? _judged;

    private ExampleClub(Club club, HybridClock clock) => (Club, _clock) = (club, clock);

    public Club Club { get; private set; }

    public static Imprint Imprint(Language? language = null) => new("Mill Lane Boathouse", new(2026, 11, 25), Wording.In(language ?? Language.English))
    {
        NameOf = member => member == "kim" ? "Kim Heron" : member,
    };

    /// <summary>The shed of the example files.</summary>
    public static ExampleClub Shed()
    {
        using Stream shed = Assembly.GetExecutingAssembly().GetManifestResourceStream("shed.csv")!;
        ReadingsInput readings = ReadingsCsv.Read([new("shed.csv", shed)], CheckSettings.Default.Diagnosing.Measuring);
        return Of(readings);
    }

    /// <summary>A shed from rows of readings.</summary>
    public static ExampleClub Of(string csv)
    {
        using var content = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(csv));
        ReadingsInput readings = ReadingsCsv.Read([new("rows", content)], CheckSettings.Default.Diagnosing.Measuring);
        return Of(readings);
    }

    public static ExampleClub Empty() => new(Club.Empty("club"), default);

    /// <summary>The same with facts more.</summary>
    public ExampleClub With(params Fact[] facts) => By("kim", facts);

    /// <summary>The same with facts more that a member has told.</summary>
    public ExampleClub By(string member, params Fact[] facts) => On("test", member, facts);

    /// <summary>The same with facts more that were recorded on a device.</summary>
    public ExampleClub On(string device, string member, params Fact[] facts)
    {
        foreach (Fact fact in facts)
        {
            (HybridTime time, _clock) = _clock.Tick(Now);
            (string kind, int version, byte[] body) = FactKinds.Write(fact);
            Club = Club.With(Recorded.Of(new Entry
            {
                Id = Guid.CreateVersion7(Now), Club = Club.Name, Member = member, Device = device, Time = time, Kind = kind, Version = version, Body = body,
            }));
        }

        return this;
    }

    public string Key(string boat) => ShedVerdicts.Of(Club).Keys.Single(k => new Journal.Views.BoatView(Club, k).Name == boat);

    public IReadOnlyList<BoatStanding> Boats(params string[] names) =>
        [.. All().Where(b => names.Length == 0 || names.Contains(b.View.Name))];

    /// <summary>Judged once, until more is on record.</summary>
    private IReadOnlyList<BoatStanding> All()
    {
        if (_judged is not { } judged || !ReferenceEquals(judged.Club, Club))
        {
            _judged = judged = (Club, ShedVerdicts.Of(Club).AllAsync().GetAwaiter().GetResult());
        }

        return judged.Boats;
    }

    private static ExampleClub Of(ReadingsInput readings)
    {
        Assert.Empty(readings.Errors);
        var club = Club.Empty("club");
        RecordedFile file = ReadingsRecording.Entries(readings, club, new("kim", "test", default, Now, () => Guid.CreateVersion7(Now)));
        return new(club.With(file.Entries.Select(Recorded.Of)), file.After);
    }
}
