using System.Text;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Sheets;
using Gatewright.Journal.Replay;

namespace Gatewright.Cli.Clubs.Exporting;

/// <summary>A club's tables in a folder. All are written beside it before the first gets its place.</summary>
internal static class TableFolder
{
    /// <returns>The files, or null and errors.</returns>
    public static IReadOnlyList<string>? TryWrite(Club club, string folder, bool replace, List<InputProblem> errors)
    {
        List<string> files = [.. ClubCsv.Tables.Select(t => Path.Combine(folder, t.File))];
        List<string> taken = replace ? [] : [.. files.Append(folder).Where(File.Exists)];
        if (taken.Count > 0)
        {
            errors.AddRange(taken.Select(NewFile.Taken));
            return null;
        }

        string beside = $"{Path.TrimEndingDirectorySeparator(folder)}.{Guid.NewGuid():N}.part";
        try
        {
            Directory.CreateDirectory(beside);
            foreach (ClubTable table in ClubCsv.Tables)
            {
                using var to = new StreamWriter(Path.Combine(beside, table.File), append: false, new UTF8Encoding(false));
                table.Write(club, to);
            }

            Directory.CreateDirectory(folder);
            foreach (ClubTable table in ClubCsv.Tables)
            {
                File.Move(Path.Combine(beside, table.File), Path.Combine(folder, table.File), replace);
            }

            return files;
        }
        catch (Exception cannot) when (NewFile.IsOfTheFile(cannot))
        {
            errors.Add(new(folder, null, null, null, $"cannot be written: {cannot.Message}"));
            return null;
        }
        finally
        {
            if (Directory.Exists(beside))
            {
                Directory.Delete(beside, recursive: true);
            }
        }
    }
}
