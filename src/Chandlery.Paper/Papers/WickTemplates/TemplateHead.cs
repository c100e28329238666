namespace Chandlery.Paper.Papers.WickTemplates;

/// <summary>What stands above a template.</summary>
/// <param name="Candle">The candle.</param>
/// <param name="Vessel">The vessel.</param>
/// <param name="Note">How the spacing stands to what is asked.</param>
internal sealed record TemplateHead(string Candle, string Vessel, string Note)
{
    /// <summary>Which layout it is, with its distances.</summary>
    public string Layout { get; init; } = "";
}
