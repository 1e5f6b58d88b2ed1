using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>The lines read so far: a part that stands on several of them is counted together.</summary>
internal sealed class StoresLines(Reporter report)
{
    private readonly Dictionary<Part, (int Count, RowPlace First)> _parts = [];

    public IEnumerable<PartCount> All => _parts.Select(p => new PartCount(p.Key, p.Value.Count));

    public void Add(PartCount line)
    {
        if (!_parts.TryGetValue(line.Part, out (int Count, RowPlace First) before))
        {
            _parts.Add(line.Part, (line.Count, report.Place));
            return;
        }

        report.CountedTogether(line.Part, before.First);
        int sum = before.Count + line.Count;
        if (sum > StoresFormat.MostOfAPart)
        {
            report.TooMany(line.Part, sum);
            return;
        }

        _parts[line.Part] = (sum, before.First);
    }
}
