using Gatewright.Core.Checking;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.JobSheets;

/// <summary>Job sheets for the bench: a job a page.</summary>
public static class JobSheetPrint
{
    /// <summary>The sheets of some jobs, in their order.</summary>
    /// <param name="club">The club.</param>
    /// <param name="jobs">The jobs, each with how its boat stands; null where nothing is known of that.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<(JobView Job, BoatStanding? Boat)> jobs, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        ArgumentNullException.ThrowIfNull(imprint);
        CheckSettings settings = ClubSettings.Of(club);
        IReadOnlyList<string>[] steps = [.. jobs.Select(j => JobSteps.In(club, j.Job, settings, imprint.Say))];
        return Press.Print(imprint, imprint.Texts["Title.Job"], book =>
        {
            for (int i = 0; i < jobs.Count; i++)
            {
                new JobSheetPage(book, club, jobs[i].Job, jobs[i].Boat, steps[i]).Draw();
            }

            if (jobs.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Jobs");
            }

            Frame.Finish(book);
        });
    }
}
