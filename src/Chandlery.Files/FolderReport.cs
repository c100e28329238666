using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>What is wrong in a folder, as far as it matters for what was asked.</summary>
/// <param name="Bad">What keeps something that was asked for from being assessed, causes first; each is said once.</param>
/// <param name="Notes">Files that are wrong but not needed, a sentence each.</param>
public sealed record FolderReport(IReadOnlyList<Problem> Bad, IReadOnlyList<string> Notes)
{
    /// <summary>The report on several folders after the candles of all were assessed.</summary>
    /// <param name="folders">The folders; one at least.</param>
    /// <param name="found">What was found wrong with the candles and batches that were asked for.</param>
    public static FolderReport Of(IReadOnlyList<DeclarationFolder> folders, IReadOnlyList<Problem> found)
    {
        if (folders.Count == 1)
        {
            return Of(folders[0], found);
        }

        List<FolderReport> each = [.. folders.Select(f => Of(f, found))];
        return new FolderReport(
            [.. each.SelectMany(r => r.Bad).DistinctBy(p => (p.Place, p.What, p.Remedy))],
            [.. each.SelectMany(r => r.Notes).Distinct()]
        );
    }

    /// <summary>The report on a folder after its candles were assessed.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="found">What was found wrong with the candles and batches that were asked for.</param>
    public static FolderReport Of(DeclarationFolder folder, IReadOnlyList<Problem> found)
    {
        IReadOnlyList<Problem> ofFiles = folder.Problems.Found;
        List<Problem> once = [.. found.DistinctBy(p => (p.Place, p.What, p.Remedy))];
        HashSet<string> needed = [.. found.SelectMany(p => p.CausedBy)];
        if (folder.AskedFile is { } asked)
        {
            needed.Add(asked);
        }

        // Nothing that was asked for may lack a reason.
        bool isForOne = folder.AskedFile is not null && (folder.Asked.Count > 0 || ofFiles.Any(IsNeeded));
        if (!isForOne)
        {
            return new FolderReport([.. ofFiles, .. once], []);
        }

        return new FolderReport(
            [.. ofFiles.Where(IsNeeded), .. once],
            [
                .. ofFiles
                    .Where(p => !IsNeeded(p))
                    .GroupBy(p => p.Place.File)
                    .Select(g =>
                        $"Note: {g.Key} has {g.Count()} problem{(g.Count() == 1 ? "" : "s")}, and {folder.AskedFile} does not need it. The first: {g.First()}"
                    ),
            ]
        );

        bool IsNeeded(Problem problem) => needed.Contains(problem.Place.File);
    }
}
