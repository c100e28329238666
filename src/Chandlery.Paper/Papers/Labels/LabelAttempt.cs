using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>What came of setting a label's text in a shape: <see cref="FittedLabel"/> or <see cref="Misfit"/>.</summary>
/// <param name="Shape">The shape.</param>
public abstract record LabelAttempt(LabelShape Shape)
{
    /// <summary>The label; null when the text does not fit.</summary>
    public FittedLabel? Fitted => this as FittedLabel;
}
