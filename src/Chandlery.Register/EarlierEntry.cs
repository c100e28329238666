using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Files;

namespace Chandlery.Register;

/// <summary>What a technical file is compared with where no earlier file is named: the candle's last entry in the register.</summary>
public static class EarlierEntry
{
    /// <summary>The candle as it was entered last under the same law; without it, why there is none.</summary>
    /// <param name="lawbook">The law.</param>
    /// <param name="a">The candle as it is.</param>
    /// <param name="catalogue">All that the maker declares.</param>
    /// <param name="place">The register.</param>
    public static EarlierVersion Of(Lawbook lawbook, Assessment a, Catalogue catalogue, RegisterPlace place)
    {
        try
        {
            return Looked(lawbook, a, catalogue, place);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or FormatException)
        {
            return new EarlierVersion("The register", null, $"{error.Message.TrimEnd('.')}.");
        }
    }

    private static EarlierVersion Looked(Lawbook lawbook, Assessment a, Catalogue catalogue, RegisterPlace place)
    {
        if (!place.Exists)
        {
            return First("there is no register yet");
        }

        using RegisterBook book = place.OpenToRead();
        RegisterEntry? last = NamesOf(a, catalogue)
            .Select(name =>
                book.Stream(new RegisterQuery(Batch: name), _ => { }, RegisterStretch.Latest)
                    .FirstOrDefault(e => e.Content.Subject == name && e.Content.Edition == a.Edition.Id)
            )
            .OfType<RegisterEntry>()
            .MaxBy(e => e.Number);
        if (last is null)
        {
            return First("the register has no entry of it under this law");
        }

        IEnumerable<(string, string)> texts = last.Content.Declarations.Select(d =>
            (d.Path, book.Declaration(d.Sha256) ?? throw new IOException($"entry {last.Number}: the text of {d.Path} is missing"))
        );
        return EarlierStates.Of(
            lawbook,
            a,
            $"entry {last.Number} of the register, made {last.At}, batch {last.Content.Batch}, under the law of {last.Content.AsOf}",
            [.. texts],
            last.Content.AsOf
        );
    }

    private static EarlierVersion First(string why) =>
        new("No earlier version", null, $"{why}, and no earlier file was named; this is taken for the first version.");

    // A candle's labels are entered under its own name or under those of its batches.
    private static IEnumerable<string> NamesOf(Assessment a, Catalogue catalogue) =>
        a.Batch is not null
            ? [a.Id]
            : catalogue.OfKind<Batch>().Where(b => b.Candle.Id == a.Candle.Id).Select(b => b.Id).Prepend(a.Candle.Id).Distinct();
}
