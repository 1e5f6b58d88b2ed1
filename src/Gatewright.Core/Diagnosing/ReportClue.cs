namespace Gatewright.Core.Diagnosing;

/// <summary>One report, ready to be weighed under every story.</summary>
internal interface IReportClue
{
    /// <summary>How likely it is to be told if the story is true.</summary>
    double Likelihood(int story, IReadOnlyList<Opening> parts, StoryTable table);
}

/// <summary>A knock or a refit: it points to causes. A story has one cause at most on a gate.</summary>
internal sealed class CauseClue(Report report, ReportLikelihoods likelihoods) : IReportClue
{
    public double Likelihood(int story, IReadOnlyList<Opening> parts, StoryTable table)
    {
        for (int i = 0; i < parts.Count; i++)
        {
            if (report.Gate is { } gate && parts[i].Part.Touches(gate))
            {
                return Checked(likelihoods.Given(report.Kind, parts[i].Part.Cause));
            }
        }

        return Checked(likelihoods.Base(report.Kind));
    }

    private double Checked(double chance) => Chance.Checked(chance, report.Kind.Code());
}

/// <summary>A crab, a blade that washes out, a boat down to one side: it points to a pitch, or a difference of pitches.</summary>
internal sealed class PitchClue(StateSum sum, Func<double, double, double> curve) : IReportClue
{
    public double Likelihood(int story, IReadOnlyList<Opening> parts, StoryTable table)
    {
        (double mean, double variance) = table.Moments(story, sum);
        return curve(mean, variance);
    }
}

/// <summary>A report of something that was not read: it favours no story.</summary>
internal sealed class ConstantClue(double chance) : IReportClue
{
    public double Likelihood(int story, IReadOnlyList<Opening> parts, StoryTable table) => chance;
}
