namespace Chandlery.Core.Declared;

/// <summary>How the front and the legal panel come together.</summary>
public enum DesignForm
{
    /// <summary>One label: the front on the left, the legal panel on the right.</summary>
    One,

    /// <summary>Two labels of the same size: a front and a back.</summary>
    Pair,

    /// <summary>A band around the vessel that holds both.</summary>
    Wrap,
}
