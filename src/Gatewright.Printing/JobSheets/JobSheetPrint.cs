using Gatewright.Core.Checking;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.JobSheets;

/// <summary>Job sheets for the bench: a job a page, a piece of mending or a change of the rig.</summary>
public static class JobSheetPrint
{
    /// <summary>The sheets of some jobs, in their order.</summary>
    /// <param name="club">The club.</param>
    /// <param name="jobs">The jobs, each with how its boat stands; null where nothing is known of that.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<(IWork Job, BoatStanding? Boat)> jobs, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        ArgumentNullException.ThrowIfNull(imprint);
        CheckSettings settings = ClubSettings.Of(club);
        IReadOnlyList<string>[] steps = [.. jobs.Select(j => j.Job is JobView job ? JobSteps.In(club, job, settings, imprint.Say) : [])];
        return Press.Print(imprint, imprint.Texts["Title.Job"], book =>
        {
            for (int i = 0; i < jobs.Count; i++)
            {
                switch (jobs[i].Job)
                {
                    case JobView job:
                        new JobSheetPage(book, club, job, jobs[i].Boat, steps[i]).Draw();
                        break;
                    case RigChange change:
                        new ChangeSheetPage(book, change, jobs[i].Boat?.View ?? new BoatView(club, change.Boat)).Draw();
                        break;
                    default:
                        throw new ArgumentException("There are two kinds of work.", nameof(jobs));
                }
            }

            if (jobs.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Jobs");
            }

            Frame.Finish(book);
        });
    }
}
