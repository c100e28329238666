using Chandlery.Core.Quantities;
using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A label whose text does not fit at the least sizes that the law allows.</summary>
/// <param name="Shape">The shape that was tried.</param>
/// <param name="MissingHeight">How much taller it would have to be.</param>
/// <param name="MissingWidth">How much wider it would have to be for its longest word; zero when that is not the trouble.</param>
/// <param name="Remedies">What would help, best first.</param>
public sealed record Misfit(LabelShape Shape, Millimetres MissingHeight, Millimetres MissingWidth, IReadOnlyList<string> Remedies)
    : LabelAttempt(Shape);
