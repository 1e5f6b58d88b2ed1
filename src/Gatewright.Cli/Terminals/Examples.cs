using System.CommandLine;

namespace Gatewright.Cli.Terminals;

/// <summary>A command line to copy, and what it does.</summary>
internal sealed record Example(string Line, string Meaning);

/// <summary>The examples under each command's help.</summary>
internal static class Examples
{
    private static readonly Example[] Check =
    [
        new("gatewright check round.csv", "the whole shed, drawn"),
        new("gatewright check racks-a.csv racks-b.csv --standard race", "two files of one shed, by tighter limits"),
        new("gatewright check round.csv --chances club.json", "causes weighed by the club's own table of chances"),
        new("gatewright check round.csv --boat Heron --explain", "one boat, and where its ± comes from"),
        new("gatewright check round.csv --json > round.json", "for another program"),
        new("gatewright check --plain < round.csv", "from a pipe, for a screen reader"),
        new("gatewright check --club shed", "a club in the store, by its own standards and chances"),
    ];

    private static readonly Example[] Mend =
    [
        new("gatewright mend round.csv --stores shelf.csv", "who gets which part, and what to buy for the rest"),
        new("gatewright mend round.csv", "what to buy, when nothing is known of the shelf"),
        new("gatewright mend round.csv --stores shelf.csv --backstay Heron", "Heron's riggers have backstays that can be set"),
        new("gatewright mend --club shed", "a club in the store, with its own shelf"),
    ];

    private static readonly Example[] Rig =
    [
        new("gatewright rig round.csv --crew women", "measures of the rig beside their targets, and where they miss them"),
        new("gatewright rig --club shed --boat Teal", "one boat of a club in the store, by the club's own targets"),
    ];

    private static readonly Example[] Targets =
    [
        new("gatewright targets --class 8+ --crew women", "what an eight is set to, and where that comes from"),
        new("gatewright targets --class 2x --club shed", "as the club has it"),
        new("gatewright targets --class 2x --crew junior --club shed --set span=158+-1.5 --member kim", "the club's own, for its juniors"),
    ];

    private static readonly Example[] Pitch =
    [
        new("gatewright pitch --gate 4 --out 1", "a gate of 4 degrees on a pin that leans out one degree"),
        new("gatewright pitch --gate 4 --bow-high 0.5 --lie inverted", "what a gauge shows on a rack that is not level"),
    ];

    private static readonly Example[] Gearing =
    [
        new("gatewright gearing --class 8+ --crew women --change spread=-1", "what a centimetre of spread does to an eight's gearing and arc"),
        new("gatewright gearing round.csv --boat Teal --seat 2 --want catch=+2", "which change reaches two degrees further, touching least"),
    ];

    private static readonly Example[] Balance =
    [
        new("gatewright balance round.csv --boat Heron", "how Heron's gates roll it, by a model, and which to mend first"),
        new("gatewright balance --club shed --pull women", "every boat of a club, for a women's crew"),
    ];

    private static readonly Example[] Chances =
    [
        new("gatewright chances", "what every why rests on, by default"),
        new("gatewright chances --chances club.json", "the club's own table, and where each number comes from"),
        new("gatewright chances learn jobs.csv --chances club.json", "teach it by finished jobs"),
        new("gatewright chances reset --chances club.json", "back to the defaults, with a copy kept"),
    ];

    private static readonly Example[] Simulate =
    [
        new("gatewright simulate", "a hundred eights with one faulty gate each"),
        new("gatewright simulate --class 4x --stations catch finish --boats 1000", "quads read at catch and finish, and more of them"),
    ];

    private static readonly Example[] Oars =
    [
        new("gatewright oars oars.csv", "every set, and which of its oars stands out"),
        new("gatewright oars --club shed --set Alluvium", "one set of a club in the store"),
        new("gatewright oars oars.csv --match 4", "the four that go best together"),
    ];

    private static readonly Example[] Change =
    [
        new("gatewright change rig.csv --boat Heron --to-crew women", "what a crew's targets ask of the boat"),
        new("gatewright change --club shed --boat Heron --to-day 2026-11-01", "back to the rig it had that day"),
        new("gatewright change --club shed --boat Heron --to Regatta", "to a rig that the club keeps under a name"),
    ];

    private static readonly Example[] Keep =
        [new("gatewright change keep --club shed --boat Heron --to Regatta --member kim", "put the change among the club's jobs; its steps are ticked off there")];

    private static readonly Example[] ListKept = [new("gatewright change list --club shed", "the changes that are open, and what is left of each")];

    private static readonly Example[] ShowKept = [new("gatewright change show heron-20261125 --club shed", "its steps, its parts, what to read again")];

    private static readonly Example[] DoneKept =
    [
        new("gatewright change done heron-20261125 1 2 --club shed --member kim", "its first two steps are done"),
        new("gatewright change done heron-20261125 2 --undo --club shed --member kim", "the second is not, after all"),
    ];

