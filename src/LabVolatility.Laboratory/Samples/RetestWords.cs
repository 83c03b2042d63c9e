namespace LabVolatility.Laboratory.Samples;

/// <summary>Occasions and steps of the tree in words.</summary>
public static class RetestWords
{
    public static string Of(RetestOccasion occasion) => occasion switch
    {
        RetestOccasion.SampleVoid => "a movement of the tank made the sample void",
        RetestOccasion.DuplicatesDiffer => "duplicates differ by more than r",
        RetestOccasion.LevelsDiffer => "levels differ by more than the precision",
        RetestOccasion.PartyDiffers => "another party's result differs",
        RetestOccasion.DoesNotConform => "the outcome does not conform",
        RetestOccasion.NotDecided => "the outcome is not decided",
        _ => throw new ArgumentOutOfRangeException(nameof(occasion), occasion, "No such occasion."),
    };

    /// <summary>A kind of step, for a list to pick from.</summary>
    public static string Of(RetestKind kind) => kind switch
    {
        RetestKind.MoreContainers => "test more sealed containers",
        RetestKind.Resample => "resample at the same levels",
        RetestKind.MixAndResample => "mix the tank and resample",
        RetestKind.ThirdLaboratory => "ask a third laboratory",
        RetestKind.HoldAndCall => "hold and call the quality manager",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such step."),
    };

    /// <summary>A step with its number of containers: "test 2 more sealed containers".</summary>
    public static string Of(RetestStep step) => step.Kind != RetestKind.MoreContainers
        ? Of(step.Kind)
        : $"test {step.Containers} more sealed container{(step.Containers == 1 ? "" : "s")}";
}
