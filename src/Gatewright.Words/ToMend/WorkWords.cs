using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Words.ToMend;

/// <summary>What to do, with amount and direction, in words that need no sign convention.</summary>
public sealed class WorkWords
{
    private readonly Wording _say;

    internal WorkWords(Wording say) => _say = say;

    /// <summary>Steps as sentences, one each.</summary>
    public IReadOnlyList<string> Steps(IEnumerable<Work> steps) => [.. steps.Select(Of)];

    /// <summary>All steps in one: "Put a washer … Then: Set the backstay …"; empty for none.</summary>
    public string Instruction(IEnumerable<Work> steps) => Steps(steps) is { Count: > 0 } told
        ? told.Aggregate((one, other) => _say.Text("Work.Then", one, other))
        : string.Empty;

    private string Of(Work step) => step switch
    {
        Work.FitInsert { Change: null } insert => _say.Text("Work.Insert", _say.Figures.Brief(insert.Degrees)),
        Work.FitInsert { Change: { } change } insert => _say.Text(
            change > 0 ? "Work.Insert.More" : "Work.Insert.Less", _say.Figures.Brief(insert.Degrees), Amount(change)),
        Work.Pack pack => Pack(pack),
        Work.SetStay stay => Stay(stay),
        Work.StraightenPin pin => _say.Text("Work.StraightenPin", Tip(pin.Tip)),
        Work.FitPin => _say.Text("Work.FitPin"),
        Work.RefitRigger rigger => _say.Text("Work.RefitRigger", Tip(rigger.Tip)),
        Work.RepairRigger => _say.Text("Work.RepairRigger"),
        Work.ExchangeRiggers { Other: { } other } riggers => _say.Text(
            "Work.ExchangeRiggers", _say.Names.Gate(riggers.Gate), _say.Names.Gate(other)),
        Work.ExchangeRiggers rigger => _say.Text("Work.TurnRigger", _say.Names.Gate(rigger.Gate)),
        Work.TurnSleeve sleeve => _say.Text(
            sleeve.ToBowDegrees > 0 ? "Work.TurnSleeve.ToBow" : "Work.TurnSleeve.ToStern",
            _say.Names.Gate(sleeve.Oar),
            Amount(sleeve.ToBowDegrees),
            Amount(sleeve.RoundMm),
            _say.Figures.Length(sleeve.DiameterMm)),
        Work.ReadLevel => _say.Text("Work.ReadLevel"),
        _ => _say.Text("Work.ReverseGauge"),
    };

    private string Pack(Work.Pack pack)
    {
        string what = (pack.Way.IsAtThePlate(), pack.Sizes.ThicknessesMm.Count) switch
        {
            (true, 1) => "Pack.Washers.One",
            (true, _) => "Pack.Washers.Many",
            (_, 1) => "Pack.Shims.One",
            _ => "Pack.Shims.Many",
        };
        string sizes = string.Join(" + ", pack.Sizes.ThicknessesMm.Select(_say.Figures.Brief));
        string sentence = _say.Text(
            $"Work.Pack.{pack.Way}", _say.Text(what, sizes), Amount(pack.TiltDegrees), _say.Figures.Length(pack.BaseMm));
        return pack.LeftDegrees == 0
            ? sentence
            : _say.Text("Sentence.Two", sentence, _say.Text("Work.Left", Amount(pack.LeftDegrees)));
    }

    private string Stay(Work.SetStay stay)
    {
        string sentence = _say.Text(
            stay.ToSternMm > 0 ? "Work.Stay.ToStern" : "Work.Stay.ToBow",
            Amount(stay.ToSternMm),
            Amount(stay.AftDegrees),
            _say.Figures.Length(stay.HeightMm));
        return stay.IsDoubtful ? _say.Text("Sentence.Two", sentence, _say.Text("Work.Stay.Doubtful")) : sentence;
    }

    /// <summary>"8.2 mm towards the bow and 3.1 mm away from the hull".</summary>
    private string Tip(TipWay tip)
    {
        List<string> ways = [];
        if (tip.ToSternMm != 0)
        {
            ways.Add(_say.Text(tip.ToSternMm > 0 ? "Tip.ToStern" : "Tip.ToBow", Amount(tip.ToSternMm)));
        }

        if (tip.OutMm != 0)
        {
            ways.Add(_say.Text(tip.OutMm > 0 ? "Tip.Out" : "Tip.In", Amount(tip.OutMm)));
        }

        return ways.Count == 0 ? _say.Text("Tip.None") : _say.Causes.And(ways);
    }

    private string Amount(double value) => _say.Figures.Fixed(Math.Abs(value), 1);
}
