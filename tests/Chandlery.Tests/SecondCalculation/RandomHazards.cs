namespace Chandlery.Tests.SecondCalculation;

/// <summary>Gives a substance random classes, with every kind of specific limit, M-factor and estimate that suppliers declare.</summary>
internal sealed class RandomHazards(Dice dice)
{
    private static readonly double[] Lows = [0.001, 0.01, 0.05, 0.1, 0.2, 0.3, 0.5, 1, 2];
    private static readonly double[] Middles = [0.5, 1, 2, 3, 5, 10, 20, 25];

    private static readonly (string Code, double[] Turns)[] Alone =
    [
        ("Muta. 1A, H340", [0.1]),
        ("Muta. 1B, H340", [0.1]),
        ("Muta. 2, H341", [1]),
        ("Carc. 1A, H350", [0.1]),
        ("Carc. 1B, H350", [0.1]),
        ("Carc. 2, H351", [0.1, 1]),
        ("Repr. 1A, H360", [0.3]),
        ("Repr. 1B, H360", [0.1, 0.3]),
        ("Repr. 1B, H360D", [0.3]),
        ("Repr. 1B, H360FD", [0.3]),
        ("Repr. 1B, H360Fd", [0.3]),
        ("Repr. 2, H361", [0.1, 3]),
        ("Repr. 2, H361d", [3]),
        ("Repr. 2, H361f", [3]),
        ("Lact., H362", [0.1, 0.3]),
        ("STOT SE 2, H371", [1, 10]),
        ("STOT RE 2, H373", [1, 10]),
        ("ED HH 1, EUH380", [0.1]),
        ("ED HH 2, EUH381", [1]),
        ("ED ENV 1, EUH430", [0.1]),
        ("ED ENV 2, EUH431", [1]),
        ("Ozone 1, H420", [0.1]),
    ];

    /// <summary>Adds one random hazard, unless one of its kind is already there.</summary>
    public void AddTo(SubstanceDraft draft)
    {
        switch (dice.Below(12))
        {
            case 0 or 1:
                AddSkin(draft);
                break;
            case 2:
                AddEye(draft);
                break;
            case 3 or 4:
                AddSensitiser(draft, dice.Falls(0.75) ? "Skin Sens." : "Resp. Sens.");
                break;
            case 5:
                AddAlone(draft);
                break;
            case 6:
                AddOrgan(draft);
                break;
            case 7 or 8:
                AddAcute(draft);
                break;
            case 9:
                AddWhatMattersInLiquids(draft);
                break;
            default:
                AddAquatic(draft);
                break;
        }
    }

    private void AddSkin(SubstanceDraft draft)
    {
        if (Has(draft, "Skin Corr.") || Has(draft, "Skin Irrit."))
        {
            return;
        }

        if (dice.Falls(0.4))
        {
            // Category 3 as on sheets written for other places.
            bool mild = dice.Falls(0.15);
            draft.Classes.Add(mild ? "Skin Irrit. 3, H316" : "Skin Irrit. 2, H315");
            draft.Turns.AddRange([1, 10]);
            if (!mild && dice.Falls(0.3))
            {
                Limit(draft, "Skin Irrit. 2, H315", dice.Pick(Middles));
            }

            return;
        }

        string category = dice.Pick(["1", "1A", "1A", "1B", "1B", "1C"]);
        draft.Classes.Add($"Skin Corr. {category}, H314");
        draft.Turns.AddRange([1, 3, 5]);
        if (dice.Falls(0.5))
        {
            AddGraduatedSkinLimits(draft, category);
        }

        if (dice.Falls(0.4))
        {
            AddEyeLimits(draft);
        }
    }

    /// <summary>From irritant to corrosive in two to four steps, in any order; or one step alone; or for the whole category.</summary>
    private void AddGraduatedSkinLimits(SubstanceDraft draft, string category)
    {
        double corrosive = dice.Pick([0.5, 1, 2, 5, 10, 25]);
        List<string> steps = category == "1A" ? ["1A", "1B", "1C"] : [category];
        List<(string Code, double From)> limits = [];
        double from = corrosive * (steps.Count > 1 && dice.Falls(0.6) ? 4 : 1);
        foreach (string step in steps.Take(from > corrosive ? 1 + dice.Below(3) : 1))
        {
            limits.Add(($"Skin Corr. {(limits.Count == 0 && dice.Falls(0.15) ? "1" : step)}, H314", from));
            from /= 2;
        }

        if (dice.Falls(0.7))
        {
            limits.Add(("Skin Irrit. 2, H315", limits[^1].From / dice.Pick([2, 5, 10])));
        }

        AddSteps(draft, limits);
    }

