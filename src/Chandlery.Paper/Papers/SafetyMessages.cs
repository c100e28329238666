namespace Chandlery.Paper.Papers;

/// <summary>The signs that stand beside messages on safe use.</summary>
internal static class SafetyMessages
{
    /// <summary>The sign of a message, or of a word of a law's own warning.</summary>
    public static string SignOf(string key) =>
        key switch
        {
            "trimWicks" => "trimWick",
            "votiveHolder" => "holder",
            "holderHot" => "hotVessel",
            "fireOpen" => "fire",
            "meltChildren" or "liquidChildren" => "outOfReach",
            "meltNoFlame" => "noMatch",
            "meltFood" => "noFood",
            "meltWaste" or "liquidDrain" => "noDrain",
            "meltBurnt" => "coolBurn",
            "liquidFlames" => "noFire",
            "liquidHands" => "washHands",
            "liquidAir" => "airRoom",
            "liquidSpilt" => "wipeUp",
            "liquidSwallowed" => "callForHelp",
            "liquidEyes" => "rinseEyes",
            "astmSight" => "attended",
            "astmFire" => "flammable",
            "astmChildren" => "childrenAndPets",
            _ => key,
        };
}
