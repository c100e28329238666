namespace Chandlery.Core.Law;

/// <summary>Whether an offered precautionary statement suits a candle for the public.</summary>
public enum PrecautionUse
{
    /// <summary>Printed even beyond the usual number.</summary>
    Must,

    /// <summary>Printed when it is among the most important.</summary>
    Keep,

    /// <summary>Not for the public's candle.</summary>
    Drop,
}
