using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Setup;

internal sealed class CounterConfiguration : IEntityTypeConfiguration<Counter>
{
    public void Configure(EntityTypeBuilder<Counter> counter)
    {
        counter.ToTable("counters");
        counter.HasKey(c => c.Name);
        counter.Property(c => c.Name).HasMaxLength(Lengths.Name);
    }
}
