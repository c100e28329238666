namespace Chandlery.Core.Declared;

/// <summary>The number by which a maker tells one composition from another in a UFI.</summary>
public static class FormulationNumber
{
    /// <summary>The largest there is: 28 bits (European Chemicals Agency, UFI developers manual).</summary>
    public const long Largest = (1L << 28) - 1;
}
