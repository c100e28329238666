namespace Chandlery.Intake.Pages;

/// <summary>A thin straight line, level or upright.</summary>
/// <param name="Page">Page number.</param>
/// <param name="Box">Where it runs.</param>
public sealed record RuledLine(int Page, Box Box)
{
    /// <summary>True when it runs from left to right.</summary>
    public bool IsLevel => Box.Width >= Box.Height;
}
