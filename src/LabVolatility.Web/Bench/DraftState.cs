namespace LabVolatility.Web.Bench;

/// <summary>Whether what was typed is on the server.</summary>
public enum DraftState
{
    None,
    Saving,
    Saved,
    NotSaved,
}
