using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>Where the law asks for what a notification says.</summary>
/// <param name="Submitter">For who notifies.</param>
/// <param name="Languages">For the languages.</param>
/// <param name="Category">For the product category.</param>
/// <param name="Packages">For kinds and sizes of packages.</param>
/// <param name="Ph">For the pH.</param>
/// <param name="Toxicology">For the effects on health.</param>
/// <param name="Mixtures">For mixtures in the mixture.</param>
internal sealed record PointClausesView(
    string Submitter,
    string Languages,
    string Category,
    string Packages,
    string Ph,
    string Toxicology,
    string Mixtures
) : IView
{
    /// <summary>The view of the law's clauses.</summary>
    public static PointClausesView Of(IReadOnlyDictionary<NotifiedPoint, Citation> points) =>
        new(
            points[NotifiedPoint.Submitter].Text,
            points[NotifiedPoint.Languages].Text,
            points[NotifiedPoint.Category].Text,
            points[NotifiedPoint.Packages].Text,
            points[NotifiedPoint.Ph].Text,
            points[NotifiedPoint.Toxicology].Text,
            points[NotifiedPoint.MixtureInMixture].Text
        );

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("submitter", Submitter),
            ("languages", Languages),
            ("category", Category),
            ("packages", Packages),
            ("ph", Ph),
            ("toxicology", Toxicology),
            ("mixtures", Mixtures),
        ];
}
