using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>A bought mixture in the candle whose composition is not known in full.</summary>
/// <param name="Name">Its trade name.</param>
/// <param name="Share">Its share.</param>
/// <param name="Ufi">Its UFI, or that none is declared.</param>
/// <param name="Supplier">Who sells it, with what is known of how to reach them.</param>
/// <param name="Document">Its safety data sheet, or a dash.</param>
internal sealed record BoughtMixtureView(string Name, string Share, string Ufi, string Supplier, string Document) : IView
{
    /// <summary>The view of a mixture.</summary>
    public static BoughtMixtureView Of(MixtureInMixture mixture) =>
        new(
            mixture.Name,
            FigureFormat.English.AtMost(mixture.Share),
            mixture.Source.Ufi is not { } ufi ? "not declared"
                : mixture.WrongUfi is null ? ufi
                : $"{ufi}, which cannot be right",
            string.Join(", ", new[] { mixture.Supplier, mixture.Source.Telephone, mixture.Source.Email }.Where(t => t is not null)),
            mixture.Document.Length > 0 ? mixture.Document : "-"
        );

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("name", Name), ("share", Share), ("ufi", Ufi), ("supplier", Supplier), ("document", Document)];
}