    private static readonly Example[] DropKept =
        [new("gatewright change drop heron-20261125 --reason \"the regatta is off\" --club shed --member kim", "what is not done stays undone")];

    private static readonly Example[] Compare =
    [
        new("gatewright compare --club shed --boat Heron --with Osprey", "two boats side by side"),
        new("gatewright compare --club shed --boat Heron --on 2026-11-01", "a boat then and now"),
    ];

    private static readonly Example[] Travel = [new("gatewright travel --club shed --boat Heron", "riggers off and on, and the quick check after")];

    private static readonly Example[] Record =
    [
        new("gatewright record round.csv --member kim --club shed --new-club \"Our shed\"", "the first readings of a new club"),
        new("gatewright record round.csv --member kim", "more of them, where the store has one club"),
        new("gatewright record --stores shelf.csv --member kim", "the shelf, counted"),
        new("gatewright record --oars oars.csv --member kim", "oars, their sets and what was read of them"),
    ];

    private static readonly Example[] Sheets =
    [
        new("gatewright print sheet round.csv -o sheets.pdf", "a rig sheet for each boat of a file"),
        new("gatewright print sheet --club shed --boat Heron --language de -o heron.pdf", "one boat of a club, in German"),
    ];

    private static readonly Example[] Cards = [new("gatewright print card --club shed -o cards.pdf", "a card for each boat, eight a sheet")];

    private static readonly Example[] ShedPage = [new("gatewright print shed --club shed -o shed.pdf", "to hang beside the door")];

    private static readonly Example[] JobSheets = [new("gatewright print job --club shed -o jobs.pdf", "every open job, for the bench")];

    private static readonly Example[] Rounds =
    [
        new("gatewright print round --club shed -o round.pdf", "boxes for a pencil, in the order of the walk"),
        new("gatewright print round --club shed --csv --stations abeam -o round.csv", "the table to type them into, for gatewright record"),
    ];

    private static readonly Example[] Labels =
        [new("gatewright print labels --club shed --of boats --address https://gates.example -o labels.pdf", "codes that open a boat on any phone")];

    private static readonly Example[] List = [new("gatewright club list", "which clubs the store has")];

    private static readonly Example[] Changes = [new("gatewright club changes --from 2026-11-01", "what came to the club since then")];

    private static readonly Example[] Day = [new("gatewright club day 2026-11-01 --boat Heron", "how Heron was rigged, and who said so")];

    private static readonly Example[] Export =
    [
        new("gatewright club export shed.zip --club shed", "a club as one file, photos and all"),
        new("gatewright club export --csv tables --replace", "its tables, for a spreadsheet"),
    ];

    private static readonly Example[] Import =
    [
        new("gatewright club import shed.zip --database \"Host=db;Database=gates\"", "into a store on PostgreSQL"),
        new("gatewright club import damaged.zip --anyway", "what can be read of a damaged file"),
    ];

    private static readonly Example[] Verify = [new("gatewright club verify", "whether all is as it was written")];

    private static readonly Example[] Backup = [new("gatewright club backup store-2026-11-25.zip", "the whole store, while the server runs")];

    private static readonly Example[] Restore =
        [new("gatewright club restore store-2026-11-25.zip --data fresh", "a backup, into a new folder")];

    private static readonly Example[] Serve = [new("gatewright serve --demo", "the server, with an invented club to look at")];

    /// <summary>Those of a command; of the program itself, the first of each.</summary>
    public static IReadOnlyList<Example> Of(Command command) => command.Name switch
    {
        "check" => Check,
        "mend" => Mend,
        "rig" => Rig,
        "targets" => Targets,
        "change" => Change,
        "compare" => Compare,
        "travel" => Travel,
        "pitch" => Pitch,
        "gearing" => Gearing,
        "balance" => Balance,
        "chances" => Chances,
        "learn" => [Chances[2]],
        "reset" => [Chances[3]],
        "oars" => Oars,
        "simulate" => Simulate,
        "record" => Record,
        "print" => [Sheets[0], Cards[0], ShedPage[0], JobSheets[0], Rounds[0], Labels[0]],
        "sheet" => Sheets,
        "card" => Cards,
        "shed" => ShedPage,
        "job" => JobSheets,
        "round" => Rounds,
        "labels" => Labels,
        "club" => [List[0], Changes[0], Day[0], Export[0], Import[0], Verify[0], Backup[0], Restore[0]],
        "list" when command.Parents.Any(p => p.Name == "change") => ListKept,
        "list" => List,
        "keep" => Keep,
        "show" => ShowKept,
        "done" => DoneKept,
        "drop" => DropKept,
        "changes" => Changes,
        "day" => Day,
        "export" => Export,
        "import" => Import,
        "verify" => Verify,
        "backup" => Backup,
        "restore" => Restore,
        "serve" => Serve,
        _ => [Check[0], Mend[0], Rig[0], Targets[0], Oars[0], Change[0], Compare[0], Travel[0], Record[1], Sheets[0], List[0], Serve[0], Pitch[0], Gearing[0], Balance[0], Chances[0], Simulate[0]],
    };
}
