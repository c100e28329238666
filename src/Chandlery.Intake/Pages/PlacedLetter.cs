namespace Chandlery.Intake.Pages;

/// <summary>A letter on a page that is held so that the letter stands upright; points from the page's upper left corner.</summary>
/// <param name="Text">The letter, or several that one sign stands for.</param>
/// <param name="Left">Where its baseline begins.</param>
/// <param name="Right">Where its baseline ends.</param>
/// <param name="Baseline">How far down its baseline is.</param>
/// <param name="Size">Type size.</param>
internal readonly record struct PlacedLetter(string Text, double Left, double Right, double Baseline, double Size);
