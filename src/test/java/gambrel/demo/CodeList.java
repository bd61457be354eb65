package gambrel.demo;

/** What the operators key: hundreds by kind of work, the shop's own numbers. */
final class CodeList {
  private static final String RAIL_AND_BLOCK =
      """
      code,item,step,description,tare,tare_each,nominal
      101,liver,pack,Liver,,,
      102,heart,pack,Heart,,,
      103,kidney,pack,Kidneys,,,
      104,tongue,pack,Tongue,,,
      105,tail,pack,Ox tail,,,
      106,cheek,pack,Cheeks,,,
      201,hindquarter,block,Hindquarter to the block,,,
      202,rump,block,Rump to the block,,,
      203,striploin,block,Striploin to the block,,,
      204,forequarter,block,Forequarter to the block,,,
      """;

  private static final String BEEF =
      """
      301,topside-roast,pack,Topside roast,,,
      302,schnitzel,pack,Schnitzel,,,
      303,silverside-roast,pack,Silverside roast,,,
      304,corned-silverside,pack,Silverside for corning,,,
      305,eye-round-roast,pack,Eye round roast,,,
      306,thick-flank-steak,pack,Round steak,,,
      308,rump-steak,pack,Rump steak,,,
      309,striploin-steak,pack,Porterhouse steak,,,
      310,tenderloin-steak,pack,Eye fillet steak,,,
      311,flank-steak,pack,Flank steak,,,
      312,thick-skirt,pack,Thick skirt,,,
      313,thin-skirt,pack,Thin skirt,,,
      314,shin-shank-meat,pack,Gravy beef,,,
      315,t-bone,pack,T-bone steak,,,
      316,rib-eye-bone-in,pack,Rib eye bone in,,,
      317,osso-bucco,pack,Osso bucco,,,
      320,cube-roll-steak,pack,Scotch fillet steak,,,
      321,short-ribs,pack,Short ribs,,,
      322,chuck-steak,pack,Chuck steak,,,
      323,blade-roast,pack,Blade roast,,,
      324,oyster-blade-steak,pack,Oyster blade steak,,,
      325,bolar-blade-roast,pack,Bolar roast,,,
      327,brisket-roll,pack,Rolled brisket,,,
      328,stewing-dice,pack,Diced,,,
      329,dog-bones,pack,Dog bones,,,
      330,stock-bones,pack,Stock bones,,,
      341,topside,pack,Topside whole,,,
      342,silverside,pack,Silverside whole,,,
      343,thick-flank,pack,Round whole,,,
      344,rump,pack,Rump whole,,,
      345,striploin,pack,Striploin whole,,,
      346,tenderloin,pack,Eye fillet whole,,,
      347,cube-roll,pack,Scotch fillet whole,,,
      348,brisket,pack,Brisket whole,,,
      349,blade,pack,Blade whole,,,
      350,chuck,pack,Chuck whole,,,
      360,rump-trim,pack,Rump trimmings,,,
      361,striploin-trim,pack,Striploin trimmings,,,
      362,rump-fat,bin,Rump fat and gristle,,,
      363,striploin-fat,bin,Striploin fat and gristle,,,
      """;

  private static final String SMALL_STOCK =
      """
      401,leg-chump-off,pack,Leg,,,
      402,chump-chop,pack,Chump chops,,,
      403,loin-chop,pack,Loin chops,,,
      404,cutlet,pack,Cutlets,,,
      406,shoulder-square-cut,pack,Shoulder,,,
      407,forequarter-chop,pack,Forequarter chops,,,
      408,shank,pack,Shanks,,,
      409,neck-chop,pack,Neck chops,,,
      410,breast-rolled,pack,Rolled breast,,,
      411,curry-pieces,pack,Curry pieces,,,
      501,leg-roast,pack,Pork leg roast,,,
      502,loin-chop,pack,Pork loin chops,,,
      503,loin-boneless,pack,Pork loin rolled,,,
      504,belly-slices,pack,Pork belly slices,,,
      505,spare-ribs,pack,Pork spare ribs,,,
      506,collar-butt-steak,pack,Pork scotch steaks,,,
      507,shoulder-roast,pack,Pork shoulder roast,,,
      508,tenderloin,pack,Pork fillet,,,
      509,hock,pack,Hocks,,,
      510,trotters,pack,Trotters,,,
      601,haunch-boneless,pack,Haunch boned and rolled,,,
      602,backstrap,pack,Backstrap,,,
      603,shoulder-dice,pack,Diced shoulder,,,
      604,shank,pack,Shanks game,,,
      """;

  private static final String THE_REST =
      """
      701,mince,pack,Mince,,,
      71*,sausages,pack,Sausages,,,
      721,ham,pack,Smoked ham,,,
      722,streaky-bacon,pack,Smoked bacon,,,
      801,bone,bin,Bone bin,2.40,,
      802,fat,bin,Fat bin,2.40,,
      803,waste,bin,Waste bin,2.40,,
      804,kidney-fat,bin,Kidney fat bin,2.40,,
      805,condemned,bin,Bruise cut off,,,
      806,rind,bin,Rind bin,2.40,,
      851,trim,tub,Mince tub,1.60,,
      852,sausage-trim,tub,Sausage tub,1.60,,
      853,leg,tub,Leg into brine,2.40,,
      854,belly,tub,Belly into cure,1.60,,
      861,,added,Rice flour and spices,,,
      862,,added,Water and ice,,,
      863,,added,Brine,,,
      910,carcase,hot,Carcase hot,,,
      911,side,hot,Side hot,,,
      912,left-side,hot,Left side hot,,,
      913,right-side,hot,Right side hot,,,
      920,carcase,cold,Carcase cold,,,
      921,side,cold,Side cold,,,
      922,left-side,cold,Left side cold,,,
      923,right-side,cold,Right side cold,,,
      931,side,aged,Side before cutting,,,
      932,left-side,aged,Left side before cutting,,,
      933,right-side,aged,Right side before cutting,,,
      934,hindquarter,aged,Hindquarter before cutting,,,
      935,forequarter,aged,Forequarter before cutting,,,
      980,,other,Carton total,,,
      991,,test,Test weight 5 kg,,,5
      992,,test,Test weight 20 kg,,,20
      """;

  private CodeList() {}

  /** {@code codes.csv}. */
  static String text() {
    return RAIL_AND_BLOCK + BEEF + SMALL_STOCK + THE_REST;
  }
}
