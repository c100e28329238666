using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
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
        try
        {
            return since is null ? InRegister(a)
                : Directory.Exists(since) ? InFolder(a, since)
                : InFile(a, since);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or FormatException)
        {
            return new EarlierVersion(since ?? "The register", null, $"{error.Message.TrimEnd('.')}.");
        }
    }

    private EarlierVersion InRegister(Assessment a)
    {
        RegisterPlace place = RegisterPlace.OfFolder(folder.Root);
        if (!place.Exists)
        {
            return new EarlierVersion(
                "No earlier version",
                null,
                "there is no register yet, and no earlier file was named ('--since'); this is taken for the first version."
            );
        }

        using RegisterBook book = place.OpenToRead();
        RegisterEntry? last = NamesOf(a)
            .Select(name =>
                book.Stream(new RegisterQuery(Batch: name), _ => { }, RegisterStretch.Latest)
                    .FirstOrDefault(e => e.Content.Subject == name && e.Content.Edition == a.Edition.Id)
            )
            .OfType<RegisterEntry>()
            .MaxBy(e => e.Number);
        if (last is null)
        {
            return new EarlierVersion(
                "No earlier version",
                null,
                "the register has no entry of it under this law, and no earlier file was named ('--since'); this is taken for the first version."
            );
        }

        IEnumerable<(string, string)> texts = last.Content.Declarations.Select(d =>
            (
                d.Path,
                book.Declaration(d.Sha256)
                    ?? throw new IOException($"entry {last.Number}: the text of {d.Path} is missing: 'register verify' says more")
            )
        );
        return Assessed(
            a,
            $"entry {last.Number} of the register, made {last.At}, batch {last.Content.Batch}, under the law of {last.Content.AsOf}",
            [.. texts],
            last.Content.AsOf
        );
    }

    // A candle's labels are entered under its own name or under those of its batches.
    private IEnumerable<string> NamesOf(Assessment a) =>
        a.Batch is not null
            ? [a.Id]
            : folder.Catalogue.OfKind<Batch>().Where(b => b.Candle.Id == a.Candle.Id).Select(b => b.Id).Prepend(a.Candle.Id).Distinct();

    private EarlierVersion InFolder(Assessment a, string since)
    {
        DeclarationFolder then = DeclarationFolder.Open(since, lawbook.Vocabulary);
        return Assessed(
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
            : Assessed(
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

    private EarlierVersion Assessed(Assessment a, string called, IReadOnlyList<(string, string)> texts, string day)
    {
        var problems = new Problems();
        Catalogue then = DeclaredTexts.Read(texts, lawbook.Vocabulary, problems);
        return IsoDay.Parse(day) is { Success: true } on
            ? Assessed(a, called, then, on.Value, problems)
            : new EarlierVersion(called, null, "its day cannot be read.");
    }

    private EarlierVersion Assessed(Assessment a, string called, Catalogue then, DateOnly day, Problems problems)
    {
        IDeclaration? declared = a.Batch is null
            ? then.OfKind<Candle>().FirstOrDefault(c => c.Id == a.Candle.Id)
            : then.OfKind<Batch>().FirstOrDefault(b => b.Id == a.Id);
        Assessment? was = declared is null
            ? null
            : new Assessor(lawbook, then, day).Assess(declared, null, problems).FirstOrDefault(e => e.Edition.Id == a.Edition.Id);
        return new EarlierVersion(
            called,
            was,
            was is not null ? ""
                : problems.None ? "it does not hold the candle under this law."
                : $"it cannot be assessed any more: {problems.Found[0]}"
        );
    }
}