    private void AddEye(SubstanceDraft draft)
    {
        if (Has(draft, "Eye"))
        {
            return;
        }

        if (dice.Falls(0.5))
        {
            draft.Classes.Add("Eye Dam. 1, H318");
            draft.Turns.AddRange([1, 3]);
            if (dice.Falls(0.4) && !HasLimit(draft, "Eye"))
            {
                AddEyeLimits(draft);
            }
        }
        else if (!Has(draft, "Skin Corr."))
        {
            // 2A and 2B as on sheets written for other places.
            string code = dice.Pick(["Eye Irrit. 2, H319", "Eye Irrit. 2, H319", "Eye Irrit. 2A, H319", "Eye Irrit. 2B, H320"]);
            draft.Classes.Add(code);
            draft.Turns.AddRange([1, 10]);
            if (dice.Falls(0.3))
            {
                // Limits are the Union's, which has no letters here.
                Limit(draft, "Eye Irrit. 2, H319", dice.Pick(Middles));
            }
        }
    }

    private void AddEyeLimits(SubstanceDraft draft)
    {
        double damage = dice.Pick(Middles);
        List<(string, double)> steps = [("Eye Dam. 1, H318", damage), ("Eye Irrit. 2, H319", damage / dice.Pick([2, 3, 5, 10]))];
        AddSteps(draft, dice.Falls(0.6) ? steps : [dice.Pick(steps)]);
    }

    private void AddSensitiser(SubstanceDraft draft, string hazardClass)
    {
        if (Has(draft, hazardClass))
        {
            return;
        }

        string category = dice.Pick(["1", "1A", "1B", "1B"]);
        string statement = hazardClass == "Skin Sens." ? "H317" : "H334";
        draft.Classes.Add($"{hazardClass} {category}, {statement}");
        draft.Turns.AddRange(category == "1A" ? [0.01, 0.1] : [0.1, 1]);
        if (dice.Falls(0.4))
        {
            double from = dice.Pick(dice.Falls(0.7) ? Lows : Middles);
            Limit(draft, $"{hazardClass} {(dice.Falls(0.3) ? "1" : category)}, {statement}", from);
            draft.Turns.Add(from / 10);
        }
    }

    private void AddAlone(SubstanceDraft draft)
    {
        if (dice.Falls(0.25))
        {
            string[] codes = dice.Pick<string[]>([
                ["PBT, EUH440"],
                ["vPvB, EUH441"],
                ["PBT, EUH440", "vPvB, EUH441"],
                ["PMT, EUH450"],
                ["PMT, EUH450", "vPvM, EUH451"],
            ]);
            draft.Classes.AddRange(codes.Where(c => !draft.Classes.Contains(c)));
            draft.Turns.Add(0.1);
            return;
        }

        (string code, double[] turns) = dice.Pick(Alone);
        if (Has(draft, HazardText.Read(code).Class))
        {
            return;
        }

        draft.Classes.Add(code);
        draft.Turns.AddRange(turns);
        if (dice.Falls(0.25))
        {
            Limit(draft, code, dice.Pick(dice.Falls(0.5) ? Lows : Middles));
        }
    }

    private void AddOrgan(SubstanceDraft draft)
    {
        if (dice.Falls(0.6))
        {
            string code = dice.Pick(["STOT SE 3, H335", "STOT SE 3, H336"]);
            if (draft.Classes.Contains(code) || HasLimit(draft, code))
            {
                return;
            }

            bool limit = dice.Falls(0.35);

            // A limit without the class is how Annex VI lists formaldehyde (605-001-00-5).
            if (!limit || dice.Falls(0.8))
            {
                draft.Classes.Add(code);
            }

            draft.Turns.AddRange([1, 20]);
            if (limit)
            {
                Limit(draft, code, dice.Pick([0.5, 1, 5, 10, 25]));
            }

            return;
        }

        (string hazardClass, string worse, string milder) = dice.Pick([("STOT SE", "H370", "H371"), ("STOT RE", "H372", "H373")]);
        if (draft.Classes.Exists(c => c.StartsWith(hazardClass, StringComparison.Ordinal)))
        {
            return;
        }

        draft.Classes.Add($"{hazardClass} 1, {worse}");
        draft.Turns.AddRange([1, 10]);
        if (dice.Falls(0.4))
        {
            double from = dice.Pick(Middles);
            List<(string, double)> steps =
            [
                ($"{hazardClass} 1, {worse}", from),
                ($"{hazardClass} 2, {milder}", from / dice.Pick([2, 5, 10])),
            ];
            AddSteps(draft, dice.Falls(0.6) ? steps : [dice.Pick(steps)]);
        }
    }

