namespace LabVolatility.Laboratory.Certificates;

/// <summary>The stages of loading in words.</summary>
public static class LoadingStages
{
    public static IReadOnlyList<LoadingStage> All { get; } = Enum.GetValues<LoadingStage>();

    public static string Text(LoadingStage stage) => stage switch
    {
        LoadingStage.BeforeLoading => "before loading",
        LoadingStage.AfterLoading => "after loading",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No such stage."),
    };
}
