using FsCheck.Xunit;
using Gatewright.Journal.Exchange.ChancesFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Exchange.ChancesFiles;

/// <summary>What can be wrong with a file of chances.</summary>
public sealed class ChancesFaultTests
{
    private const string Found = "none, gate-pitch, pin-aft, pin-out, rigger, wrong-seat, sleeve, hull-level or gauge-zero; several at one gate with + between, each once";

    public static TheoryData<string, string, string> Faults => new()
    {
        { "no JSON", "{", "club.json, line 1: not JSON from about character 2 of this line on: look for a missing comma, quote mark or bracket." },
        { "no object", "[]", "club.json, at $: '[]' is not a table of chances: expected an object, { \"format\": ... }." },
        { "no format", "{}", "club.json, at $.format: missing: expected \"gatewright.chances/1\"." },
        { "a later format", "{\"format\": \"gatewright.chances/2\"}", "club.json, at $.format: 'gatewright.chances/2' is not the format that is read here: expected \"gatewright.chances/1\"." },
        { "a key mistyped", With("\"chances\": {\"riger\": 0.1}"), "club.json, at $.chances.riger: not a key of this format: did you mean rigger?" },
        { "a key twice", With("\"chances\": {\"rigger\": 0.1, \"rigger\": 0.2}"), "club.json, at $.chances.rigger: stands there more than once: keep one." },
        { "numbers that are none", With("\"weights\": 3"), "club.json, at $.weights: '3' is not a set of numbers: expected { \"gates\", \"oars\", \"boats\", \"gauges\" }." },
        { "a number in quote marks", With("\"chances\": {\"rigger\": \"0,1\"}"), "club.json, at $.chances.rigger: '0,1' is not a number: expected a chance, from 0 to below 1, without quote marks and with a decimal point." },
        { "a certainty", With("\"chances\": {\"rigger\": 1}"), "club.json, at $.chances.rigger: '1' is out of range: expected a chance, from 0 to below 1." },
        { "a chance below nothing", With("\"chances\": {\"sleeve\": -0.1}"), "club.json, at $.chances.sleeve: '-0.1' is out of range: expected a chance, from 0 to below 1." },
        { "a report that cannot be", With("\"reports\": {\"knock\": {\"pin\": 0}}"), "club.json, at $.reports.knock.pin: '0' is out of range: expected a chance, above 0 to below 1." },
        { "no weight", With("\"weights\": {\"oars\": 0}"), "club.json, at $.weights.oars: '0' is out of range: expected a number of checks, above 0 to 1,000,000." },
        { "no width", With("\"reports\": {\"washesOut\": {\"width\": 0}}"), "club.json, at $.reports.washesOut.width: '0' is out of range: expected degrees, above 0 to 30." },
        { "a threshold out of reach", With("\"reports\": {\"washesOut\": {\"threshold\": 31}}"), "club.json, at $.reports.washesOut.threshold: '31' is out of range: expected degrees, from -30 to 30." },
        { "a gate with more than one cause", With("\"chances\": {\"rigger\": 0.5, \"pinOut\": 0.5}"), "club.json, at $.chances: gatePitch, pinAft, pinOut and rigger come to 1.03 together, a cause at every gate: expected less than 1." },
        { "a curve upside down", With("\"reports\": {\"crabEarly\": {\"base\": 0.6}}"), "club.json, at $.reports.crabEarly.peak: 0.5 is below base (0.6): a report is told more often in trouble than out of it, so expected peak to be at least base." },
        { "jobs that are no list", With("\"jobs\": {}"), "club.json, at $.jobs: '{}' is not a list: expected the jobs in square brackets, [ ]." },
        { "a job that is none", With("\"jobs\": [7]"), "club.json, at $.jobs[0]: '7' is not a job: expected an object, { \"checked\": ... }." },
        { "nothing checked", Job(""), "club.json, at $.jobs[0].checked: missing: expected gate, oar, level or gauge." },
        { "something else checked", Job("\"checked\": \"hull\""), "club.json, at $.jobs[0].checked: 'hull' is not understood: expected gate, oar, level or gauge." },
        {
            "a gate of no boat",
            Job("\"checked\": \"gate\", \"class\": \"2x\", \"seat\": 3, \"side\": \"left\", \"date\": \"May\", \"found\": \"rust\""),
            Csv.Messages(
                "club.json, at $.jobs[0].boat: missing: expected a name.",
                "club.json, at $.jobs[0].seat: '3' is not a seat of 2x: expected a whole number from 1 (bow) to 2.",
                "club.json, at $.jobs[0].side: 'left' is not understood: expected port or starboard.",
                "club.json, at $.jobs[0].date: 'May' is not understood: expected a day such as \"2026-05-02\".",
                $"club.json, at $.jobs[0].found: 'rust' is nothing that is found: expected {Found}.")
        },
        {
            "a level with a seat, and a pin that leans",
            Job("\"checked\": \"level\", \"boat\": \"Heron\", \"seat\": 3, \"date\": \"2026-05-02\", \"found\": \"pin-aft\""),
            Csv.Messages(
                "club.json, at $.jobs[0].seat: not a key of this format: expected checked, boat, date, found.",
                "club.json, at $.jobs[0].found: 'pin-aft' goes with gate, and what was checked is level: correct one of the two.")
        },
        { "a job twice", Jobs(Level("none"), Level("none")), "club.json, at $.jobs[1]: is the same job as $.jobs[0]: keep one." },
        { "two findings", Jobs(Level("none"), Level("hull-level")), "club.json, at $.jobs[1]: disagrees with none in $.jobs[0], for the same level on the same day: correct the wrong one, and keep one." },
        {
            "everything at once",
            "{\"chances\": {\"rigger\": 2}, \"weights\": {\"gates\": -1}, \"jobs\": 3}",
            Csv.Messages(
                "club.json, at $.format: missing: expected \"gatewright.chances/1\".",
                "club.json, at $.chances.rigger: '2' is out of range: expected a chance, from 0 to below 1.",
                "club.json, at $.weights.gates: '-1' is out of range: expected a number of checks, above 0 to 1,000,000.",
                "club.json, at $.jobs: '3' is not a list: expected the jobs in square brackets, [ ].")
        },
    };