    private void AddAcute(SubstanceDraft draft)
    {
        AcuteRoute route = dice.Pick([AcuteRoute.All[0], AcuteRoute.All[1], AcuteRoute.All[2], AcuteRoute.All[2]]);
        if (
            draft.Classes.Exists(c => route.Statements.Any(s => c.EndsWith(s, StringComparison.Ordinal)))
            || draft.Estimates.Exists(e => route.Forms.Contains(e.Form))
        )
        {
            return;
        }

        int category = 1 + dice.Below(route.Forms.Length > 1 || dice.Falls(0.8) ? 4 : 5);
        if (dice.Falls(0.85))
        {
            draft.Classes.Add($"Acute Tox. {category}, {route.Statements[Math.Max(0, category - 2)]}");
        }

        foreach (GivenForm form in route.Forms.Where(_ => dice.Falls(route.Forms.Length > 1 ? 0.3 : 0.5)))
        {
            draft.Estimates.Add(new GivenEstimate(form, Estimate(AcuteScale.Of(form, SecondEdition.Ghs), category)));
        }

        draft.Turns.AddRange([0.1, 1, 10]);
    }

    /// <summary>Mostly within the category; sometimes exactly on its upper bound, a hair beside it, or in another category.</summary>
    private double Estimate(AcuteScale scale, int category)
    {
        double upper = scale.Upper[category - 1];
        return Rounded(
            dice.Below(5) switch
            {
                0 => upper,
                1 => upper * dice.Pick([0.999, 1.001]),
                2 => upper * dice.Logarithmic(0.05, 20),
                _ => upper * dice.Logarithmic(0.2, 1),
            }
        );
    }

    private void AddAquatic(SubstanceDraft draft)
    {
        if (Has(draft, "Aquatic Acute") || Has(draft, "Aquatic Chronic"))
        {
            return;
        }

        if (dice.Falls(0.1))
        {
            draft.Classes.Add(dice.Pick(["Aquatic Acute 2, H401", "Aquatic Acute 3, H402"]));
            draft.Turns.AddRange([1, 2.5, 25]);
            return;
        }

        int kind = dice.Below(4);
        double acute = M();
        double chronic = M();
        if (kind is 0 or 1)
        {
            draft.Classes.Add("Aquatic Acute 1, H400");
            draft.AcuteM = dice.Falls(0.75) ? acute : null;
            draft.Turns.AddRange([0.1 / acute, 25 / acute, 2.5 / acute, 0.25 / acute]);
        }

        if (kind is 1 or 2)
        {
            draft.Classes.Add("Aquatic Chronic 1, H410");
            draft.ChronicM = dice.Falls(0.75) ? chronic : null;
            draft.Turns.AddRange([0.1 / chronic, 25 / chronic, 2.5 / chronic, 0.25 / chronic]);
        }
        else
        {
            int category = 2 + dice.Below(3);
            draft.Classes.Add($"Aquatic Chronic {category}, H41{category - 1}");
            draft.Turns.AddRange([1, 2.5, 25]);
        }
    }

    /// <summary>In a solid they come to nothing.</summary>
    private void AddWhatMattersInLiquids(SubstanceDraft draft)
    {
        if (dice.Falls(0.7) && !Has(draft, "Asp. Tox."))
        {
            draft.Classes.Add("Asp. Tox. 1, H304");
            draft.Turns.AddRange([1, 5, 10]);
        }

        if (dice.Falls(0.5) && !Has(draft, "Flam. Liq."))
        {
            draft.Classes.Add(dice.Pick(["Flam. Liq. 2, H225", "Flam. Liq. 3, H226"]));
        }
    }

    private double M() => dice.Pick<double>([1, 1, 1, 10, 10, 100, 1000, 10000]);

    private void AddSteps(SubstanceDraft draft, IReadOnlyList<(string Code, double From)> fromWorst)
    {
        bool ranges = dice.Falls(0.7);
        IEnumerable<(string Code, double From, double? Below)> limits = fromWorst.Select(
            (l, i) => (l.Code, Rounded(l.From), ranges && i > 0 ? (double?)Rounded(fromWorst[i - 1].From) : null)
        );
        foreach ((string code, double from, double? below) in dice.Shuffle(limits))
        {
            draft.Limits.Add(new GivenLimit(code, from, below));
            draft.Turns.Add(from);
        }
    }

    private static void Limit(SubstanceDraft draft, string code, double from)
    {
        draft.Limits.Add(new GivenLimit(code, from, null));
        draft.Turns.Add(from);
    }

    private static bool Has(SubstanceDraft draft, string start) => draft.Classes.Exists(c => c.StartsWith(start, StringComparison.Ordinal));

    private static bool HasLimit(SubstanceDraft draft, string start) =>
        draft.Limits.Exists(l => l.Category.StartsWith(start, StringComparison.Ordinal));

    // Figures as a sheet would print them: short decimals, so that a share may lie on a limit exactly.
    private static double Rounded(double value) => (double)Math.Round((decimal)value, value < 0.01 ? 8 : 4);
}
