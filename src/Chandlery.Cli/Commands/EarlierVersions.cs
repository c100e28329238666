using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Files;
using Chandlery.Paper.Proofs.Reading;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Looks for what a technical file is compared with, and assesses the candle as it was then, under the law of then.</summary>
/// <param name="lawbook">The law.</param>
/// <param name="folder">The maker's folder.</param>
internal sealed class EarlierVersions(Lawbook lawbook, DeclarationFolder folder)
{
    /// <summary>The earlier version of a candle.</summary>
    /// <param name="a">The candle as it is.</param>
    /// <param name="since">An earlier file, or a folder with the declarations of then; null for the last entry in the register.</param>
    public EarlierVersion Of(Assessment a, string? since)
    {
        if (since is null)
        {
            return EarlierEntry.Of(lawbook, a, folder.Catalogue, RegisterPlace.OfFolder(folder.Root));
        }

        try
        {
            return Directory.Exists(since) ? InFolder(a, since) : InFile(a, since);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or FormatException)
        {
            return new EarlierVersion(since, null, $"{error.Message.TrimEnd('.')}.");
        }
    }

    private EarlierVersion InFolder(Assessment a, string since)
    {
        DeclarationFolder then = DeclarationFolder.Open(since, lawbook.Vocabulary);
        return EarlierStates.Of(
            lawbook,
            a,
            $"the folder {Path.GetFileName(Path.TrimEndingDirectorySeparator(since))}, under the law of today",
            then.Catalogue,
            a.AsOf,
            WithinFolder(then)
        );
    }

    // A paper names a file from its folder on: where the folder lies on this machine says nothing to its reader.
    private static Problems WithinFolder(DeclarationFolder then)
    {
        string above = Path.Combine(Path.GetFullPath(then.Root), "..");
        var problems = new Problems();
        problems.AddRange(
            then.Problems.Found.Select(p =>
                p with
                {
                    Place = p.Place with { File = Path.GetRelativePath(above, p.Place.File).Replace('\\', '/') },
                }
            )
        );
        return problems;
    }

    private EarlierVersion InFile(Assessment a, string since)
    {
        string name = Path.GetFileName(since);
        IReadOnlyList<(string Name, string Text)> inside = AttachedTexts.Of(File.ReadAllBytes(since));
        string? day = inside
            .Where(f => f.Name.EndsWith($"assessment-{a.Id}-{a.Edition.Id}.json", StringComparison.Ordinal))
            .Select(f => DayOf(f.Text))
            .FirstOrDefault();
        return day is null
            ? new EarlierVersion(name, null, $"it has no assessment of {a.Id} under {a.Edition.Id} inside, so nothing can be compared.")
            : EarlierStates.Of(
                lawbook,
                a,
                $"{name}, under the law of {day}",
                [
                    .. inside.Where(f =>
                        f.Name.EndsWith(".yaml", StringComparison.Ordinal) || f.Name.EndsWith(".yml", StringComparison.Ordinal)
                    ),
                ],
                day
            );
    }

    private static string? DayOf(string assessment)
    {
        try
        {
            using JsonDocument json = JsonDocument.Parse(assessment);
            return json.RootElement.TryGetProperty("asOf", out JsonElement day) ? day.GetString() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
