namespace Chandlery.Core.Declared;

/// <summary>Where a candle's label stands.</summary>
public enum LabelPlace
{
    /// <summary>On the vessel itself.</summary>
    OnVessel,

    /// <summary>On a tag tied to the vessel, which is too small or too oddly shaped for it.</summary>
    OnTag,

    /// <summary>On an outer package.</summary>
    OnOuterPackage,
}
