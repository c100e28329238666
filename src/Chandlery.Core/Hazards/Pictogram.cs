using System.Diagnostics.CodeAnalysis;

namespace Chandlery.Core.Hazards;

/// <summary>One of the nine hazard pictograms of the GHS, by its code (<c>GHS01</c> to <c>GHS09</c>).</summary>
public sealed record Pictogram
{
    private Pictogram(string code) => Code = code;

    /// <summary>All nine (GHS, Annex 3, Section 4).</summary>
    public static IReadOnlyList<Pictogram> All { get; } = [.. Enumerable.Range(1, 9).Select(n => new Pictogram($"GHS0{n}"))];

    /// <summary>The code.</summary>
    public string Code { get; }

    /// <summary>The pictogram with this code, or null.</summary>
    public static Pictogram? Find(string code) => All.FirstOrDefault(p => p.Code == code);

    /// <summary>Its code, for print.</summary>
    [return: NotNullIfNotNull(nameof(pictogram))]
    public static implicit operator string?(Pictogram? pictogram) => pictogram?.Code;

    /// <inheritdoc/>
    public override string ToString() => Code;
}
