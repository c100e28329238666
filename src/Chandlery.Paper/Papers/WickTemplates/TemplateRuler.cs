namespace Chandlery.Paper.Papers.WickTemplates;

/// <summary>The scale that proves the print.</summary>
internal static class TemplateRuler
{
    /// <summary>Its length, millimetres.</summary>
    public const int LengthMm = 100;

    /// <summary>How long the stroke at a millimetre is.</summary>
    public static double Tick(int mm) =>
        mm % 10 == 0 ? 3
        : mm % 5 == 0 ? 2
        : 1.2;
}