    [Fact]
    public void No_row_of_the_table_is_lost() => Assert.Equal(25, Faults.Count);

    [Theory]
    [MemberData(nameof(Faults))]
    public void Every_fault_is_one_message_with_its_remedy(string fault, string file, string expected)
    {
        Assert.NotEmpty(fault);
        Assert.Equal(expected, Tables.ErrorsOf(file));
    }

    [Property(MaxTest = 2_000)]
    public void Whatever_a_file_holds_it_gives_a_table_or_errors_and_never_both(int seed)
    {
        var random = new Random(seed);
        char[] text = ChancesFile.Text(ClubChances.Default with { Jobs = Tables.Of(Jobs(Level("none"))).Jobs }).ToCharArray();
        for (int i = random.Next(1, 5); i > 0; i--)
        {
            text[random.Next(text.Length)] = "{}[]\":,0-9eu\\\uD800"[random.Next(14)];
        }

        ChancesInput input = Tables.Read(new string(text));
        Assert.Equal(input.Errors.Count == 0, input.Table is not null);
        Assert.All(input.Table is { } table ? ChanceNumbers.All : [], number => Assert.True(number.Range.Takes(number.Get(input.Table!)), number.Key));
    }

    private static string With(string more) => $"{{ {Tables.Format}, {more} }}";

    private static string Job(string job) => Jobs($"{{ {job} }}");

    private static string Jobs(params string[] jobs) => With($"\"jobs\": [{string.Join(", ", jobs)}]");

    private static string Level(string found) => $"{{ \"checked\": \"level\", \"boat\": \"Heron\", \"date\": \"2026-05-02\", \"found\": \"{found}\" }}";
}
