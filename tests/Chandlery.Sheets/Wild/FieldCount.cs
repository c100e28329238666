namespace Chandlery.Sheets.Wild;

/// <summary>Counts for one field of the random corpus.</summary>
public sealed class FieldCount
{
    /// <summary>Values that the sheets print.</summary>
    public int Printed { get; set; }

    /// <summary>Values that were drafted.</summary>
    public int Drafted { get; set; }

    /// <summary>Drafted values that are right.</summary>
    public int Right { get; set; }

    /// <summary>Right values that a reviewer is asked to look at all the same.</summary>
    public int Doubted { get; set; }

    /// <summary>Wrong values that nothing marks.</summary>
    public int WrongUnmarked { get; set; }

    /// <summary>Missing values of which nothing is said.</summary>
    public int MissingUnsaid { get; set; }

    public double Precision => Drafted == 0 ? 1 : (double)Right / Drafted;

    public double Recall => Printed == 0 ? 1 : (double)Right / Printed;
}
