using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Setup;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Reference data as a context has read them: asked of the database once, until the context changes them.</summary>
internal sealed class ReadOnce
{
    private readonly Dictionary<Type, object> _read = [];

    public async Task<T> GetAsync<T>(Func<Task<T>> read)
        where T : class
    {
        if (_read.TryGetValue(typeof(T), out var known))
            return (T)known;
        var found = await read();
        _read[typeof(T)] = found;
        return found;
    }

    public void Forget() => _read.Clear();

    /// <summary>Forgets everything where one of the saved things is reference data.</summary>
    public void ForgetIfChanged(IEnumerable<EntityEntry> saved)
    {
        if (saved.Any(e => e.Entity is LaboratorySettings or LaboratoryArea or LaboratoryLimit or FactConfirmation or PrecisionEntry))
            Forget();
    }
}
