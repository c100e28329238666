namespace Chandlery.Core.Law;

/// <summary>What kind of label an edition asks for.</summary>
public enum LabelKind
{
    /// <summary>CLP, with its supplemental statements and small-package relief.</summary>
    Clp,

    /// <summary>The elements of the GHS.</summary>
    Ghs,

    /// <summary>A consumer product that carries no GHS label; its classification is for the workplace.</summary>
    Consumer,
}
