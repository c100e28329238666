namespace Chandlery.Paper.Designs;

/// <summary>Words that fronts print, in the label's first language.</summary>
/// <param name="Wicks">"wick" or "wicks", as the number asks.</param>
/// <param name="Hours">"hours".</param>
/// <param name="Grams">"grams".</param>
/// <param name="Wax">"wax".</param>
public sealed record DesignWords(string Wicks, string Hours, string Grams, string Wax);
