namespace LabVolatility.Laboratory.Certificates;

/// <summary>Whether the shore tanks were certified before or after they were loaded from.</summary>
public enum LoadingStage
{
    BeforeLoading,
    AfterLoading,
}
