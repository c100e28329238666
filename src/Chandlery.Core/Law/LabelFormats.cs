using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>Everything about the look of labels.</summary>
/// <param name="Formats">By date.</param>
/// <param name="Quantity">Figures of the nominal quantity.</param>
/// <param name="OfferedSizes">Label sizes to choose from when the maker asks for none, smallest first.</param>
public sealed record LabelFormats(IReadOnlyList<LabelFormat> Formats, QuantityFigures Quantity, IReadOnlyList<LabelSize> OfferedSizes)
{
    /// <summary>The first day on which a format is law.</summary>
    public DateOnly KnownFrom => Formats.Where(f => f.Status == LegalStatus.Law).Min(f => f.From);

    /// <summary>The format that is law on that day.</summary>
    public LabelFormat On(DateOnly day) =>
        Formats.Where(f => f.Status == LegalStatus.Law && f.From <= day).MaxBy(f => f.From)
        ?? throw new InvalidOperationException($"no label format holds on {day:yyyy-MM-dd}");

    /// <summary>Formats that come later than that day, law and expected, in order of date.</summary>
    public IEnumerable<LabelFormat> After(DateOnly day) => Formats.Where(f => f.From > day).OrderBy(f => f.From);
}
