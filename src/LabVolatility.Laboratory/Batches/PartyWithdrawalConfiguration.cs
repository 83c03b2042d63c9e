using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class PartyWithdrawalConfiguration : IEntityTypeConfiguration<PartyWithdrawal>
{
    public void Configure(EntityTypeBuilder<PartyWithdrawal> withdrawal)
    {
        withdrawal.ToTable("party_withdrawals");
        withdrawal.HasKey(w => w.PartyResultId);
        withdrawal.Property(w => w.PartyResultId).ValueGeneratedNever();
        withdrawal.Property(w => w.ByName).HasMaxLength(Lengths.Name);
        withdrawal.Property(w => w.Reason).HasMaxLength(Lengths.Note);
        withdrawal.HasOne<PartyResult>().WithMany().HasForeignKey(w => w.PartyResultId);
        withdrawal.HasOne<Person>().WithMany().HasForeignKey(w => w.By);
    }
}
