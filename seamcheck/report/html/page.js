"use strict";(()=>{var V0="http://www.w3.org/2000/svg";function ff(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return Co(i,e),i}function Co(i,t){for(let e of t)e!=null&&(Array.isArray(e)?Co(i,e):i.append(e instanceof Node?e:String(e)))}function $t(i,t=null,...e){return ff(document.createElement(i),t,e)}function gt(i,t=null,...e){return ff(document.createElementNS(V0,i),t,e)}function pe(i){return document.getElementById(i)}function en(i){for(;i.lastChild;)i.lastChild.remove()}var Q=i=>String(Math.round(i*100)/100);function rn(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function Po(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var pf=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;var Io={decimal:".",inch:!1,texts:{}},G0={mm:[25.4,"in",2],"mm²":[25.4**2,"in²",3],"mm³":[25.4**3,"in³",4],"mm/s":[25.4,"in/s",1]};function mf(i){i&&(Io=i)}function vt(i,t={}){return(Io.texts[i]??i).replace(/\{(\w+)\}/g,(e,n)=>n in t?String(t[n]):e)}function ss(i,t,e){let n=Io.inch?G0[t]:void 0;return n?[i/n[0],n[1],Math.min(e+n[2],Math.max(4,n[2]))]:[i,t,e]}function gi(i,t){let e=i.toFixed(t);return(Number(e)===0?e.replace("-",""):e).replace(".",Io.decimal)}function Rs(i,t){let[e,,n]=ss(i,"mm",t);return gi(e,n)}var Ks=()=>ss(0,"mm",0)[1],_i=(i,t)=>`${Rs(i,t)} ${Ks()}`,Ei=()=>Io.inch?25.4:1;function gf(i,t){let[e,n,s]=ss(i,"mm²",t);return`${gi(e,s)} ${n}`}function Ph(i){let t={};for(let e of i.querySelectorAll("[data-key]"))t[e.dataset.key]=e.value.trim();return t}var H0=i=>Object.values(i).some(t=>t!=="");function W0(i){let t=[...document.querySelectorAll("[data-answer]")].flatMap(s=>{let r=i.findings.find(a=>String(a.n)===s.dataset.answer),o=Ph(s);return H0(o)?[{id:r.id,rule:r.rule,place:r.place??{},...o}]:[]}),e=[...document.querySelectorAll("[data-question]")].map(s=>({key:s.dataset.question,...Ph(s)})),n=[...document.querySelectorAll("[data-role]")].map(s=>({role:s.dataset.role,...Ph(s)}));return{document:"seamcheck-answers",schema_version:1,model:i.model,findings:t,questions:e.filter(s=>s.answer),approval:n.filter(s=>s.name||s.decision)}}function _f(i){pe("save-answers")?.addEventListener("click",()=>{let t=JSON.stringify(W0(i),null,1),e=document.createElement("a");e.href=URL.createObjectURL(new Blob([t],{type:"application/json"})),e.download=`${i.model.file.replace(/\.[^.]*$/,"").replace(/[^A-Za-z0-9._-]+/g,"-")||"review"}-answers.json`,e.click(),URL.revokeObjectURL(e.href),pe("saved").textContent=vt("Saved as {file}.",{file:e.download})})}var X0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function ka(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function xf(i){let t=ka(i);if(!X0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}function Ba(i){let t=new Uint8Array(ka(i)),e=t.length/3,n=new Int32Array(e);for(let s=0;s<e;s++)n[s]=(t[3*s]|t[3*s+1]<<8|t[3*s+2]<<16)<<8>>8;return n}function Ih(i,t){for(let e=t;e<i.length;e++)i[e]=i[e-t]+i[e]<<8>>8;return i}var yf=(i,t)=>Float32Array.from(i,e=>e*t),Pr=class{offsets;segments;owner;slopes;shade;others;row=new Map;step;constructor(t){this.offsets=new Uint32Array(xf(t.offsets)),this.segments=yf(Ba(t.segments),t.step),this.owner=new Uint8Array(ka(t.owner)),this.slopes=t.slope?[...new Float32Array(xf(t.slope))]:t.stations.map(()=>0),this.shade=(t.shade??[]).map(([e,n,s,r,o,a,l,c,h])=>({station:e,low:n,high:s,share:r,u:o,v:a,along:l,part:c,leans:h})),this.others=t.others??[],t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}slope(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.slopes[n]}return 0}shadeAt(t){return this.shade.filter(e=>e.station===t)}ownerOf(t){let e=this.others.indexOf(t);return e<0?void 0:e+2}partOf(t){return this.others[t-2]??null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function vf(i){return{part:i.part,positions:yf(Ih(Ba(i.positions),3),i.step),triangles:new Uint32Array(Ih(Ba(i.triangles),1)),face:Ih(Ba(i.face),1),leftOut:i.left_out??0}}var Mf=i=>$0(i);async function $0(i){let t=new Blob([ka(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var za=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":ss(0,e,0)[1]}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=this.payload.quantities[e],[s,,r]=ss(t,n?.unit??"",n?.decimals??3);return gi(s,r)}value(t,e){if(t==null||!Number.isFinite(t))return vt("not measured");if(e.startsWith("trap_open"))return t?vt("open"):vt("closed");let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:l}=o;if(a<=l?s>=a-1e-6&&s<=l+1e-6:s>=a-1e-6||s<=l+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},Ir={"must-fix":"◆",attention:"▲",note:"○"},Va=i=>i.length>1?`${i[0].n}+${i.length-1}`:String(i[0].n);function Cs(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var Ga=class{constructor(t){this.payload=t;this.words=new za(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new Pr(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(vf),this.unpacked}};var q0="uplot",Y0="u-hz",Z0="u-vt",J0="u-title",j0="u-wrap",K0="u-under",Q0="u-over",t_="u-axis",er="u-off",e_="u-select",n_="u-cursor-x",i_="u-cursor-y",s_="u-cursor-pt",r_="u-legend",o_="u-live",a_="u-inline",l_="u-series",c_="u-marker",bf="u-label",h_="u-value",Do="width",No="height";var Sf="bottom",Lr="left",Lh="right",Zh="#000",wf=Zh+"0",Dh="mousemove",Ef="mousedown",Nh="mouseup",Tf="mouseenter",Af="mouseleave",Rf="dblclick",u_="resize",d_="scroll",Cf="change",qa="dppxchange",Jh="--",kr=typeof window<"u",kh=kr?document:null,Nr=kr?window:null,f_=kr?navigator:null,Te,Ha;function zh(){let i=devicePixelRatio;Te!=i&&(Te=i,Ha&&Gh(Cf,Ha,zh),Ha=matchMedia(`(min-resolution: ${Te-.001}dppx) and (max-resolution: ${Te+.001}dppx)`),nr(Cf,Ha,zh),Nr.dispatchEvent(new CustomEvent(qa)))}function si(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function Vh(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function He(i,t,e){i.style[t]=e+"px"}function Ti(i,t,e,n){let s=kh.createElement(i);return t!=null&&si(s,t),e?.insertBefore(s,n),s}function xi(i,t){return Ti("div",i,t)}var Pf=new WeakMap;function $i(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=Pf.get(i);r!=o&&(i.style.transform=r,Pf.set(i,r),t<0||e<0||t>n||e>s?si(i,er):Vh(i,er))}var If=new WeakMap;function Lf(i,t,e){let n=t+e,s=If.get(i);n!=s&&(If.set(i,n),i.style.background=t,i.style.borderColor=e)}var Df=new WeakMap;function Nf(i,t,e,n){let s=t+""+e,r=Df.get(i);s!=r&&(Df.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var jh={passive:!0},p_={...jh,capture:!0};function nr(i,t,e,n){t.addEventListener(i,e,n?p_:jh)}function Gh(i,t,e,n){t.removeEventListener(i,e,jh)}kr&&zh();function Ai(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ri((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function lp(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var cp=i=>i!=null,hp=i=>i!=null&&i>0,Ja=lp(cp),m_=lp(hp);function g_(i,t,e,n=0,s=!1){let r=s?m_:Ja,o=s?hp:cp;[t,e]=r(i,t,e);let a=i[t],l=i[t];if(t>-1)if(n==1)a=i[t],l=i[e];else if(n==-1)a=i[e],l=i[t];else for(let c=t;c<=e;c++){let h=i[c];o(h)&&(h<a?a=h:h>l&&(l=h))}return[a??Fe,l??-Fe]}function ja(i,t,e,n){let s=Of(i),r=Of(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?rs:up,a=s==1?ri:yi,l=r==1?yi:ri,c=a(o(_n(i))),h=l(o(_n(t))),u=Ur(e,c),d=Ur(e,h);return e==10&&(c<0&&(u=Oe(u,-c)),h<0&&(d=Oe(d,-h))),n||e==2?(i=u*s,t=d*r):(i=mp(i,u),t=Ka(t,d)),[i,t]}function Kh(i,t,e,n){let s=ja(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Qh=.1,Uf={mode:3,pad:Qh},Fo={pad:0,soft:null,mode:0},__={min:Fo,max:Fo};function Ya(i,t,e,n){return Qa(e)?Ff(i,t,e):(Fo.pad=e,Fo.soft=n?0:null,Fo.mode=n?3:0,Ff(i,t,__))}function we(i,t){return i??t}function x_(i,t,e){for(t=we(t,0),e=we(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function Ff(i,t,e){let n=e.min,s=e.max,r=we(n.pad,0),o=we(s.pad,0),a=we(n.hard,-Fe),l=we(s.hard,Fe),c=we(n.soft,Fe),h=we(s.soft,-Fe),u=we(n.mode,0),d=we(s.mode,0),f=t-i,g=rs(f),_=$n(_n(i),_n(t)),m=rs(_),p=_n(m-g);(f<1e-24||p>10)&&(f=0,(i==0||t==0)&&(f=1e-24,u==2&&c!=Fe&&(r=0),d==2&&h!=-Fe&&(o=0)));let x=f||_||1e3,T=rs(x),M=Ur(10,ri(T)),R=x*(f==0?i==0?.1:1:r),w=Oe(mp(i-R,M/10),24),y=i>=c&&(u==1||u==3&&w<=c||u==2&&w>=c)?c:Fe,b=$n(a,w<y&&i>=y?y:Ri(y,w)),F=x*(f==0?t==0?.1:1:o),D=Oe(Ka(t+F,M/10),24),C=t<=h&&(d==1||d==3&&D>=h||d==2&&D<=h)?h:-Fe,O=Ri(l,D>C&&t<=C?C:$n(C,D));return b==O&&b==0&&(O=100),[b,O]}var y_=new Intl.NumberFormat(kr?f_.language:"en-US"),tu=i=>y_.format(i),oi=Math,$a=oi.PI,_n=oi.abs,ri=oi.floor,gn=oi.round,yi=oi.ceil,Ri=oi.min,$n=oi.max,Ur=oi.pow,Of=oi.sign,rs=oi.log10,up=oi.log2,v_=(i,t=1)=>oi.sinh(i)*t,Uh=(i,t=1)=>oi.asinh(i/t),Fe=1/0;function Bf(i){return(rs((i^i>>31)-(i>>31))|0)+1}function Hh(i,t,e){return Ri($n(i,t),e)}function dp(i){return typeof i=="function"}function ve(i){return dp(i)?i:()=>i}var M_=()=>{},fp=i=>i,pp=(i,t)=>t,b_=i=>null,kf=i=>!0,zf=(i,t)=>i==t,S_=/\.\d*?(?=9{6,}|0{6,})/gm,ir=i=>{if(_p(i)||Is.has(i))return i;let t=`${i}`,e=t.match(S_);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${ir(s)}e${r}`}return Oe(i,n)};function Qs(i,t){return ir(Oe(ir(i/t))*t)}function Ka(i,t){return ir(yi(ir(i/t))*t)}function mp(i,t){return ir(ri(ir(i/t))*t)}function Oe(i,t=0){if(_p(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return gn(n)/e}var Is=new Map;function gp(i){return((""+i).split(".")[1]||"").length}function Bo(i,t,e,n){let s=[],r=n.map(gp);for(let o=t;o<e;o++){let a=_n(o),l=Oe(Ur(i,o),a);for(let c=0;c<n.length;c++){let h=i==10?+`${n[c]}e${o}`:n[c]*l,u=(o>=0?0:a)+(o>=r[c]?0:r[c]),d=i==10?h:Oe(h,u);s.push(d),Is.set(d,u)}}return s}var Oo={},eu=[],Fr=[null,null],Ps=Array.isArray,_p=Number.isInteger,w_=i=>i===void 0;function Vf(i){return typeof i=="string"}function Qa(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function E_(i){return i!=null&&typeof i=="object"}var T_=Object.getPrototypeOf(Uint8Array),xp="__proto__";function Or(i,t=Qa){let e;if(Ps(i)){let n=i.find(s=>s!=null);if(Ps(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Or(i[s],t)}else e=i.slice()}else if(i instanceof T_)e=i.slice();else if(t(i)){e={};for(let n in i)n!=xp&&(e[n]=Or(i[n],t))}else e=i;return e}function dn(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=xp&&(Qa(i[s])?dn(i[s],Or(n[s])):i[s]=Or(n[s]))}return i}var A_=0,R_=1,C_=2;function P_(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function I_(i,t){if(N_(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return U_(o[0])||(o=D_(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let l=i[o][0],c=l.length;for(let h=0;h<c;h++)e.add(l[h])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],l=a[0];for(let c=1;c<a.length;c++){let h=a[c],u=Array(s).fill(void 0),d=t?t[o][c]:R_,f=[];for(let g=0;g<h.length;g++){let _=h[g],m=r.get(l[g]);_===null?d!=A_&&(u[m]=_,d==C_&&f.push(m)):u[m]=_}P_(u,f,s),n.push(u)}}return n}var L_=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function D_(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let l=0;l<e;l++)a[l]=o[n[l]];s.push(a)}return s}function N_(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function U_(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=$n(1,ri((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let l=i[a];if(l!=null){if(l<=o)return!1;o=l}}return!0}var yp=["January","February","March","April","May","June","July","August","September","October","November","December"],vp=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Mp(i){return i.slice(0,3)}var F_=vp.map(Mp),O_=yp.map(Mp),B_={MMMM:yp,MMM:O_,WWWW:vp,WWW:F_};function Lo(i){return(i<10?"0":"")+i}function k_(i){return(i<10?"00":i<100?"0":"")+i}var z_={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>Lo(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>Lo(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>Lo(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>Lo(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>Lo(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>k_(i.getMilliseconds())};function nu(i,t){t=t||B_;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?z_[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var V_=new Intl.DateTimeFormat().resolvedOptions().timeZone;function G_(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==V_?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var bp=i=>i%1==0,Za=[1,2,2.5,5],H_=Bo(10,-32,0,Za),Sp=Bo(10,0,32,Za),W_=Sp.filter(bp),tr=H_.concat(Sp),iu=`
`,wp="{YYYY}",Gf=iu+wp,Ep="{M}/{D}",Uo=iu+Ep,Wa=Uo+"/{YY}",Tp="{aa}",X_="{h}:{mm}",Dr=X_+Tp,Hf=iu+Dr,Wf=":{ss}",Re=null;function Ap(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,l=(i==1?Bo(10,0,3,Za).filter(bp):Bo(10,-3,0,Za)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),c=[[o,wp,Re,Re,Re,Re,Re,Re,1],[s*28,"{MMM}",Gf,Re,Re,Re,Re,Re,1],[s,Ep,Gf,Re,Re,Re,Re,Re,1],[n,"{h}"+Tp,Wa,Re,Uo,Re,Re,Re,1],[e,Dr,Wa,Re,Uo,Re,Re,Re,1],[t,Wf,Wa+" "+Dr,Re,Uo+" "+Dr,Re,Hf,Re,1],[i,Wf+".{fff}",Wa+" "+Dr,Re,Uo+" "+Dr,Re,Hf,Re,1]];function h(u){return(d,f,g,_,m,p)=>{let x=[],T=m>=o,M=m>=r&&m<o,R=u(g),w=Oe(R*i,3),y=Fh(R.getFullYear(),T?0:R.getMonth(),M||T?1:R.getDate()),b=Oe(y*i,3);if(M||T){let F=M?m/r:0,D=T?m/o:0,C=w==b?w:Oe(Fh(y.getFullYear()+D,y.getMonth()+F,1)*i,3),O=new Date(gn(C/i)),U=O.getFullYear(),P=O.getMonth();for(let B=0;C<=_;B++){let $=Fh(U+D*B,P+F*B,1),V=$-u(Oe($*i,3));C=Oe((+$+V)*i,3),C<=_&&x.push(C)}}else{let F=m>=s?s:m,D=ri(g)-ri(w),C=b+D+Ka(w-b,F);x.push(C);let O=u(C),U=O.getHours()+O.getMinutes()/e+O.getSeconds()/n,P=m/n,B=d.axes[f]._space,$=p/B;for(;C=Oe(C+m,i==1?0:3),!(C>_);)if(P>1){let V=ri(Oe(U+P,6))%24,Y=u(C).getHours()-V;Y>1&&(Y=-1),C-=Y*n,U=(U+P)%24;let tt=x[x.length-1];Oe((C-tt)/m,3)*$>=.7&&x.push(C)}else x.push(C)}return x}}return[l,c,h]}var[$_,q_,Y_]=Ap(1),[Z_,J_,j_]=Ap(.001);Bo(2,-53,53,[1]);function Xf(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function $f(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],l,c,h,u,d,f;return n.map(g=>{let _=i(g),m=_.getFullYear(),p=_.getMonth(),x=_.getDate(),T=_.getHours(),M=_.getMinutes(),R=_.getSeconds(),w=m!=l&&a[2]||p!=c&&a[3]||x!=h&&a[4]||T!=u&&a[5]||M!=d&&a[6]||R!=f&&a[7]||a[1];return l=m,c=p,h=x,u=T,d=M,f=R,w(_)})}}function K_(i,t){let e=nu(t);return(n,s,r,o,a)=>s.map(l=>e(i(l)))}function Fh(i,t,e){return new Date(i,t,e)}function qf(i,t){return t(i)}var Q_="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function Yf(i,t){return(e,n,s,r)=>r==null?Jh:t(i(n))}function tx(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function ex(i,t){return i.series[t].fill(i,t)}var nx={show:!0,live:!0,isolate:!1,mount:M_,markers:{show:!0,width:2,stroke:tx,fill:ex,dash:"solid"},idx:null,idxs:null,values:[]};function ix(i,t){let e=i.cursor.points,n=xi(),s=e.size(i,t);He(n,Do,s),He(n,No,s);let r=s/-2;He(n,"marginLeft",r),He(n,"marginTop",r);let o=e.width(i,t,s);return o&&He(n,"borderWidth",o),n}function sx(i,t){let e=i.series[t].points;return e._fill||e._stroke}function rx(i,t){let e=i.series[t].points;return e._stroke||e._fill}function ox(i,t){return i.series[t].points.size}var Oh=[0,0];function ax(i,t,e){return Oh[0]=t,Oh[1]=e,Oh}function Xa(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function Bh(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var lx={show:!0,x:!0,y:!0,lock:!1,move:ax,points:{one:!1,show:ix,size:ox,width:0,stroke:rx,fill:sx},bind:{mousedown:Xa,mouseup:Xa,click:Xa,dblclick:Xa,mousemove:Bh,mouseleave:Bh,mouseenter:Bh},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Rp={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},su=dn({},Rp,{filter:pp}),Cp=dn({},su,{size:10}),Pp=dn({},Rp,{show:!1}),ru='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',Ip="bold "+ru,Lp=1.5,Zf={show:!0,scale:"x",stroke:Zh,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Ip,side:2,grid:su,ticks:Cp,border:Pp,font:ru,lineGap:Lp,rotate:0},cx="Value",hx="Time",Jf={show:!0,scale:"x",auto:!1,sorted:1,min:Fe,max:-Fe,idxs:[]};function ux(i,t,e,n,s){return t.map(r=>r==null?"":tu(r))}function dx(i,t,e,n,s,r,o){let a=[],l=Is.get(s)||0;e=o?e:Oe(Ka(e,s),l);for(let c=e;c<=n;c=Oe(c+s,l))a.push(Object.is(c,-0)?0:c);return a}function Wh(i,t,e,n,s,r,o){let a=[],l=i.scales[i.axes[t].scale].log,c=l==10?rs:up,h=ri(c(e));s=Ur(l,h),l==10&&(s=tr[Ai(s,tr)]);let u=e,d=s*l;l==10&&(d=tr[Ai(d,tr)]);do a.push(u),u=u+s,l==10&&!Is.has(u)&&(u=Oe(u,Is.get(s))),u>=d&&(s=u,d=s*l,l==10&&(d=tr[Ai(d,tr)]));while(u<=n);return a}function fx(i,t,e,n,s,r,o){let l=i.scales[i.axes[t].scale].asinh,c=n>l?Wh(i,t,$n(l,e),n,s):[l],h=n>=0&&e<=0?[0]:[];return(e<-l?Wh(i,t,$n(l,-n),-e,s):[l]).reverse().map(d=>-d).concat(h,c)}var Dp=/./,px=/[12357]/,mx=/[125]/,jf=/1/,Xh=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function gx(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],l=i.valToPos,c=r._space,h=l(10,o),u=l(9,o)-h>=c?Dp:l(7,o)-h>=c?px:l(5,o)-h>=c?mx:jf;if(u==jf){let d=_n(l(1,o)-h);if(d<c)return Xh(t.slice().reverse(),a.distr,u,yi(c/d)).reverse()}return Xh(t,a.distr,u,1)}function _x(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,l=i.valToPos,c=_n(l(1,o)-l(2,o));return c<a?Xh(t.slice().reverse(),3,Dp,yi(a/c)).reverse():t}function xx(i,t,e,n){return n==null?Jh:t==null?"":tu(t)}var Kf={show:!0,scale:"y",stroke:Zh,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Ip,side:3,grid:su,ticks:Cp,border:Pp,font:ru,lineGap:Lp,rotate:0};function yx(i,t){let e=3+(i||1)*2;return Oe(e*t,3)}function vx(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=_n(o-r),l=i.series[t],c=a/(l.points.space*Te);return n[1]-n[0]<=c}var Qf={scale:null,auto:!0,sorted:0,min:Fe,max:-Fe},Np=(i,t,e,n,s)=>s,tp={show:!0,auto:!0,sorted:0,gaps:Np,alpha:1,facets:[dn({},Qf,{scale:"x"}),dn({},Qf,{scale:"y"})]},ep={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:Np,alpha:1,points:{show:vx,filter:null},values:null,min:Fe,max:-Fe,idxs:[],path:null,clip:null};function Mx(i,t,e,n,s){return e/10}var Up={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},bx=dn({},Up,{time:!1,ori:1}),np={};function Fp(i,t){let e=np[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,l,c){for(let h=0;h<e.plots.length;h++)e.plots[h]!=s&&e.plots[h].pub(n,s,r,o,a,l,c)}},i!=null&&(np[i]=e)),e}var Br=1,$h=2;function sr(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,l=r[0],c=n==2?r[1]:r[t],h=n==2?o[s.facets[0].scale]:o[i.series[0].scale],u=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,_=a.height,m=i.valToPosH,p=i.valToPosV;return h.ori==0?e(s,l,c,h,u,m,p,d,f,g,_,el,zr,il,Bp,zp):e(s,l,c,h,u,p,m,f,d,_,g,nl,Vr,lu,kp,Vp)}function ou(i,t){let e=0,n=0,s=we(i.bands,eu);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function Sx(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,l=i.scales[a];return s==-1?l.min:s==1?l.max:l.distr==3?l.dir==1?l.min:l.max:0}function os(i,t,e,n,s,r){return sr(i,t,(o,a,l,c,h,u,d,f,g,_,m)=>{let p=o.pxRound,x=c.dir*(c.ori==0?1:-1),T=c.ori==0?zr:Vr,M,R;x==1?(M=e,R=n):(M=n,R=e);let w=p(u(a[M],c,_,f)),y=p(d(l[M],h,m,g)),b=p(u(a[R],c,_,f)),F=p(d(r==1?h.max:h.min,h,m,g)),D=new Path2D(s);return T(D,b,F),T(D,w,F),T(D,w,y),D})}function tl(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?il:lu,l=e;for(let u=0;u<i.length;u++){let d=i[u];if(d[1]>d[0]){let f=d[0]-l;f>0&&a(o,l,n,f,n+r),l=d[1]}}let c=e+s-l,h=10;c>0&&a(o,l,n-h/2,c,n+r+h)}return o}function wx(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function au(i,t,e,n,s,r,o){let a=[],l=i.length;for(let c=s==1?e:n;c>=e&&c<=n;c+=s)if(t[c]===null){let u=c,d=c;if(s==1)for(;++c<=n&&t[c]===null;)d=c;else for(;--c>=e&&t[c]===null;)d=c;let f=r(i[u]),g=d==u?f:r(i[d]),_=u-s;f=o<=0&&_>=0&&_<l?r(i[_]):f;let p=d+s;g=o>=0&&p>=0&&p<l?r(i[p]):g,g>=f&&a.push([f,g])}return a}function ip(i){return i==0?fp:i==1?gn:t=>Qs(t,i)}function Op(i){let t=i==0?el:nl,e=i==0?(s,r,o,a,l,c)=>{s.arcTo(r,o,a,l,c)}:(s,r,o,a,l,c)=>{s.arcTo(o,r,l,a,c)},n=i==0?(s,r,o,a,l)=>{s.rect(r,o,a,l)}:(s,r,o,a,l)=>{s.rect(o,r,l,a)};return(s,r,o,a,l,c=0,h=0)=>{c==0&&h==0?n(s,r,o,a,l):(c=Ri(c,a/2,l/2),h=Ri(h,a/2,l/2),t(s,r+c,o),e(s,r+a,o,r+a,o+l,c),e(s,r+a,o+l,r,o+l,h),e(s,r,o+l,r,o,h),e(s,r,o,r+a,o,c),s.closePath())}}var el=(i,t,e)=>{i.moveTo(t,e)},nl=(i,t,e)=>{i.moveTo(e,t)},zr=(i,t,e)=>{i.lineTo(t,e)},Vr=(i,t,e)=>{i.lineTo(e,t)},il=Op(0),lu=Op(1),Bp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},kp=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},zp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},Vp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function Gp(i){return(t,e,n,s,r)=>sr(t,e,(o,a,l,c,h,u,d,f,g,_,m)=>{let{pxRound:p,points:x}=o,T,M;c.ori==0?(T=el,M=Bp):(T=nl,M=kp);let R=Oe(x.width*Te,3),w=(x.size-x.width)/2*Te,y=Oe(w*2,3),b=new Path2D,F=new Path2D,{left:D,top:C,width:O,height:U}=t.bbox;il(F,D-y,C-y,O+y*2,U+y*2);let P=B=>{if(l[B]!=null){let $=p(u(a[B],c,_,f)),V=p(d(l[B],h,m,g));T(b,$+w,V),M(b,$,V,w,0,$a*2)}};if(r)r.forEach(P);else for(let B=n;B<=s;B++)P(B);return{stroke:R>0?b:null,fill:b,clip:F,flags:Br|$h}})}function Hp(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var Ex=Hp(zr),Tx=Hp(Vr);function Wp(i){let t=we(i?.alignGaps,0);return(e,n,s,r)=>sr(e,n,(o,a,l,c,h,u,d,f,g,_,m)=>{[s,r]=Ja(l,s,r);let p=o.pxRound,x=U=>p(u(U,c,_,f)),T=U=>p(d(U,h,m,g)),M,R;c.ori==0?(M=zr,R=Ex):(M=Vr,R=Tx);let w=c.dir*(c.ori==0?1:-1),y={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Br},b=y.stroke,F=!1;if(r-s>=_*4){let U=at=>e.posToVal(at,c.key,!0),P=null,B=null,$,V,ot,X=x(a[w==1?s:r]),Y=x(a[s]),tt=x(a[r]),nt=U(w==1?Y+1:tt-1);for(let at=w==1?s:r;at>=s&&at<=r;at+=w){let J=a[at],ct=(w==1?J<nt:J>nt)?X:x(J),pt=l[at];ct==X?pt!=null?(V=pt,P==null?(M(b,ct,T(V)),$=P=B=V):V<P?P=V:V>B&&(B=V)):pt===null&&(F=!0):(P!=null&&R(b,X,T(P),T(B),T($),T(V)),pt!=null?(V=pt,M(b,ct,T(V)),P=B=$=V):(P=B=null,pt===null&&(F=!0)),X=ct,nt=U(X+w))}P!=null&&P!=B&&ot!=X&&R(b,X,T(P),T(B),T($),T(V))}else for(let U=w==1?s:r;U>=s&&U<=r;U+=w){let P=l[U];P===null?F=!0:P!=null&&M(b,x(a[U]),T(P))}let[C,O]=ou(e,n);if(o.fill!=null||C!=0){let U=y.fill=new Path2D(b),P=o.fillTo(e,n,o.min,o.max,C),B=T(P),$=x(a[s]),V=x(a[r]);w==-1&&([V,$]=[$,V]),M(U,V,B),M(U,$,B)}if(!o.spanGaps){let U=[];F&&U.push(...au(a,l,s,r,w,x,t)),y.gaps=U=o.gaps(e,n,s,r,U),y.clip=tl(U,c.ori,f,g,_,m)}return O!=0&&(y.band=O==2?[os(e,n,s,r,b,-1),os(e,n,s,r,b,1)]:os(e,n,s,r,b,O)),y})}function Ax(i){let t=we(i.align,1),e=we(i.ascDesc,!1),n=we(i.alignGaps,0),s=we(i.extend,!1);return(r,o,a,l)=>sr(r,o,(c,h,u,d,f,g,_,m,p,x,T)=>{[a,l]=Ja(u,a,l);let M=c.pxRound,{left:R,width:w}=r.bbox,y=Y=>M(g(Y,d,x,m)),b=Y=>M(_(Y,f,T,p)),F=d.ori==0?zr:Vr,D={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Br},C=D.stroke,O=d.dir*(d.ori==0?1:-1),U=b(u[O==1?a:l]),P=y(h[O==1?a:l]),B=P,$=P;s&&t==-1&&($=R,F(C,$,U)),F(C,P,U);for(let Y=O==1?a:l;Y>=a&&Y<=l;Y+=O){let tt=u[Y];if(tt==null)continue;let nt=y(h[Y]),at=b(tt);t==1?F(C,nt,U):F(C,B,at),F(C,nt,at),U=at,B=nt}let V=B;s&&t==1&&(V=R+w,F(C,V,U));let[ot,X]=ou(r,o);if(c.fill!=null||ot!=0){let Y=D.fill=new Path2D(C),tt=c.fillTo(r,o,c.min,c.max,ot),nt=b(tt);F(Y,V,nt),F(Y,$,nt)}if(!c.spanGaps){let Y=[];Y.push(...au(h,u,a,l,O,y,n));let tt=c.width*Te/2,nt=e||t==1?tt:-tt,at=e||t==-1?-tt:tt;Y.forEach(J=>{J[0]+=nt,J[1]+=at}),D.gaps=Y=c.gaps(r,o,a,l,Y),D.clip=tl(Y,d.ori,m,p,x,T)}return X!=0&&(D.band=X==2?[os(r,o,a,l,C,-1),os(r,o,a,l,C,1)]:os(r,o,a,l,C,X)),D})}function sp(i,t,e,n,s,r,o=Fe){if(i.length>1){let a=null;for(let l=0,c=1/0;l<i.length;l++)if(t[l]!==void 0){if(a!=null){let h=_n(i[l]-i[a]);h<c&&(c=h,o=_n(e(i[l],n,s,r)-e(i[a],n,s,r)))}a=l}}return o}function Rx(i){i=i||Oo;let t=we(i.size,[.6,Fe,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=ve(s),o=1-t[0],a=we(t[1],Fe),l=we(t[2],1),c=we(i.disp,Oo),h=we(i.each,f=>{}),{fill:u,stroke:d}=c;return(f,g,_,m)=>sr(f,g,(p,x,T,M,R,w,y,b,F,D,C)=>{let O=p.pxRound,U=e,P=n*Te,B=a*Te,$=l*Te,V,ot;M.ori==0?[V,ot]=r(f,g):[ot,V]=r(f,g);let X=M.dir*(M.ori==0?1:-1),Y=M.ori==0?il:lu,tt=M.ori==0?h:(It,Jt,le,Tt,Ue,Ht,Yt)=>{h(It,Jt,le,Ue,Tt,Yt,Ht)},nt=we(f.bands,eu).find(It=>It.series[0]==g),at=nt!=null?nt.dir:0,J=p.fillTo(f,g,p.min,p.max,at),mt=O(y(J,R,C,F)),ct,pt,xt,Wt=D,Kt=O(p.width*Te),Gt=!1,fe=null,he=null,re=null,$e=null;u!=null&&(Kt==0||d!=null)&&(Gt=!0,fe=u.values(f,g,_,m),he=new Map,new Set(fe).forEach(It=>{It!=null&&he.set(It,new Path2D)}),Kt>0&&(re=d.values(f,g,_,m),$e=new Map,new Set(re).forEach(It=>{It!=null&&$e.set(It,new Path2D)})));let{x0:Be,size:on}=c;if(Be!=null&&on!=null){U=1,x=Be.values(f,g,_,m),Be.unit==2&&(x=x.map(le=>f.posToVal(b+le*D,M.key,!0)));let It=on.values(f,g,_,m);on.unit==2?pt=It[0]*D:pt=w(It[0],M,D,b)-w(0,M,D,b),Wt=sp(x,T,w,M,D,b,Wt),xt=Wt-pt+P}else Wt=sp(x,T,w,M,D,b,Wt),xt=Wt*o+P,pt=Wt-xt;xt<1&&(xt=0),Kt>=pt/2&&(Kt=0),xt<5&&(O=fp);let De=xt>0,Mn=Wt-xt-(De?Kt:0);pt=O(Hh(Mn,$,B)),ct=(U==0?pt/2:U==X?0:pt)-U*X*((U==0?P/2:0)+(De?Kt/2:0));let be={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},pn=Gt?null:new Path2D,Je=null;if(nt!=null)Je=f.data[nt.series[1]];else{let{y0:It,y1:Jt}=c;It!=null&&Jt!=null&&(T=Jt.values(f,g,_,m),Je=It.values(f,g,_,m))}let an=V*pt,z=ot*pt;for(let It=X==1?_:m;It>=_&&It<=m;It+=X){let Jt=T[It];if(Jt==null)continue;if(Je!=null){let q=Je[It]??0;if(Jt-q==0)continue;mt=y(q,R,C,F)}let le=M.distr!=2||c!=null?x[It]:It,Tt=w(le,M,D,b),Ue=y(we(Jt,J),R,C,F),Ht=O(Tt-ct),Yt=O($n(Ue,mt)),I=O(Ri(Ue,mt)),S=Yt-I;if(Jt!=null){let q=Jt<0?z:an,ft=Jt<0?an:z;Gt?(Kt>0&&re[It]!=null&&Y($e.get(re[It]),Ht,I+ri(Kt/2),pt,$n(0,S-Kt),q,ft),fe[It]!=null&&Y(he.get(fe[It]),Ht,I+ri(Kt/2),pt,$n(0,S-Kt),q,ft)):Y(pn,Ht,I+ri(Kt/2),pt,$n(0,S-Kt),q,ft),tt(f,g,It,Ht-Kt/2,I,pt+Kt,S)}}return Kt>0?be.stroke=Gt?$e:pn:Gt||(be._fill=p.width==0?p._fill:p._stroke??p._fill,be.width=0),be.fill=Gt?he:pn,be})}function Cx(i,t){let e=we(t?.alignGaps,0);return(n,s,r,o)=>sr(n,s,(a,l,c,h,u,d,f,g,_,m,p)=>{[r,o]=Ja(c,r,o);let x=a.pxRound,T=V=>x(d(V,h,m,g)),M=V=>x(f(V,u,p,_)),R,w,y;h.ori==0?(R=el,y=zr,w=zp):(R=nl,y=Vr,w=Vp);let b=h.dir*(h.ori==0?1:-1),F=T(l[b==1?r:o]),D=F,C=[],O=[];for(let V=b==1?r:o;V>=r&&V<=o;V+=b)if(c[V]!=null){let X=l[V],Y=T(X);C.push(D=Y),O.push(M(c[V]))}let U={stroke:i(C,O,R,y,w,x),fill:null,clip:null,band:null,gaps:null,flags:Br},P=U.stroke,[B,$]=ou(n,s);if(a.fill!=null||B!=0){let V=U.fill=new Path2D(P),ot=a.fillTo(n,s,a.min,a.max,B),X=M(ot);y(V,D,X),y(V,F,X)}if(!a.spanGaps){let V=[];V.push(...au(l,c,r,o,b,T,e)),U.gaps=V=a.gaps(n,s,r,o,V),U.clip=tl(V,h.ori,g,_,m,p)}return $!=0&&(U.band=$==2?[os(n,s,r,o,P,-1),os(n,s,r,o,P,1)]:os(n,s,r,o,P,$)),U})}function Px(i){return Cx(Ix,i)}function Ix(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let l=Array(o),c=Array(o-1),h=Array(o-1),u=Array(o-1);for(let d=0;d<o-1;d++)h[d]=t[d+1]-t[d],u[d]=i[d+1]-i[d],c[d]=h[d]/u[d];l[0]=c[0];for(let d=1;d<o-1;d++)c[d]===0||c[d-1]===0||c[d-1]>0!=c[d]>0?l[d]=0:(l[d]=3*(u[d-1]+u[d])/((2*u[d]+u[d-1])/c[d-1]+(u[d]+2*u[d-1])/c[d]),isFinite(l[d])||(l[d]=0));l[o-1]=c[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+u[d]/3,t[d]+l[d]*u[d]/3,i[d+1]-u[d]/3,t[d+1]-l[d+1]*u[d]/3,i[d+1],t[d+1])}return a}var qh=new Set;function rp(){for(let i of qh)i.syncRect(!0)}kr&&(nr(u_,Nr,rp),nr(d_,Nr,rp,!0),nr(qa,Nr,()=>{Tn.pxRatio=Te}));var Lx=Wp(),Dx=Gp();function op(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Yh(r,o,t,e))}function Nx(i,t){return i.map((e,n)=>n==0?{}:dn({},t,e))}function Yh(i,t,e,n){return dn({},t==0?e:n,i)}function Xp(i,t,e){return t==null?Fr:[t,e]}var Ux=Xp;function Fx(i,t,e){return t==null?Fr:Ya(t,e,Qh,!0)}function $p(i,t,e,n){return t==null?Fr:ja(t,e,i.scales[n].log,!1)}var Ox=$p;function qp(i,t,e,n){return t==null?Fr:Kh(t,e,i.scales[n].log,!1)}var Bx=qp;function kx(i,t,e,n,s){let r=$n(Bf(i),Bf(t)),o=t-i,a=Ai(s/n*o,e);do{let l=e[a],c=n*l/o;if(c>=s&&r+(l<5?Is.get(l):0)<=17)return[l,c]}while(++a<e.length);return[0,0]}function ap(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=gn((e=+s)*Te))+"px"),[i,t,e]}function zx(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=Oe(t[2]*Te,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function Tn(i,t,e){let n={mode:we(i.mode,1)},s=n.mode;function r(v,E,L,N){let H=E.valToPct(v);return N+L*(E.dir==-1?1-H:H)}function o(v,E,L,N){let H=E.valToPct(v);return N+L*(E.dir==-1?H:1-H)}function a(v,E,L,N){return E.ori==0?r(v,E,L,N):o(v,E,L,N)}n.valToPosH=r,n.valToPosV=o;let l=!1;n.status=0;let c=n.root=xi(q0);if(i.id!=null&&(c.id=i.id),si(c,i.class),i.title){let v=xi(J0,c);v.textContent=i.title}let h=Ti("canvas"),u=n.ctx=h.getContext("2d"),d=xi(j0,c);nr("click",d,v=>{v.target===g&&(ze!=Er||qe!=Tr)&&Pn.click(n,v)},!0);let f=n.under=xi(K0,d);d.appendChild(h);let g=n.over=xi(Q0,d);i=Or(i);let _=+we(i.pxAlign,1),m=ip(_);(i.plugins||[]).forEach(v=>{v.opts&&(i=v.opts(n,i)||i)});let p=i.ms||.001,x=n.series=s==1?op(i.series||[],Jf,ep,!1):Nx(i.series||[null],tp),T=n.axes=op(i.axes||[],Zf,Kf,!0),M=n.scales={},R=n.bands=i.bands||[];R.forEach(v=>{v.fill=ve(v.fill||null),v.dir=we(v.dir,-1)});let w=s==2?x[1].facets[0].scale:x[0].scale,y={axes:ns,series:ge},b=(i.drawOrder||["axes","series"]).map(v=>y[v]);function F(v){let E=v.distr==3?L=>rs(L>0?L:v.clamp(n,L,v.min,v.max,v.key)):v.distr==4?L=>Uh(L,v.asinh):v.distr==100?L=>v.fwd(L):L=>L;return L=>{let N=E(L),{_min:H,_max:K}=v,ut=K-H;return(N-H)/ut}}function D(v){let E=M[v];if(E==null){let L=(i.scales||Oo)[v]||Oo;if(L.from!=null){D(L.from);let N=dn({},M[L.from],L,{key:v});N.valToPct=F(N),M[v]=N}else{E=M[v]=dn({},v==w?Up:bx,L),E.key=v;let N=E.time,H=E.range,K=Ps(H);if((v!=w||s==2&&!N)&&(K&&(H[0]==null||H[1]==null)&&(H={min:H[0]==null?Uf:{mode:1,hard:H[0],soft:H[0]},max:H[1]==null?Uf:{mode:1,hard:H[1],soft:H[1]}},K=!1),!K&&Qa(H))){let ut=H;H=(_t,wt,Ut)=>wt==null?Fr:Ya(wt,Ut,ut)}E.range=ve(H||(N?Ux:v==w?E.distr==3?Ox:E.distr==4?Bx:Xp:E.distr==3?$p:E.distr==4?qp:Fx)),E.auto=ve(K?!1:E.auto),E.clamp=ve(E.clamp||Mx),E._min=E._max=null,E.valToPct=F(E)}}}D("x"),D("y"),s==1&&x.forEach(v=>{D(v.scale)}),T.forEach(v=>{D(v.scale)});for(let v in i.scales)D(v);let C=M[w],O=C.distr,U,P;C.ori==0?(si(c,Y0),U=r,P=o):(si(c,Z0),U=o,P=r);let B={};for(let v in M){let E=M[v];(E.min!=null||E.max!=null)&&(B[v]={min:E.min,max:E.max},E.min=E.max=null)}let $=i.tzDate||(v=>new Date(gn(v/p))),V=i.fmtDate||nu,ot=p==1?Y_($):j_($),X=$f($,Xf(p==1?q_:J_,V)),Y=Yf($,qf(Q_,V)),tt=[],nt=n.legend=dn({},nx,i.legend),at=n.cursor=dn({},lx,{drag:{y:s==2}},i.cursor),J=nt.show,mt=at.show,ct=nt.markers;nt.idxs=tt,ct.width=ve(ct.width),ct.dash=ve(ct.dash),ct.stroke=ve(ct.stroke),ct.fill=ve(ct.fill);let pt,xt,Wt,Kt=[],Gt=[],fe,he=!1,re={};if(nt.live){let v=x[1]?x[1].values:null;he=v!=null,fe=he?v(n,1,0):{_:0};for(let E in fe)re[E]=Jh}if(J)if(pt=Ti("table",r_,c),Wt=Ti("tbody",null,pt),nt.mount(n,pt),he){xt=Ti("thead",null,pt,Wt);let v=Ti("tr",null,xt);Ti("th",null,v);for(var $e in fe)Ti("th",bf,v).textContent=$e}else si(pt,a_),nt.live&&si(pt,o_);let Be={show:!0},on={show:!1};function De(v,E){if(E==0&&(he||!nt.live||s==2))return Fr;let L=[],N=Ti("tr",l_,Wt,Wt.childNodes[E]);si(N,v.class),v.show||si(N,er);let H=Ti("th",null,N);if(ct.show){let _t=xi(c_,H);if(E>0){let wt=ct.width(n,E);wt&&(_t.style.border=wt+"px "+ct.dash(n,E)+" "+ct.stroke(n,E)),_t.style.background=ct.fill(n,E)}}let K=xi(bf,H);v.label instanceof HTMLElement?K.appendChild(v.label):K.textContent=v.label,E>0&&(ct.show||(K.style.color=v.width>0?ct.stroke(n,E):ct.fill(n,E)),be("click",H,_t=>{if(at._lock)return;Qt(_t);let wt=x.indexOf(v);if((_t.ctrlKey||_t.metaKey)!=nt.isolate){let Ut=x.some((Ft,Bt)=>Bt>0&&Bt!=wt&&Ft.show);x.forEach((Ft,Bt)=>{Bt>0&&Gi(Bt,Ut?Bt==wt?Be:on:Be,!0,un.setSeries)})}else Gi(wt,{show:!v.show},!0,un.setSeries)},!1),te&&be(Tf,H,_t=>{at._lock||(Qt(_t),Gi(x.indexOf(v),Rr,!0,un.setSeries))},!1));for(var ut in fe){let _t=Ti("td",h_,N);_t.textContent="--",L.push(_t)}return[N,L]}let Mn=new Map;function be(v,E,L,N=!0){let H=Mn.get(E)||{},K=at.bind[v](n,E,L,N);K&&(nr(v,E,H[v]=K),Mn.set(E,H))}function pn(v,E,L){let N=Mn.get(E)||{};for(let H in N)(v==null||H==v)&&(Gh(H,E,N[H]),delete N[H]);v==null&&Mn.delete(E)}let Je=0,an=0,z=0,It=0,Jt=0,le=0,Tt=Jt,Ue=le,Ht=z,Yt=It,I=0,S=0,q=0,ft=0;n.bbox={};let ht=!1,bt=!1,St=!1,it=!1,rt=!1,yt=!1;function k(v,E,L){(L||v!=n.width||E!=n.height)&&lt(v,E),ue(!1),St=!0,bt=!0,Nn()}function lt(v,E){n.width=Je=z=v,n.height=an=It=E,Jt=le=0,Et(),Xt();let L=n.bbox;I=L.left=Qs(Jt*Te,.5),S=L.top=Qs(le*Te,.5),q=L.width=Qs(z*Te,.5),ft=L.height=Qs(It*Te,.5)}let st=3;function At(){let v=!1,E=0;for(;!v;){E++;let L=br(E),N=Vi(E);v=E==st||L&&N,v||(lt(n.width,n.height),bt=!0)}}function Mt({width:v,height:E}){k(v,E)}n.setSize=Mt;function Et(){let v=!1,E=!1,L=!1,N=!1;T.forEach((H,K)=>{if(H.show&&H._show){let{side:ut,_size:_t}=H,wt=ut%2,Ut=H.label!=null?H.labelSize:0,Ft=_t+Ut;Ft>0&&(wt?(z-=Ft,ut==3?(Jt+=Ft,N=!0):L=!0):(It-=Ft,ut==0?(le+=Ft,v=!0):E=!0))}}),ki[0]=v,ki[1]=L,ki[2]=E,ki[3]=N,z-=bi[1]+bi[3],Jt+=bi[3],It-=bi[2]+bi[0],le+=bi[0]}function Xt(){let v=Jt+z,E=le+It,L=Jt,N=le;function H(K,ut){switch(K){case 1:return v+=ut,v-ut;case 2:return E+=ut,E-ut;case 3:return L-=ut,L+ut;case 0:return N-=ut,N+ut}}T.forEach((K,ut)=>{if(K.show&&K._show){let _t=K.side;K._pos=H(_t,K._size),K.label!=null&&(K._lpos=H(_t,K.labelSize))}})}if(at.dataIdx==null){let v=at.hover,E=v.skip=new Set(v.skip??[]);E.add(void 0);let L=v.prox=ve(v.prox),N=v.bias??=0;at.dataIdx=(H,K,ut,_t)=>{if(K==0)return ut;let wt=ut,Ut=L(H,K,ut,_t)??Fe,Ft=Ut>=0&&Ut<Fe,Bt=C.ori==0?z:It,oe=at.left,Ee=t[0],Se=t[K];if(E.has(Se[ut])){wt=null;let xe=null,jt=null,qt;if(N==0||N==-1)for(qt=ut;xe==null&&qt-- >0;)E.has(Se[qt])||(xe=qt);if(N==0||N==1)for(qt=ut;jt==null&&qt++<Se.length;)E.has(Se[qt])||(jt=qt);if(xe!=null||jt!=null)if(Ft){let Ge=xe==null?-1/0:U(Ee[xe],C,Bt,0),Qe=jt==null?1/0:U(Ee[jt],C,Bt,0),En=oe-Ge,Ne=Qe-oe;En<=Ne?En<=Ut&&(wt=xe):Ne<=Ut&&(wt=jt)}else wt=jt==null?xe:xe==null?jt:ut-xe<=jt-ut?xe:jt}else Ft&&_n(oe-U(Ee[ut],C,Bt,0))>Ut&&(wt=null);return wt}}let Qt=v=>{at.event=v};at.idxs=tt,at._lock=!1;let dt=at.points;dt.show=ve(dt.show),dt.size=ve(dt.size),dt.stroke=ve(dt.stroke),dt.width=ve(dt.width),dt.fill=ve(dt.fill);let kt=n.focus=dn({},i.focus||{alpha:.3},at.focus),te=kt.prox>=0,Pt=te&&dt.one,ce=[],ke=[],Vn=[];function Mo(v,E){let L=dt.show(n,E);if(L instanceof HTMLElement)return si(L,s_),si(L,v.class),$i(L,-10,-10,z,It),g.insertBefore(L,ce[E]),L}function yr(v,E){if(s==1||E>0){let L=s==1&&M[v.scale].time,N=v.value;v.value=L?Vf(N)?Yf($,qf(N,V)):N||Y:N||xx,v.label=v.label||(L?hx:cx)}if(Pt||E>0){v.width=v.width==null?1:v.width,v.paths=v.paths||Lx||b_,v.fillTo=ve(v.fillTo||Sx),v.pxAlign=+we(v.pxAlign,_),v.pxRound=ip(v.pxAlign),v.stroke=ve(v.stroke||null),v.fill=ve(v.fill||null),v._stroke=v._fill=v._paths=v._focus=null;let L=yx($n(1,v.width),1),N=v.points=dn({},{size:L,width:$n(1,L*.2),stroke:v.stroke,space:L*2,paths:Dx,_stroke:null,_fill:null},v.points);N.show=ve(N.show),N.filter=ve(N.filter),N.fill=ve(N.fill),N.stroke=ve(N.stroke),N.paths=ve(N.paths),N.pxAlign=v.pxAlign}if(J){let L=De(v,E);Kt.splice(E,0,L[0]),Gt.splice(E,0,L[1]),nt.values.push(null)}if(mt){tt.splice(E,0,null);let L=null;Pt?E==0&&(L=Mo(v,E)):E>0&&(L=Mo(v,E)),ce.splice(E,0,L),ke.splice(E,0,0),Vn.splice(E,0,0)}wn("addSeries",E)}function vh(v,E){E=E??x.length,v=s==1?Yh(v,E,Jf,ep):Yh(v,E,{},tp),x.splice(E,0,v),yr(x[E],E)}n.addSeries=vh;function Na(v){if(x.splice(v,1),J){nt.values.splice(v,1),Gt.splice(v,1);let E=Kt.splice(v,1)[0];pn(null,E.firstChild),E.remove()}mt&&(tt.splice(v,1),ce.splice(v,1)[0].remove(),ke.splice(v,1),Vn.splice(v,1)),wn("delSeries",v)}n.delSeries=Na;let ki=[!1,!1,!1,!1];function Qi(v,E){if(v._show=v.show,v.show){let L=v.side%2,N=M[v.scale];N==null&&(v.scale=L?x[1].scale:w,N=M[v.scale]);let H=N.time;v.size=ve(v.size),v.space=ve(v.space),v.rotate=ve(v.rotate),Ps(v.incrs)&&v.incrs.forEach(ut=>{!Is.has(ut)&&Is.set(ut,gp(ut))}),v.incrs=ve(v.incrs||(N.distr==2?W_:H?p==1?$_:Z_:tr)),v.splits=ve(v.splits||(H&&N.distr==1?ot:N.distr==3?Wh:N.distr==4?fx:dx)),v.stroke=ve(v.stroke),v.grid.stroke=ve(v.grid.stroke),v.ticks.stroke=ve(v.ticks.stroke),v.border.stroke=ve(v.border.stroke);let K=v.values;v.values=Ps(K)&&!Ps(K[0])?ve(K):H?Ps(K)?$f($,Xf(K,V)):Vf(K)?K_($,K):K||X:K||ux,v.filter=ve(v.filter||(N.distr>=3&&N.log==10?gx:N.distr==3&&N.log==2?_x:pp)),v.font=ap(v.font),v.labelFont=ap(v.labelFont),v._size=v.size(n,null,E,0),v._space=v._rotate=v._incrs=v._found=v._splits=v._values=null,v._size>0&&(ki[E]=!0,v._el=xi(t_,d))}}function ts(v,E,L,N){let[H,K,ut,_t]=L,wt=E%2,Ut=0;return wt==0&&(_t||K)&&(Ut=E==0&&!H||E==2&&!ut?gn(Zf.size/3):0),wt==1&&(H||ut)&&(Ut=E==1&&!K||E==3&&!_t?gn(Kf.size/2):0),Ut}let bo=n.padding=(i.padding||[ts,ts,ts,ts]).map(v=>ve(we(v,ts))),bi=n._padding=bo.map((v,E)=>v(n,E,ki,0)),je,nn=null,sn=null,zi=s==1?x[0].idxs:null,ti=null,bs=!1;function So(v,E){if(t=v??[],n.data=n._data=t,s==2){je=0;for(let L=1;L<x.length;L++)je+=t[L][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),ti=t[0],je=ti.length;let L=t;if(O==2){L=t.slice();let N=L[0]=Array(je);for(let H=0;H<je;H++)N[H]=H}n._data=t=L}if(ue(!0),wn("setData"),O==2&&(St=!0),E!==!1){let L=C;L.auto(n,bs)?wo():Es(w,L.min,L.max),it=it||at.left>=0,yt=!0,Nn()}}n.setData=So;function wo(){bs=!0;let v,E;s==1&&(je>0?(nn=zi[0]=0,sn=zi[1]=je-1,v=t[0][nn],E=t[0][sn],O==2?(v=nn,E=sn):v==E&&(O==3?[v,E]=ja(v,v,C.log,!1):O==4?[v,E]=Kh(v,v,C.log,!1):C.time?E=v+gn(86400/p):[v,E]=Ya(v,E,Qh,!0))):(nn=zi[0]=v=null,sn=zi[1]=E=null)),Es(w,v,E)}let vr,Ss,Mr,A,G,et,Z,j,Rt,Lt;function Ct(v,E,L,N,H,K){v??=wf,L??=eu,N??="butt",H??=wf,K??="round",v!=vr&&(u.strokeStyle=vr=v),H!=Ss&&(u.fillStyle=Ss=H),E!=Mr&&(u.lineWidth=Mr=E),K!=G&&(u.lineJoin=G=K),N!=et&&(u.lineCap=et=N),L!=A&&u.setLineDash(A=L)}function Dt(v,E,L,N){E!=Ss&&(u.fillStyle=Ss=E),v!=Z&&(u.font=Z=v),L!=j&&(u.textAlign=j=L),N!=Rt&&(u.textBaseline=Rt=N)}function Vt(v,E,L,N,H=0){if(N.length>0&&v.auto(n,bs)&&(E==null||E.min==null)){let K=we(nn,0),ut=we(sn,N.length-1),_t=L.min==null?g_(N,K,ut,H,v.distr==3):[L.min,L.max];v.min=Ri(v.min,L.min=_t[0]),v.max=$n(v.max,L.max=_t[1])}}let ee={min:null,max:null};function me(){for(let N in M){let H=M[N];B[N]==null&&(H.min==null||B[w]!=null&&H.auto(n,bs))&&(B[N]=ee)}for(let N in M){let H=M[N];B[N]==null&&H.from!=null&&B[H.from]!=null&&(B[N]=ee)}B[w]!=null&&ue(!0);let v={};for(let N in B){let H=B[N];if(H!=null){let K=v[N]=Or(M[N],E_);if(H.min!=null)dn(K,H);else if(N!=w||s==2)if(je==0&&K.from==null){let ut=K.range(n,null,null,N);K.min=ut[0],K.max=ut[1]}else K.min=Fe,K.max=-Fe}}if(je>0){x.forEach((N,H)=>{if(s==1){let K=N.scale,ut=B[K];if(ut==null)return;let _t=v[K];if(H==0){let wt=_t.range(n,_t.min,_t.max,K);_t.min=wt[0],_t.max=wt[1],nn=Ai(_t.min,t[0]),sn=Ai(_t.max,t[0]),sn-nn>1&&(t[0][nn]<_t.min&&nn++,t[0][sn]>_t.max&&sn--),N.min=ti[nn],N.max=ti[sn]}else N.show&&N.auto&&Vt(_t,ut,N,t[H],N.sorted);N.idxs[0]=nn,N.idxs[1]=sn}else if(H>0&&N.show&&N.auto){let[K,ut]=N.facets,_t=K.scale,wt=ut.scale,[Ut,Ft]=t[H],Bt=v[_t],oe=v[wt];Bt!=null&&Vt(Bt,B[_t],K,Ut,K.sorted),oe!=null&&Vt(oe,B[wt],ut,Ft,ut.sorted),N.min=ut.min,N.max=ut.max}});for(let N in v){let H=v[N],K=B[N];if(H.from==null&&(K==null||K.min==null)){let ut=H.range(n,H.min==Fe?null:H.min,H.max==-Fe?null:H.max,N);H.min=ut[0],H.max=ut[1]}}}for(let N in v){let H=v[N];if(H.from!=null){let K=v[H.from];if(K.min==null)H.min=H.max=null;else{let ut=H.range(n,K.min,K.max,N);H.min=ut[0],H.max=ut[1]}}}let E={},L=!1;for(let N in v){let H=v[N],K=M[N];if(K.min!=H.min||K.max!=H.max){K.min=H.min,K.max=H.max;let ut=K.distr;K._min=ut==3?rs(K.min):ut==4?Uh(K.min,K.asinh):ut==100?K.fwd(K.min):K.min,K._max=ut==3?rs(K.max):ut==4?Uh(K.max,K.asinh):ut==100?K.fwd(K.max):K.max,E[N]=L=!0}}if(L){x.forEach((N,H)=>{s==2?H>0&&E.y&&(N._paths=null):E[N.scale]&&(N._paths=null)});for(let N in E)St=!0,wn("setScale",N);mt&&at.left>=0&&(it=yt=!0)}for(let N in B)B[N]=null}function zt(v){let E=Hh(nn-1,0,je-1),L=Hh(sn+1,0,je-1);for(;v[E]==null&&E>0;)E--;for(;v[L]==null&&L<je-1;)L++;return[E,L]}function ge(){if(je>0){let v=x.some(E=>E._focus)&&Lt!=kt.alpha;v&&(u.globalAlpha=Lt=kt.alpha),x.forEach((E,L)=>{if(L>0&&E.show&&(Ze(L,!1),Ze(L,!0),E._paths==null)){let N=Lt;Lt!=E.alpha&&(u.globalAlpha=Lt=E.alpha);let H=s==2?[0,t[L][0].length-1]:zt(t[L]);E._paths=E.paths(n,L,H[0],H[1]),Lt!=N&&(u.globalAlpha=Lt=N)}}),x.forEach((E,L)=>{if(L>0&&E.show){let N=Lt;Lt!=E.alpha&&(u.globalAlpha=Lt=E.alpha),E._paths!=null&&Pe(L,!1);{let H=E._paths!=null?E._paths.gaps:null,K=E.points.show(n,L,nn,sn,H),ut=E.points.filter(n,L,K,H);(K||ut)&&(E.points._paths=E.points.paths(n,L,nn,sn,ut),Pe(L,!0))}Lt!=N&&(u.globalAlpha=Lt=N),wn("drawSeries",L)}}),v&&(u.globalAlpha=Lt=1)}}function Ze(v,E){let L=E?x[v].points:x[v];L._stroke=L.stroke(n,v),L._fill=L.fill(n,v)}function Pe(v,E){let L=E?x[v].points:x[v],{stroke:N,fill:H,clip:K,flags:ut,_stroke:_t=L._stroke,_fill:wt=L._fill,_width:Ut=L.width}=L._paths;Ut=Oe(Ut*Te,3);let Ft=null,Bt=Ut%2/2;E&&wt==null&&(wt=Ut>0?"#fff":_t);let oe=L.pxAlign==1&&Bt>0;if(oe&&u.translate(Bt,Bt),!E){let Ee=I-Ut/2,Se=S-Ut/2,xe=q+Ut,jt=ft+Ut;Ft=new Path2D,Ft.rect(Ee,Se,xe,jt)}E?Ot(_t,Ut,L.dash,L.cap,wt,N,H,ut,K):Ie(v,_t,Ut,L.dash,L.cap,wt,N,H,ut,Ft,K),oe&&u.translate(-Bt,-Bt)}function Ie(v,E,L,N,H,K,ut,_t,wt,Ut,Ft){let Bt=!1;wt!=0&&R.forEach((oe,Ee)=>{if(oe.series[0]==v){let Se=x[oe.series[1]],xe=t[oe.series[1]],jt=(Se._paths||Oo).band;Ps(jt)&&(jt=oe.dir==1?jt[0]:jt[1]);let qt,Ge=null;Se.show&&jt&&x_(xe,nn,sn)?(Ge=oe.fill(n,Ee)||K,qt=Se._paths.clip):jt=null,Ot(E,L,N,H,Ge,ut,_t,wt,Ut,Ft,qt,jt),Bt=!0}}),Bt||Ot(E,L,N,H,K,ut,_t,wt,Ut,Ft)}let mn=Br|$h;function Ot(v,E,L,N,H,K,ut,_t,wt,Ut,Ft,Bt){Ct(v,E,L,N,H),(wt||Ut||Bt)&&(u.save(),wt&&u.clip(wt),Ut&&u.clip(Ut)),Bt?(_t&mn)==mn?(u.clip(Bt),Ft&&u.clip(Ft),ye(H,ut),ln(v,K,E)):_t&$h?(ye(H,ut),u.clip(Bt),ln(v,K,E)):_t&Br&&(u.save(),u.clip(Bt),Ft&&u.clip(Ft),ye(H,ut),u.restore(),ln(v,K,E)):(ye(H,ut),ln(v,K,E)),(wt||Ut||Bt)&&u.restore()}function ln(v,E,L){L>0&&(E instanceof Map?E.forEach((N,H)=>{u.strokeStyle=vr=H,u.stroke(N)}):E!=null&&v&&u.stroke(E))}function ye(v,E){E instanceof Map?E.forEach((L,N)=>{u.fillStyle=Ss=N,u.fill(L)}):E!=null&&v&&u.fill(E)}function es(v,E,L,N){let H=T[v],K;if(N<=0)K=[0,0];else{let ut=H._space=H.space(n,v,E,L,N),_t=H._incrs=H.incrs(n,v,E,L,N,ut);K=kx(E,L,_t,N,ut)}return H._found=K}function cn(v,E,L,N,H,K,ut,_t,wt,Ut){let Ft=ut%2/2;_==1&&u.translate(Ft,Ft),Ct(_t,ut,wt,Ut,_t),u.beginPath();let Bt,oe,Ee,Se,xe=H+(N==0||N==3?-K:K);L==0?(oe=H,Se=xe):(Bt=H,Ee=xe);for(let jt=0;jt<v.length;jt++)E[jt]!=null&&(L==0?Bt=Ee=v[jt]:oe=Se=v[jt],u.moveTo(Bt,oe),u.lineTo(Ee,Se));u.stroke(),_==1&&u.translate(-Ft,-Ft)}function br(v){let E=!0;return T.forEach((L,N)=>{if(!L.show)return;let H=M[L.scale];if(H.min==null){L._show&&(E=!1,L._show=!1,ue(!1));return}else L._show||(E=!1,L._show=!0,ue(!1));let K=L.side,ut=K%2,{min:_t,max:wt}=H,[Ut,Ft]=es(N,_t,wt,ut==0?z:It);if(Ft==0)return;let Bt=H.distr==2,oe=L._splits=L.splits(n,N,_t,wt,Ut,Ft,Bt),Ee=H.distr==2?oe.map(qt=>ti[qt]):oe,Se=H.distr==2?ti[oe[1]]-ti[oe[0]]:Ut,xe=L._values=L.values(n,L.filter(n,Ee,N,Ft,Se),N,Ft,Se);L._rotate=K==2?L.rotate(n,xe,N,Ft):0;let jt=L._size;L._size=yi(L.size(n,xe,N,v)),jt!=null&&L._size!=jt&&(E=!1)}),E}function Vi(v){let E=!0;return bo.forEach((L,N)=>{let H=L(n,N,ki,v);H!=bi[N]&&(E=!1),bi[N]=H}),E}function ns(){for(let v=0;v<T.length;v++){let E=T[v];if(!E.show||!E._show)continue;let L=E.side,N=L%2,H,K,ut=E.stroke(n,v),_t=L==0||L==3?-1:1,[wt,Ut]=E._found;if(E.label!=null){let Wn=E.labelGap*_t,ii=gn((E._lpos+Wn)*Te);Dt(E.labelFont[0],ut,"center",L==2?"top":Sf),u.save(),N==1?(H=K=0,u.translate(ii,gn(S+ft/2)),u.rotate((L==3?-$a:$a)/2)):(H=gn(I+q/2),K=ii);let js=dp(E.label)?E.label(n,v,wt,Ut):E.label;u.fillText(js,H,K),u.restore()}if(Ut==0)continue;let Ft=M[E.scale],Bt=N==0?q:ft,oe=N==0?I:S,Ee=E._splits,Se=Ft.distr==2?Ee.map(Wn=>ti[Wn]):Ee,xe=Ft.distr==2?ti[Ee[1]]-ti[Ee[0]]:wt,jt=E.ticks,qt=E.border,Ge=jt.show?jt.size:0,Qe=gn(Ge*Te),En=gn((E.alignTo==2?E._size-Ge-E.gap:E.gap)*Te),Ne=E._rotate*-$a/180,tn=m(E._pos*Te),ei=(Qe+En)*_t,Hn=tn+ei;K=N==0?Hn:0,H=N==1?Hn:0;let pi=E.font[0],Si=E.align==1?Lr:E.align==2?Lh:Ne>0?Lr:Ne<0?Lh:N==0?"center":L==3?Lh:Lr,Wi=Ne||N==1?"middle":L==2?"top":Sf;Dt(pi,ut,Si,Wi);let ni=E.font[1]*E.lineGap,mi=Ee.map(Wn=>m(a(Wn,Ft,Bt,oe))),wi=E._values;for(let Wn=0;Wn<wi.length;Wn++){let ii=wi[Wn];if(ii!=null){N==0?H=mi[Wn]:K=mi[Wn],ii=""+ii;let js=ii.indexOf(`
`)==-1?[ii]:ii.split(/\n/gm);for(let Xn=0;Xn<js.length;Xn++){let df=js[Xn];Ne?(u.save(),u.translate(H,K+Xn*ni),u.rotate(Ne),u.fillText(df,0,0),u.restore()):u.fillText(df,H,K+Xn*ni)}}}jt.show&&cn(mi,jt.filter(n,Se,v,Ut,xe),N,L,tn,Qe,Oe(jt.width*Te,3),jt.stroke(n,v),jt.dash,jt.cap);let Xi=E.grid;Xi.show&&cn(mi,Xi.filter(n,Se,v,Ut,xe),N,N==0?2:1,N==0?S:I,N==0?ft:q,Oe(Xi.width*Te,3),Xi.stroke(n,v),Xi.dash,Xi.cap),qt.show&&cn([tn],[1],N==0?1:0,N==0?1:2,N==1?S:I,N==1?ft:q,Oe(qt.width*Te,3),qt.stroke(n,v),qt.dash,qt.cap)}wn("drawAxes")}function ue(v){x.forEach((E,L)=>{L>0&&(E._paths=null,v&&(s==1?(E.min=null,E.max=null):E.facets.forEach(N=>{N.min=null,N.max=null})))})}let Ke=!1,Gn=!1,Le=[];function hn(){Gn=!1;for(let v=0;v<Le.length;v++)wn(...Le[v]);Le.length=0}function Nn(){Ke||(L_(qd),Ke=!0)}function Ua(v,E=!1){Ke=!0,Gn=E,v(n),qd(),E&&Le.length>0&&queueMicrotask(hn)}n.batch=Ua;function qd(){if(ht&&(me(),ht=!1),St&&(At(),St=!1),bt){if(He(f,Lr,Jt),He(f,"top",le),He(f,Do,z),He(f,No,It),He(g,Lr,Jt),He(g,"top",le),He(g,Do,z),He(g,No,It),He(d,Do,Je),He(d,No,an),h.width=gn(Je*Te),h.height=gn(an*Te),T.forEach(({_el:v,_show:E,_size:L,_pos:N,side:H})=>{if(v!=null)if(E){let K=H===3||H===0?L:0,ut=H%2==1;He(v,ut?"left":"top",N-K),He(v,ut?"width":"height",L),He(v,ut?"top":"left",ut?le:Jt),He(v,ut?"height":"width",ut?It:z),Vh(v,er)}else si(v,er)}),vr=Ss=Mr=G=et=Z=j=Rt=A=null,Lt=1,Ao(!0),Jt!=Tt||le!=Ue||z!=Ht||It!=Yt){ue(!1);let v=z/Ht,E=It/Yt;if(mt&&!it&&at.left>=0){at.left*=v,at.top*=E,Sr&&$i(Sr,gn(at.left),0,z,It),wr&&$i(wr,0,gn(at.top),z,It);for(let L=0;L<ce.length;L++){let N=ce[L];N!=null&&(ke[L]*=v,Vn[L]*=E,$i(N,yi(ke[L]),yi(Vn[L]),z,It))}}if(Ve.show&&!rt&&Ve.left>=0&&Ve.width>0){Ve.left*=v,Ve.width*=v,Ve.top*=E,Ve.height*=E;for(let L in Th)He(Ar,L,Ve[L])}Tt=Jt,Ue=le,Ht=z,Yt=It}wn("setSize"),bt=!1}Je>0&&an>0&&(u.clearRect(0,0,h.width,h.height),wn("drawClear"),b.forEach(v=>v()),wn("draw")),Ve.show&&rt&&(Fa(Ve),rt=!1),mt&&it&&(Js(null,!0,!1),it=!1),nt.show&&nt.live&&yt&&(wh(),yt=!1),l||(l=!0,n.status=1,wn("ready")),bs=!1,Ke=!1}n.redraw=(v,E)=>{St=E||!1,v!==!1?Es(w,C.min,C.max):Nn()};function Mh(v,E){let L=M[v];if(L.from==null){if(je==0){let N=L.range(n,E.min,E.max,v);E.min=N[0],E.max=N[1]}if(E.min>E.max){let N=E.min;E.min=E.max,E.max=N}if(je>1&&E.min!=null&&E.max!=null&&E.max-E.min<1e-16)return;v==w&&L.distr==2&&je>0&&(E.min=Ai(E.min,t[0]),E.max=Ai(E.max,t[0]),E.min==E.max&&E.max++),B[v]=E,ht=!0,Nn()}}n.setScale=Mh;let bh,Sh,Sr,wr,Yd,Zd,Er,Tr,Jd,jd,ze,qe,ws=!1,Pn=at.drag,bn=Pn.x,Sn=Pn.y;mt&&(at.x&&(bh=xi(n_,g)),at.y&&(Sh=xi(i_,g)),C.ori==0?(Sr=bh,wr=Sh):(Sr=Sh,wr=bh),ze=at.left,qe=at.top);let Ve=n.select=dn({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),Ar=Ve.show?xi(e_,Ve.over?g:f):null;function Fa(v,E){if(Ve.show){for(let L in v)Ve[L]=v[L],L in Th&&He(Ar,L,v[L]);E!==!1&&wn("setSelect")}}n.setSelect=Fa;function C0(v){if(x[v].show)J&&Vh(Kt[v],er);else if(J&&si(Kt[v],er),mt){let L=Pt?ce[0]:ce[v];L!=null&&$i(L,-10,-10,z,It)}}function Es(v,E,L){Mh(v,{min:E,max:L})}function Gi(v,E,L,N){E.focus!=null&&N0(v),E.show!=null&&x.forEach((H,K)=>{K>0&&(v==K||v==null)&&(H.show=E.show,C0(K),s==2?(Es(H.facets[0].scale,null,null),Es(H.facets[1].scale,null,null)):Es(H.scale,null,null),Nn())}),L!==!1&&wn("setSeries",v,E),N&&Ro("setSeries",n,v,E)}n.setSeries=Gi;function P0(v,E){dn(R[v],E)}function I0(v,E){v.fill=ve(v.fill||null),v.dir=we(v.dir,-1),E=E??R.length,R.splice(E,0,v)}function L0(v){v==null?R.length=0:R.splice(v,1)}n.addBand=I0,n.setBand=P0,n.delBand=L0;function D0(v,E){x[v].alpha=E,mt&&ce[v]!=null&&(ce[v].style.opacity=E),J&&Kt[v]&&(Kt[v].style.opacity=E)}let is,Ts,Zs,Rr={focus:!0};function N0(v){if(v!=Zs){let E=v==null,L=kt.alpha!=1;x.forEach((N,H)=>{if(s==1||H>0){let K=E||H==0||H==v;N._focus=E?null:K,L&&D0(H,K?1:kt.alpha)}}),Zs=v,L&&Nn()}}J&&te&&be(Af,pt,v=>{at._lock||(Qt(v),Zs!=null&&Gi(null,Rr,!0,un.setSeries))});function Hi(v,E,L){let N=M[E];L&&(v=v/Te-(N.ori==1?le:Jt));let H=z;N.ori==1&&(H=It,v=H-v),N.dir==-1&&(v=H-v);let K=N._min,ut=N._max,_t=v/H,wt=K+(ut-K)*_t,Ut=N.distr;return Ut==3?Ur(10,wt):Ut==4?v_(wt,N.asinh):Ut==100?N.bwd(wt):wt}function U0(v,E){let L=Hi(v,w,E);return Ai(L,t[0],nn,sn)}n.valToIdx=v=>Ai(v,t[0]),n.posToIdx=U0,n.posToVal=Hi,n.valToPos=(v,E,L)=>M[E].ori==0?r(v,M[E],L?q:z,L?I:0):o(v,M[E],L?ft:It,L?S:0),n.setCursor=(v,E,L)=>{ze=v.left,qe=v.top,Js(null,E,L)};function Kd(v,E){He(Ar,Lr,Ve.left=v),He(Ar,Do,Ve.width=E)}function Qd(v,E){He(Ar,"top",Ve.top=v),He(Ar,No,Ve.height=E)}let Eo=C.ori==0?Kd:Qd,To=C.ori==1?Kd:Qd;function F0(){if(J&&nt.live)for(let v=s==2?1:0;v<x.length;v++){if(v==0&&he)continue;let E=nt.values[v],L=0;for(let N in E)Gt[v][L++].firstChild.nodeValue=E[N]}}function wh(v,E){if(v!=null&&(v.idxs?v.idxs.forEach((L,N)=>{tt[N]=L}):w_(v.idx)||tt.fill(v.idx),nt.idx=tt[0]),J&&nt.live){for(let L=0;L<x.length;L++)(L>0||s==1&&!he)&&O0(L,tt[L]);F0()}yt=!1,E!==!1&&wn("setLegend")}n.setLegend=wh;function O0(v,E){let L=x[v],N=v==0&&O==2?ti:t[v],H;he?H=L.values(n,v,E)??re:(H=L.value(n,E==null?null:N[E],v,E),H=H==null?re:{_:H}),nt.values[v]=H}function Js(v,E,L){Jd=ze,jd=qe,[ze,qe]=at.move(n,ze,qe),at.left=ze,at.top=qe,mt&&(Sr&&$i(Sr,gn(ze),0,z,It),wr&&$i(wr,0,gn(qe),z,It));let N,H=nn>sn;is=Fe,Ts=null;let K=C.ori==0?z:It,ut=C.ori==1?z:It;if(ze<0||je==0||H){N=at.idx=null;for(let _t=0;_t<x.length;_t++){let wt=ce[_t];wt!=null&&$i(wt,-10,-10,z,It)}te&&Gi(null,Rr,!0,v==null&&un.setSeries),nt.live&&(tt.fill(N),yt=!0)}else{let _t,wt,Ut;s==1&&(_t=C.ori==0?ze:qe,wt=Hi(_t,w),N=at.idx=Ai(wt,t[0],nn,sn),Ut=U(t[0][N],C,K,0));let Ft=-10,Bt=-10,oe=0,Ee=0,Se=!0,xe="",jt="";for(let qt=s==2?1:0;qt<x.length;qt++){let Ge=x[qt],Qe=tt[qt],En=Qe==null?null:s==1?t[qt][Qe]:t[qt][1][Qe],Ne=at.dataIdx(n,qt,N,wt),tn=Ne==null?null:s==1?t[qt][Ne]:t[qt][1][Ne];if(yt=yt||tn!=En||Ne!=Qe,tt[qt]=Ne,qt>0&&Ge.show){let ei=Ne==null?-10:Ne==N?Ut:U(s==1?t[0][Ne]:t[qt][0][Ne],C,K,0),Hn=tn==null?-10:P(tn,s==1?M[Ge.scale]:M[Ge.facets[1].scale],ut,0);if(te&&tn!=null){let pi=C.ori==1?ze:qe,Si=_n(kt.dist(n,qt,Ne,Hn,pi));if(Si<is){let Wi=kt.bias;if(Wi!=0){let ni=Hi(pi,Ge.scale),mi=tn>=0?1:-1,wi=ni>=0?1:-1;wi==mi&&(wi==1?Wi==1?tn>=ni:tn<=ni:Wi==1?tn<=ni:tn>=ni)&&(is=Si,Ts=qt)}else is=Si,Ts=qt}}if(yt||Pt){let pi,Si;C.ori==0?(pi=ei,Si=Hn):(pi=Hn,Si=ei);let Wi,ni,mi,wi,Xi,Wn,ii=!0,js=dt.bbox;if(js!=null){ii=!1;let Xn=js(n,qt);mi=Xn.left,wi=Xn.top,Wi=Xn.width,ni=Xn.height}else mi=pi,wi=Si,Wi=ni=dt.size(n,qt);if(Wn=dt.fill(n,qt),Xi=dt.stroke(n,qt),Pt)qt==Ts&&is<=kt.prox&&(Ft=mi,Bt=wi,oe=Wi,Ee=ni,Se=ii,xe=Wn,jt=Xi);else{let Xn=ce[qt];Xn!=null&&(ke[qt]=mi,Vn[qt]=wi,Nf(Xn,Wi,ni,ii),Lf(Xn,Wn,Xi),$i(Xn,yi(mi),yi(wi),z,It))}}}}if(Pt){let qt=kt.prox,Ge=Zs==null?is<=qt:is>qt||Ts!=Zs;if(yt||Ge){let Qe=ce[0];Qe!=null&&(ke[0]=Ft,Vn[0]=Bt,Nf(Qe,oe,Ee,Se),Lf(Qe,xe,jt),$i(Qe,yi(Ft),yi(Bt),z,It))}}}if(Ve.show&&ws)if(v!=null){let[_t,wt]=un.scales,[Ut,Ft]=un.match,[Bt,oe]=v.cursor.sync.scales,Ee=v.cursor.drag;if(bn=Ee._x,Sn=Ee._y,bn||Sn){let{left:Se,top:xe,width:jt,height:qt}=v.select,Ge=v.scales[Bt].ori,Qe=v.posToVal,En,Ne,tn,ei,Hn,pi=_t!=null&&Ut(_t,Bt),Si=wt!=null&&Ft(wt,oe);pi&&bn?(Ge==0?(En=Se,Ne=jt):(En=xe,Ne=qt),tn=M[_t],ei=U(Qe(En,Bt),tn,K,0),Hn=U(Qe(En+Ne,Bt),tn,K,0),Eo(Ri(ei,Hn),_n(Hn-ei))):Eo(0,K),Si&&Sn?(Ge==1?(En=Se,Ne=jt):(En=xe,Ne=qt),tn=M[wt],ei=P(Qe(En,oe),tn,ut,0),Hn=P(Qe(En+Ne,oe),tn,ut,0),To(Ri(ei,Hn),_n(Hn-ei))):To(0,ut)}else Ah()}else{let _t=_n(Jd-Yd),wt=_n(jd-Zd);if(C.ori==1){let oe=_t;_t=wt,wt=oe}bn=Pn.x&&_t>=Pn.dist,Sn=Pn.y&&wt>=Pn.dist;let Ut=Pn.uni;Ut!=null?bn&&Sn&&(bn=_t>=Ut,Sn=wt>=Ut,!bn&&!Sn&&(wt>_t?Sn=!0:bn=!0)):Pn.x&&Pn.y&&(bn||Sn)&&(bn=Sn=!0);let Ft,Bt;bn&&(C.ori==0?(Ft=Er,Bt=ze):(Ft=Tr,Bt=qe),Eo(Ri(Ft,Bt),_n(Bt-Ft)),Sn||To(0,ut)),Sn&&(C.ori==1?(Ft=Er,Bt=ze):(Ft=Tr,Bt=qe),To(Ri(Ft,Bt),_n(Bt-Ft)),bn||Eo(0,K)),!bn&&!Sn&&(Eo(0,0),To(0,0))}if(Pn._x=bn,Pn._y=Sn,v==null){if(L){if(uf!=null){let[_t,wt]=un.scales;un.values[0]=_t!=null?Hi(C.ori==0?ze:qe,_t):null,un.values[1]=wt!=null?Hi(C.ori==1?ze:qe,wt):null}Ro(Dh,n,ze,qe,z,It,N)}if(te){let _t=L&&un.setSeries,wt=kt.prox;Zs==null?is<=wt&&Gi(Ts,Rr,!0,_t):is>wt?Gi(null,Rr,!0,_t):Ts!=Zs&&Gi(Ts,Rr,!0,_t)}}yt&&(nt.idx=N,wh()),E!==!1&&wn("setCursor")}let As=null;Object.defineProperty(n,"rect",{get(){return As==null&&Ao(!1),As}});function Ao(v=!1){v?As=null:(As=g.getBoundingClientRect(),wn("syncRect",As))}function tf(v,E,L,N,H,K,ut){at._lock||ws&&v!=null&&v.movementX==0&&v.movementY==0||(Eh(v,E,L,N,H,K,ut,!1,v!=null),v!=null?Js(null,!0,!0):Js(E,!0,!1))}function Eh(v,E,L,N,H,K,ut,_t,wt){if(As==null&&Ao(!1),Qt(v),v!=null)L=v.clientX-As.left,N=v.clientY-As.top;else{if(L<0||N<0){ze=-10,qe=-10;return}let[Ut,Ft]=un.scales,Bt=E.cursor.sync,[oe,Ee]=Bt.values,[Se,xe]=Bt.scales,[jt,qt]=un.match,Ge=E.axes[0].side%2==1,Qe=C.ori==0?z:It,En=C.ori==1?z:It,Ne=Ge?K:H,tn=Ge?H:K,ei=Ge?N:L,Hn=Ge?L:N;if(Se!=null?L=jt(Ut,Se)?a(oe,M[Ut],Qe,0):-10:L=Qe*(ei/Ne),xe!=null?N=qt(Ft,xe)?a(Ee,M[Ft],En,0):-10:N=En*(Hn/tn),C.ori==1){let pi=L;L=N,N=pi}}wt&&(E==null||E.cursor.event.type==Dh)&&((L<=1||L>=z-1)&&(L=Qs(L,z)),(N<=1||N>=It-1)&&(N=Qs(N,It))),_t?(Yd=L,Zd=N,[Er,Tr]=at.move(n,L,N)):(ze=L,qe=N)}let Th={width:0,height:0,left:0,top:0};function Ah(){Fa(Th,!1)}let ef,nf,sf,rf;function of(v,E,L,N,H,K,ut){ws=!0,bn=Sn=Pn._x=Pn._y=!1,Eh(v,E,L,N,H,K,ut,!0,!1),v!=null&&(be(Nh,kh,af,!1),Ro(Ef,n,Er,Tr,z,It,null));let{left:_t,top:wt,width:Ut,height:Ft}=Ve;ef=_t,nf=wt,sf=Ut,rf=Ft}function af(v,E,L,N,H,K,ut){ws=Pn._x=Pn._y=!1,Eh(v,E,L,N,H,K,ut,!1,!0);let{left:_t,top:wt,width:Ut,height:Ft}=Ve,Bt=Ut>0||Ft>0,oe=ef!=_t||nf!=wt||sf!=Ut||rf!=Ft;if(Bt&&oe&&Fa(Ve),Pn.setScale&&Bt&&oe){let Ee=_t,Se=Ut,xe=wt,jt=Ft;if(C.ori==1&&(Ee=wt,Se=Ft,xe=_t,jt=Ut),bn&&Es(w,Hi(Ee,w),Hi(Ee+Se,w)),Sn)for(let qt in M){let Ge=M[qt];qt!=w&&Ge.from==null&&Ge.min!=Fe&&Es(qt,Hi(xe+jt,qt),Hi(xe,qt))}Ah()}else at.lock&&(at._lock=!at._lock,Js(E,!0,v!=null));v!=null&&(pn(Nh,kh),Ro(Nh,n,ze,qe,z,It,null))}function B0(v,E,L,N,H,K,ut){if(at._lock)return;Qt(v);let _t=ws;if(ws){let wt=!0,Ut=!0,Ft=10,Bt,oe;C.ori==0?(Bt=bn,oe=Sn):(Bt=Sn,oe=bn),Bt&&oe&&(wt=ze<=Ft||ze>=z-Ft,Ut=qe<=Ft||qe>=It-Ft),Bt&&wt&&(ze=ze<Er?0:z),oe&&Ut&&(qe=qe<Tr?0:It),Js(null,!0,!0),ws=!1}ze=-10,qe=-10,tt.fill(null),Js(null,!0,!0),_t&&(ws=_t)}function lf(v,E,L,N,H,K,ut){at._lock||(Qt(v),wo(),Ah(),v!=null&&Ro(Rf,n,ze,qe,z,It,null))}function cf(){T.forEach(zx),k(n.width,n.height,!0)}nr(qa,Nr,cf);let Cr={};Cr.mousedown=of,Cr.mousemove=tf,Cr.mouseup=af,Cr.dblclick=lf,Cr.setSeries=(v,E,L,N)=>{let H=un.match[2];L=H(n,E,L),L!=-1&&Gi(L,N,!0,!1)},mt&&(be(Ef,g,of),be(Dh,g,tf),be(Tf,g,v=>{Qt(v),Ao(!1)}),be(Af,g,B0),be(Rf,g,lf),qh.add(n),n.syncRect=Ao);let Oa=n.hooks=i.hooks||{};function wn(v,E,L){Gn?Le.push([v,E,L]):v in Oa&&Oa[v].forEach(N=>{N.call(null,n,E,L)})}(i.plugins||[]).forEach(v=>{for(let E in v.hooks)Oa[E]=(Oa[E]||[]).concat(v.hooks[E])});let hf=(v,E,L)=>L,un=dn({key:null,setSeries:!1,filters:{pub:kf,sub:kf},scales:[w,x[1]?x[1].scale:null],match:[zf,zf,hf],values:[null,null]},at.sync);un.match.length==2&&un.match.push(hf),at.sync=un;let uf=un.key,Rh=Fp(uf);function Ro(v,E,L,N,H,K,ut){un.filters.pub(v,E,L,N,H,K,ut)&&Rh.pub(v,E,L,N,H,K,ut)}Rh.sub(n);function k0(v,E,L,N,H,K,ut){un.filters.sub(v,E,L,N,H,K,ut)&&Cr[v](null,E,L,N,H,K,ut)}n.pub=k0;function z0(){Rh.unsub(n),qh.delete(n),Mn.clear(),Gh(qa,Nr,cf),c.remove(),pt?.remove(),wn("destroy")}n.destroy=z0;function Ch(){wn("init",i,t),So(t||i.data,!1),B[w]?Mh(w,B[w]):wo(),rt=Ve.show&&(Ve.width>0||Ve.height>0),it=yt=!0,k(i.width,i.height)}return x.forEach(yr),T.forEach(Qi),e?e instanceof HTMLElement?(e.appendChild(c),Ch()):e(n,Ch):Ch(),n}Tn.assign=dn;Tn.fmtNum=tu;Tn.rangeNum=Ya;Tn.rangeLog=ja;Tn.rangeAsinh=Kh;Tn.orient=sr;Tn.pxRatio=Te;Tn.join=I_;Tn.fmtDate=nu,Tn.tzDate=G_;Tn.sync=Fp;{Tn.addGap=wx,Tn.clipGaps=tl;let i=Tn.paths={points:Gp};i.linear=Wp,i.stepped=Ax,i.bars=Rx,i.spline=Px}var sl=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let l of this.listeners)l(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,l)=>a+l.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,l)=>{let c={contour:l,start:r,length:a.length_mm};return r+=a.length_mm+s,c}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:hu(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding",n=as(t)[0]){if(!n)return;let s=this.payload.joints.findIndex(o=>o.id===t.joint),r=this.payload.joints[s].contours.findIndex(o=>o.id===n.contour);this.go({joint:s,contour:r,station:n.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).flatMap(a=>as(a).map(l=>{let c=this.joint.contours.findIndex(h=>h.id===l.contour);return{finding:a,spot:l,at:e[c].start+this.joint.contours[c].stations.s[l.station]}})).sort((a,l)=>a.at-l.at||a.finding.n-l.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return t>0?r[0]??s[0]:r.at(-1)??s.at(-1)}findingsHere(t=this.place){let e=this.payload.joints[t.joint];return cu(this.payload.findings,e,e.contours[t.contour],t.station)}},Vx=1;function cu(i,t,e,n){let s=e.stations.s;return i.filter(r=>r.joint!==t.id||r.station===null?!1:r.places.some(o=>o.contour===e.id&&(ko(o,s[n])||o.station===n))?!0:r.contour!==e.id?!1:r.from_s!==null&&r.to_s!==null?ko(r,s[n]):r.everywhere||n===r.station||Math.abs(s[n]-s[r.station])<=Vx)}var rl=i=>i.severity==="note"&&(i.from_s!==null||i.everywhere),as=i=>i.contour===null||i.station===null?[]:[{contour:i.contour,station:i.station,from_s:i.from_s,to_s:i.to_s},...i.places];function ko(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function hu(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}var Ls=132,ol=24,al=class{constructor(t,e,n,s,r){this.judged=t;this.within=e;this.further=n;this.atlas=s;this.walk=r}judged;within;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let a of this.charts)a.remove();en(this.judged),en(this.within),en(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(a=>a.columns))].filter(a=>this.isThere(a)),e=new Set(this.atlas.payload.findings.filter(a=>a.joint===this.walk.joint.id).map(a=>a.rule)),n=t.filter(a=>this.walk.facts.bands.some(l=>e.has(l.rule)&&l.columns.includes(a))),s=Object.keys(this.atlas.payload.quantities).filter(a=>!t.includes(a)&&this.isThere(a)),r=this.ranges([...t,...s]);this.judged.classList.toggle("small-multiples",n.length>2);for(let[a,l]of[[this.judged,n],[this.within,t.filter(c=>!n.includes(c))],[this.further,s]])for(let c of l){let h=new uu(c,this.atlas,this.walk,r.get(this.scale(c)));this.charts.push(h),a.append(h.root),h.later()}let o=this.within.closest("details");o&&(o.hidden=n.length===t.length),t.length&&!n.length&&this.judged.append($t("p",null,vt("Every judged quantity is within its limits everywhere."))),t.length||this.judged.append($t("p",null,vt("No judged quantity was measured along this seam.")))}scale(t){return this.atlas.payload.quantities[t]?.scale??t}ranges(t){let e=new Map;for(let n of t){let s=Gx(n,this.walk),r=this.scale(n),o=e.get(r)??s;e.set(r,[Math.min(s[0],o[0]),Math.max(s[1],o[1])])}return e}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.further.contains(e.root)||e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},uu=class{constructor(t,e,n,s){this.column=t;this.atlas=e;this.walk=n;this.range=s;let r=n.facts.bands.filter(d=>d.columns.includes(t));this.edges=jp(t,n);let o=new Set(r.map(d=>d.rule));this.findings=e.payload.findings.filter(d=>d.joint===n.joint.id&&(d.quantity===t||o.has(d.rule)&&!r.some(f=>f.columns.length>1)));let a=e.words,l=a.title(t),c=n.facts.tolerances[t],h=r.filter(d=>d.words).map(d=>`${d.title.toLowerCase()}: ${d.words}`),u=a.unit(t);this.root=$t("figure",{class:"chart","data-column":t},$t("figcaption",null,$t("span",{class:"chart-title"},l,u?` / ${u}`:""),this.here,$t("span",{class:"chart-limits"},[...h,...c?[vt("tolerance ±{value}",{value:a.value(c,t)})]:[]].join(" · "))),$t("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;range;root;plotHost=$t("div",{class:"chart-plot"});spread=$t("div",{class:"chart-spread"});here=$t("b",{class:"chart-here"});cursor=$t("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(n=>{let s=n.summary[this.column],r=this.atlas.words,o=this.walk.joint.contours.length>1?`${n.id}: `:"";if(!s)return`${o}${vt("not measured")}`;let a=(l,c)=>c==null?"":`, ${l} ${r.value(c,this.column)}`;return`${o}${vt("least")} ${r.value(s.min,this.column)}${a("p05",s.p05)}, ${vt("median")} ${r.value(s.median,this.column)}${a("p95",s.p95)}, ${vt("most")} ${r.value(s.max,this.column)}`}),e=this.walk.joint.summary[this.column]?.outside;return e!==void 0&&t.push(vt("outside a limit: {share} % of the length",{share:gi(100*e,e>0&&e<.1?1:0)})),$t("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=Po(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((l,c)=>{t.push(r+l),e.push(a?.[c]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:l}of o){let c=this.walk.joint.contours[a];e[c.id]?.forEach((h,u)=>{h!==null&&r.push([t.valToPos(l+c.stations.s[u],"x",!0),t.valToPos(h,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range,s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o=this.atlas.payload.quantities[this.column]?.unit??"",a={width:s,height:Ls,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(l,c,h)=>[c,h]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>rn("soft"),grid:{show:!1},ticks:{stroke:()=>rn("line"),size:4},size:22,font:Jp,gap:3,values:(l,c)=>Yp(c.map(h=>h/Ei()),2)},{stroke:()=>rn("soft"),grid:{stroke:()=>rn("line"),width:1},ticks:{show:!1},size:52,font:Jp,space:26,values:(l,c)=>Yp(c.map(h=>ss(h,o,0)[0]),ss(0,o,r)[2])}],series:[{},{stroke:()=>rn("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[l=>{this.drawBands(l),this.drawTolerance(l,t)}],draw:[l=>{this.drawFindings(l),this.show()}],ready:[l=>this.listen(l)]}};this.plot=new Tn(a,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let l=this.plotHost.getBoundingClientRect().width;this.plot&&l>50&&Math.abs(l-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:l,height:Ls})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[l,c]of[[a.low,!0],[a.high,!1]]){let h=this.line(t,l);if(h.length<2)continue;let u=c?s+o:s;e.save(),e.beginPath(),h.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(h[h.length-1][0],u),e.lineTo(h[0][0],u),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=rn("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=rn("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=rn("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),h.forEach(([f,g],_)=>_?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=rn("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let l=a;for(;l+1<e.length&&n[l+1]!==null;)l++;o.beginPath();for(let c=a;c<=l;c++)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]+r,"y",!0));for(let c=l;c>=a;c--)o.lineTo(t.valToPos(e[c],"x",!0),t.valToPos(n[c]-r,"y",!0));o.closePath(),o.fill(),a=l}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${Qp}`;let a=[];for(let l of this.findings)if(l.severity!=="note")for(let[c,h]of as(l).flatMap(u=>this.unrolled(u,r))){let u=t.valToPos(c,"x",!0),d=Math.max(t.valToPos(h,"x",!0),u+3*o);if(d<t.bbox.left||u>t.bbox.left+t.bbox.width)continue;e.fillStyle=rn(l.waived?"waived":l.severity==="must-fix"?"broken":"near"),e.fillRect(u,n+s-4*o,d-u,4*o);let f=(u+d)/2,g=a.find(_=>Math.abs(_.x-f)<14*o);g?g.findings.push(l):a.push({x:f,findings:[l],colour:String(e.fillStyle)})}e.textAlign="center";for(let{x:l,findings:c,colour:h}of a)e.fillStyle=h,e.fillText(Cs(c),l,n+11*o);e.restore()}unrolled({contour:t,from_s:e,to_s:n},s){let r=this.walk.joint.contours.findIndex(l=>l.id===t);if(r<0)return[];let{start:o,length:a}=s[r];return e===null||n===null?[]:e<=n?[[o+e,o+n]]:[[o+e,o+a],[o,o+n]]}drawSpread(t,e,n){en(this.spread);let s=new Array(ol).fill(0);for(let c of t)c!==null&&s[Math.min(ol-1,Math.max(0,Math.floor((c-e)/(n-e)*ol)))]++;let r=Math.max(1,...s),o=Ls-30,a=o/ol,l=gt("svg",{viewBox:`0 0 74 ${Ls}`,width:74,height:Ls,role:"img","aria-label":vt("Distribution of the values")});s.forEach((c,h)=>{c&&l.append(gt("rect",{class:"bin",x:4,y:Q(8+o-(h+1)*a),width:Q(Math.max(2,60*Math.sqrt(c/r))),height:Q(a-.7)}))});for(let c of this.edges)for(let h of[c.low,c.high]){if(typeof h!="number"||h<e||h>n)continue;let u=8+o*(1-(h-e)/(n-e));l.append(gt("line",{class:"bin-limit",x1:0,x2:74,y1:Q(u),y2:Q(u)}))}l.append(gt("text",{class:"side",x:4,y:Ls-8},vt("spread √n"))),this.spread.append(l)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/Tn.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${Q(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:Ls})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:Ls}))}remove(){this.plot?.destroy()}},jp=(i,t)=>t.facts.bands.filter(e=>e.columns.includes(i)).flatMap(e=>e.edges).filter(e=>e.judged===i);function Gx(i,t){let e=jp(i,t),n=1/0,s=-1/0;for(let l of t.joint.contours)for(let c of l.stations[i]??[])c!==null&&(n=Math.min(n,c),s=Math.max(s,c));for(let l of e){let c=Wx(l.low),h=Zp(l.high);c!==null&&(n=Math.min(n,c),s=Math.max(s,c)),h!==null&&h-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,h),n=Math.min(n,h))}let r=e.map(l=>Zp(l.low)).filter(l=>l!==null&&l>0);r.length&&e.every(l=>l.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let o=t.facts.tolerances[i]??0;n-=o,s+=o;let a=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-a,s+a]}function Yp(i,t){let e=Hx(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":gi(Number(s),e))}function Hx(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var Kp=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),Wx=i=>Kp(i).reduce((t,e)=>t===null||e<t?e:t,null),Zp=i=>Kp(i).reduce((t,e)=>t===null||e>t?e:t,null),Qp='"Barlow Semi Condensed", "Arial Narrow", sans-serif',Jp=`500 12px ${Qp}`;var ll=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],Xx=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],tm=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function rr(i){let t=tm([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(ll(o,t))<.8)??e[1],s=ll(n,t),r=tm([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:Xx(t,r),toward:t}}var Gr=(i,t)=>[ll(i.right,t),ll(i.up,t)];function em(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),l=new Int32Array(e*n).fill(-1),c=new Float32Array(e*n*3),{right:h,up:u,toward:d}=t,f=0;for(let g of i){let{positions:_,triangles:m}=g,p=_.length/3,x=new Float32Array(p),T=new Float32Array(p),M=new Float32Array(p);for(let R=0;R<p;R++){let[w,y,b]=[_[3*R],_[3*R+1],_[3*R+2]];x[R]=(h[0]*w+h[1]*y+h[2]*b-r)*s,T[R]=(o-(u[0]*w+u[1]*y+u[2]*b))*s,M[R]=d[0]*w+d[1]*y+d[2]*b}for(let R=0;R<m.length;R+=3){let[w,y,b]=[m[R],m[R+1],m[R+2]],F=(x[y]-x[w])*(T[b]-T[w])-(T[y]-T[w])*(x[b]-x[w]);if(Math.abs(F)<1e-9)continue;let D=-((M[y]-M[w])*(T[b]-T[w])-(M[b]-M[w])*(T[y]-T[w]))/F,C=-((M[b]-M[w])*(x[y]-x[w])-(M[y]-M[w])*(x[b]-x[w]))/F,O=Math.max(0,Math.ceil(Math.min(x[w],x[y],x[b])-.5)),U=Math.min(e-1,Math.floor(Math.max(x[w],x[y],x[b])-.5)),P=Math.max(0,Math.ceil(Math.min(T[w],T[y],T[b])-.5)),B=Math.min(n-1,Math.floor(Math.max(T[w],T[y],T[b])-.5)),$=Math.hypot(D/s,C/s,1/s/s)||1,V=[D*s,-C*s,1],ot=Math.hypot(V[0],V[1],V[2])||$,X=f+(g.face.length?g.face[R/3]:0);for(let Y=P;Y<=B;Y++)for(let tt=O;tt<=U;tt++){let nt=((tt+.5-x[w])*(T[b]-T[w])-(Y+.5-T[w])*(x[b]-x[w]))/F,at=((Y+.5-T[w])*(x[y]-x[w])-(tt+.5-x[w])*(T[y]-T[w]))/F;if(nt<-1e-6||at<-1e-6||nt+at>1+1e-6)continue;let J=M[w]+nt*(M[y]-M[w])+at*(M[b]-M[w]),mt=Y*e+tt;J<=a[mt]||(a[mt]=J,l[mt]=X,c[3*mt]=V[0]/ot,c[3*mt+1]=V[1]/ot,c[3*mt+2]=V[2]/ot)}}f+=1e6}return{width:e,height:n,depth:a,face:l,normal:c}}function nm(i,t,e,n,s,r){let{width:o,height:a,depth:l,face:c,normal:h}=t,u=i.data,d=(m,p,x)=>{for(let T=0;T<3;T++)u[4*m+T]+=(p[T]-u[4*m+T])*x},[f,g]=[1/0,-1/0];for(let m of l)m>-1/0&&(m<f&&(f=m),m>g&&(g=m));let _=Math.max(1e-6,g-f);for(let m=0;m<o*a;m++){if(c[m]<0)continue;let p=-.5*h[3*m]+.5*h[3*m+1],x=.12*(1-(l[m]-f)/_)+Math.max(0,-p)*.3+(1-h[3*m+2])*.1;d(m,e,s),d(m,n,Math.min(.5,x)*s)}for(let m=0;m<a-1;m++)for(let p=0;p<o-1;p++){let x=m*o+p,T=0;for(let M of[x+1,x+o]){if(c[x]===c[M])continue;if(c[x]<0||c[M]<0){T=1;continue}h[3*x]*h[3*M]+h[3*x+1]*h[3*M+1]+h[3*x+2]*h[3*M+2]<.97&&(T=Math.max(T,.6)),Math.abs(l[x]-l[M])>.15&&(T=Math.max(T,.85))}T&&d(x,n,T*r)}}var zo=["unknown","within","near","broken","waived","look","noted"];var hl=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;en(t),t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=$t("canvas",{"aria-hidden":!0});overlay=gt("svg",{role:"group"});cursor=gt("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=rr(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],l=(g,_)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,_),a=Math.max(a,_)};for(let g of this.walk.joint.contours)ai(g).forEach(_=>l(...Gr(n,_)));let c=new Set([...this.walk.joint.cover,...this.walk.joint.base]),h=this.atlas.meshes.filter(g=>c.has(g.part));for(let g of h)for(let _=0;_<g.positions.length;_+=3)l(...Gr(n,[g.positions[_],g.positions[_+1],g.positions[_+2]]));let u=t?34:40,d=Math.min((e.width-2*u)/Math.max(1e-6,r-s),(e.height-2*u)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(h,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=u=>qx(rn(u)),l=o.createImageData(s,r),c=a("sheet");for(let u=0;u<s*r;u++)l.data.set([...c,255],4*u);let h=new Set(this.walk.joint.cover);for(let u of[!1,!0]){let d=t.filter(g=>h.has(g.part)===u);if(!d.length)continue;let f=em(d,e.plane,s,r,e.scale*n,e.x,e.y);nm(l,f,a(u?"cover-fill":"base-fill"),a("ink"),u?.6:.9,u?.55:.25)}o.putImageData(l,0,0)}at(t){let[e,n]=Gr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){en(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${Q(t.width)} ${Q(t.height)}`),this.overlay.setAttribute("aria-label",vt("The seam seen along the beam, with the findings as numbered section marks"));let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=ai(n).map(r=>this.at(r));this.overlay.append(gt("path",{class:"seam casing",d:Vo(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let l=o+1<s.length?o+1:o,c=s.slice(r,l+1);n.closed&&o===s.length-1&&c.push(s[0]),this.overlay.append(gt("path",{class:`seam ${zo[a]}`,d:Vo(c,!1)})),a===3&&this.overlay.append(gt("path",{class:"seam broken-core",d:Vo(c,!1)}))}}this.drawPlaces(),this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawMarks(){let t=[];for(let s of this.atlas.payload.findings)if(!(s.joint!==this.walk.joint.id||s.station===null||rl(s)))for(let r of as(s)){let o=this.walk.joint.contours.find(d=>d.id===r.contour);if(!o)continue;let[a,l]=this.at(ai(o)[r.station]),[c,h]=this.normal(o,r.station),u=t.find(d=>Math.hypot(d.x-a,d.y-l)<18);u?u.findings.includes(s)||u.findings.push(s):t.push({x:a,y:l,nx:c,ny:h,findings:[s],spot:r})}let e=t.length>8?Va:Cs,n=s=>e(s.findings).length*4+2;for(let s=0;s<t.length;s++)for(let r=s+1;r<t.length;r++){let[o,a]=[t[s],t[r]],[l,c]=[Math.abs(o.x+o.nx*31-a.x-a.nx*31),Math.abs(o.y+o.ny*31-a.y-a.ny*31)];l>n(o)+n(a)||c>17||(o.findings=[...new Set([...o.findings,...a.findings])].sort((h,u)=>h.n-u.n),t.splice(r,1),r=s)}for(let{x:s,y:r,nx:o,ny:a,findings:l,spot:c}of t){let h=l[0],u=h.waived?"waived":h.severity,d=gt("g",{class:`section-mark ${u}`,tabindex:0,role:"button","data-finding":h.n,"aria-label":`${vt("Finding")} ${l.map(m=>m.n).join(", ")}: ${h.title}`});for(let m of[1,-1]){let[p,x]=[s+m*o*8,r+m*a*8],[T,M]=[s+m*o*19,r+m*a*19];d.append(gt("path",{class:"cut",d:`M${Q(p)} ${Q(x)}L${Q(T)} ${Q(M)}`}),gt("path",{class:"cut-arrow",d:$x(T,M,-a,o)}))}let[f,g]=[s+o*31,r+a*31];d.append(gt("circle",{class:"target",cx:Q(s),cy:Q(r),r:13}),gt("text",{x:Q(f),y:Q(g),"text-anchor":"middle","dominant-baseline":"central"},e(l)));let _=m=>{m.stopPropagation(),this.walk.showFinding(h,"finding",c)};d.addEventListener("click",_),d.addEventListener("pointerdown",m=>m.stopPropagation()),d.addEventListener("keydown",m=>{(m.key==="Enter"||m.key===" ")&&(m.preventDefault(),_(m))}),this.overlay.append(d)}}drawPlaces(){for(let t of this.atlas.payload.findings){let e=this.walk.joint.contours.find(l=>l.id===t.contour);if(t.joint!==this.walk.joint.id||!t.at||!e||t.station===null||t.from_s!==null)continue;let[n,s]=this.at(t.at),[r,o]=this.at(ai(e)[t.station]),a=gt("g",{class:`place-mark ${t.waived?"waived":t.severity}`,"data-place-of":t.n},gt("title",null,`${vt("Finding")} ${t.n}: ${t.title}${t.value==="–"?"":`, ${t.value}`}`),gt("path",{d:`M${Q(n-5)} ${Q(s-5)}L${Q(n+5)} ${Q(s+5)}M${Q(n-5)} ${Q(s+5)}L${Q(n+5)} ${Q(s-5)}`}));Math.hypot(n-r,s-o)>4&&a.append(gt("path",{class:"reach",d:`M${Q(r)} ${Q(o)}L${Q(n)} ${Q(s)}`})),this.overlay.append(a)}}normal(t,e){let[n,s]=Gr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=gt("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,l]=Gr(t.plane,o);if(Math.hypot(a,l)<.3)return;let c=[e[0]+a*20,e[1]-l*20];n.append(gt("path",{d:`M${Q(e[0])} ${Q(e[1])}L${Q(c[0])} ${Q(c[1])}`}),gt("text",{x:Q(c[0]+a*7),y:Q(c[1]-l*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(ai(e)[t.station]),[r,o]=this.normal(e,t.station);en(this.cursor),this.cursor.append(...[1,-1].flatMap(a=>["casing",""].map(l=>gt("path",{class:l,d:`M${Q(n+a*r*6)} ${Q(s+a*o*6)}L${Q(n+a*r*17)} ${Q(s+a*o*17)}`})))),this.lens(t),this.cursor.setAttribute("data-x",Q(n)),this.cursor.setAttribute("data-y",Q(s))}lens(t){let e=this.view,{joint:n,contour:s,facts:r}=this.walk,o=this.walk.findingsHere().find(C=>C.from_s!==null&&C.severity!=="note");if(!o)return;let{s:a}=s.stations,l=ai(s).map(C=>this.at(C)),c=as(o).find(C=>C.contour===s.id&&ko(C,a[t.station]))??o,h=a.flatMap((C,O)=>ko(c,C)?[O]:[]),u=h.map(C=>l[C]),d=Math.max(...u.map(C=>Math.hypot(C[0]-u[0][0],C[1]-u[0][1])));if(!h.length||d>26)return;let f=Math.max(30,Math.min(58,Math.min(e.width,e.height)*.15)),[g,_]=l[t.station],m=n.contours.flatMap(C=>ai(C).map(O=>this.at(O))),p=(C,O)=>Math.min(...m.map(U=>Math.hypot(U[0]-C,U[1]-O)),C,O,e.width-C,e.height-O)-f,x=[];for(let C=1;C<8;C++)for(let O=1;O<8;O++)x.push([e.width*C/8,e.height*O/8]);let T=x.filter(([C,O])=>p(C,O)>4);if(!T.length)return;let[M,R]=T.reduce((C,O)=>Math.hypot(C[0]-g,C[1]-_)<=Math.hypot(O[0]-g,O[1]-_)?C:O),w=Math.max(2,Math.min(8,f*.9/Math.max(d,4))),y=C=>[M+(C[0]-g)*w,R+(C[1]-_)*w],b=Math.hypot(M-g,R-_),F=gt("g",{class:"plan-lens","data-finding":o.n},gt("path",{class:"tie",d:`M${Q(g)} ${Q(_)}L${Q(M-(M-g)/b*f)} ${Q(R-(R-_)/b*f)}`}),gt("circle",{class:"rim",cx:Q(M),cy:Q(R),r:Q(f)})),D=gt("g",{"clip-path":"url(#plan-lens-rim)"});F.append(gt("clipPath",{id:"plan-lens-rim"},gt("circle",{cx:Q(M),cy:Q(R),r:Q(f-1)})),D);for(let[C,O,U]of r.worst[s.id]??[]){let P=l.slice(C,(O+1<l.length?O+1:O)+1);s.closed&&O===l.length-1&&P.push(l[0]),D.append(gt("path",{class:`seam ${zo[U]}`,d:Vo(P.map(y),!1)})),U===3&&D.append(gt("path",{class:"seam broken-core",d:Vo(P.map(y),!1)}))}F.append(gt("text",{x:Q(M),y:Q(R+f+13),"text-anchor":"middle"},vt("{count} times larger",{count:Math.round(w)}))),this.cursor.append(F)}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>ai(r).forEach((a,l)=>{let[c,h]=this.at(a),u=Math.hypot(c-t,h-e);u<s&&(s=u,n={contour:o,station:l})})),this.walk.go(n,"plan")}},im=new WeakMap;function ai(i){let t=im.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),im.set(i,t)}return t}function Vo(i,t){return"M"+i.map(([e,n])=>`${Q(e)} ${Q(n)}`).join("L")+(t?"Z":"")}function $x(i,t,e,n){return`M${Q(i+e*9)} ${Q(t+n*9)}L${Q(i-n*3.4)} ${Q(t+e*3.4)}L${Q(i+n*3.4)} ${Q(t-e*3.4)}Z`}function qx(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var fu=class{isDrawn=!1;packed;sections=new Map;bare=new Map;constructor(t){this.packed=t.as_drawn?.sections??[]}shown(t,e){if(!this.isDrawn)return e;let n=`${t}/${e.contour.id}`;if(!this.sections.has(n)){let s=this.packed.find(r=>r.joint===t&&r.contour===e.contour.id);this.sections.set(n,s?new Pr(s):null)}return this.bare.has(e.contour)||this.bare.set(e.contour,Yx(e.contour)),{facts:{...e.facts,drop:null},contour:this.bare.get(e.contour),sections:this.sections.get(n),findings:[]}}wire(t){let e=pe("proposed-switch");if(!e||!this.packed.length)return;e.hidden=!1;let n=[[vt("as proposed"),!1],[vt("as drawn"),!0]],s=n.map(([r,o])=>{let a=$t("button",{type:"button","aria-pressed":String(!o)},r);return a.addEventListener("click",()=>{this.isDrawn=o,s.forEach((l,c)=>l.setAttribute("aria-pressed",String(n[c][1]===o))),t()}),a});e.append(...s)}};function Yx(i){let{s:t,x:e,y:n,z:s,u:r}=i.stations,o=t.map(()=>null),a=Object.keys(i.stations).filter(c=>!["s","x","y","z","u"].includes(c)),l={s:t,x:e,y:n,z:s,u:r};for(let c of a)l[c]=o;return{...i,stations:l}}var ul=i=>(du.has(i)||du.set(i,new fu(i.payload)),du.get(i)),du=new WeakMap;var Xs={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},$s={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},Lm=0,Gu=1,Dm=2;var ya=1,Nm=2,po=3,Ni=0,Ln=1,Jn=2,fr=0,mo=1,Hu=2,Wu=3,Xu=4,Um=5;var pr=100,Fm=101,Om=102,Bm=103,km=104,zm=200,Vm=201,Gm=202,Hm=203,$u=204,qu=205,Wm=206,Xm=207,$m=208,qm=209,Ym=210,Zm=211,Jm=212,jm=213,Km=214,Fl=0,Ol=1,Bl=2,io=3,kl=4,zl=5,Vl=6,Gl=7,pc=0,Qm=1,tg=2,Ji=0,Yu=1,Zu=2,Ju=3,ju=4,Ku=5,Qu=6,td=7;var ed=300,mr=301,go=302,mc=303,gc=304,Hl=1e3,Yi=1001,Wl=1002,Rn=1003,eg=1004;var va=1005;var Zn=1006,_c=1007;var ys=1008;var Kn=1009,nd=1010,id=1011,_o=1012,xc=1013,Ui=1014,Fi=1015,Oi=1016,yc=1017,vc=1018,gr=1020,sd=35902,rd=35899,od=1021,ad=1022,Bi=1023,ps=1026,vs=1027,ld=1028,Mc=1029,qs=1030,bc=1031;var Sc=1033,Ma=33776,ba=33777,Sa=33778,wa=33779,wc=35840,Ec=35841,Tc=35842,Ac=35843,Rc=36196,Cc=37492,Pc=37496,Ic=37488,Lc=37489,Ea=37490,Dc=37491,Nc=37808,Uc=37809,Fc=37810,Oc=37811,Bc=37812,kc=37813,zc=37814,Vc=37815,Gc=37816,Hc=37817,Wc=37818,Xc=37819,$c=37820,qc=37821,Yc=36492,Zc=36494,Jc=36495,jc=36283,Kc=36284,Ta=36285,Qc=36286;var Jo=2300,Xl=2301,Nl=2302,Uu=2303,Fu=2400,Ou=2401,Bu=2402;var ng=3200;var th=0,ig=1,Ms="",hi="srgb",jo="srgb-linear",Ko="linear",Ce="srgb";var Ul=7680;var sg=519,rg=512,og=513,ag=514,cd=515,lg=516,cg=517,hd=518,ud=519,hg=35044;var dd="300 es",Mi=2e3,so=2001;function Zx(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function Jx(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function Qo(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function ug(){let i=Qo("canvas");return i.style.display="block",i}var sm={},ro=null;function fd(...i){let t="THREE."+i.shift();ro?ro("log",t,...i):console.log(t,...i)}function dg(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Zt(...i){i=dg(i);let t="THREE."+i.shift();if(ro)ro("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ne(...i){i=dg(i);let t="THREE."+i.shift();if(ro)ro("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function qo(...i){let t=i.join(" ");t in sm||(sm[t]=!0,Zt(...i))}function fg(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var pg={[Fl]:Fl,[Bl]:Vl,[kl]:kl,[io]:zl,[Ol]:Ol,[Vl]:Bl,[Gl]:Gl,[zl]:io},Di=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Un=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],rm=1234567,Yo=Math.PI/180,oo=180/Math.PI;function xo(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Un[i&255]+Un[i>>8&255]+Un[i>>16&255]+Un[i>>24&255]+"-"+Un[t&255]+Un[t>>8&255]+"-"+Un[t>>16&15|64]+Un[t>>24&255]+"-"+Un[e&63|128]+Un[e>>8&255]+"-"+Un[e>>16&255]+Un[e>>24&255]+Un[n&255]+Un[n>>8&255]+Un[n>>16&255]+Un[n>>24&255]).toLowerCase()}function _e(i,t,e){return Math.max(t,Math.min(e,i))}function pd(i,t){return(i%t+t)%t}function jx(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function Kx(i,t,e){return i!==t?(e-i)/(t-i):0}function Zo(i,t,e){return(1-e)*i+e*t}function Qx(i,t,e,n){return Zo(i,t,1-Math.exp(-e*n))}function ty(i,t=1){return t-Math.abs(pd(i,t*2)-t)}function ey(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function ny(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function iy(i,t){return i+Math.floor(Math.random()*(t-i+1))}function sy(i,t){return i+Math.random()*(t-i)}function ry(i){return i*(.5-Math.random())}function oy(i){i!==void 0&&(rm=i);let t=rm+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function ay(i){return i*Yo}function ly(i){return i*oo}function cy(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function hy(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function md(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function uy(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),l=o(e/2),c=r((t+n)/2),h=o((t+n)/2),u=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*h,l*u,l*d,a*c);break;case"YZY":i.set(l*d,a*h,l*u,a*c);break;case"ZXZ":i.set(l*u,l*d,a*h,a*c);break;case"XZX":i.set(a*h,l*g,l*f,a*c);break;case"YXY":i.set(l*f,a*h,l*g,a*c);break;case"ZYZ":i.set(l*g,l*f,a*h,a*c);break;default:Zt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function gd(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function mg(i,t){if(t.constructor===Float32Array)return i;let e=gd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function gg(i,t){if(t.constructor===Float32Array)return i;let e=gd(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var _d={DEG2RAD:Yo,RAD2DEG:oo,generateUUID:xo,clamp:_e,euclideanModulo:pd,mapLinear:jx,inverseLerp:Kx,lerp:Zo,damp:Qx,pingpong:ty,smoothstep:ey,smootherstep:ny,randInt:iy,randFloat:sy,randFloatSpread:ry,seededRandom:oy,degToRad:ay,radToDeg:ly,isPowerOfTwo:cy,ceilPowerOfTwo:hy,floorPowerOfTwo:md,setQuaternionFromProperEuler:uy,normalize:gg,denormalize:mg},ie=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},ui=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let l=n[s+0],c=n[s+1],h=n[s+2],u=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],_=r[o+3];if(u!==_||l!==d||c!==f||h!==g){let m=l*d+c*f+h*g+u*_;m<0&&(d=-d,f=-f,g=-g,_=-_,m=-m);let p=1-a;if(m<.9995){let x=Math.acos(m),T=Math.sin(x);p=Math.sin(p*x)/T,a=Math.sin(a*x)/T,l=l*p+d*a,c=c*p+f*a,h=h*p+g*a,u=u*p+_*a}else{l=l*p+d*a,c=c*p+f*a,h=h*p+g*a,u=u*p+_*a;let x=1/Math.sqrt(l*l+c*c+h*h+u*u);l*=x,c*=x,h*=x,u*=x}}t[e]=l,t[e+1]=c,t[e+2]=h,t[e+3]=u}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],l=n[s+1],c=n[s+2],h=n[s+3],u=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+h*u+l*f-c*d,t[e+1]=l*g+h*d+c*u-a*f,t[e+2]=c*g+h*f+a*d-l*u,t[e+3]=h*g-a*u-l*d-c*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(n/2),h=a(s/2),u=a(r/2),d=l(n/2),f=l(s/2),g=l(r/2);switch(o){case"XYZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"YXZ":this._x=d*h*u+c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"ZXY":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u-d*f*g;break;case"ZYX":this._x=d*h*u-c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u+d*f*g;break;case"YZX":this._x=d*h*u+c*f*g,this._y=c*f*u+d*h*g,this._z=c*h*g-d*f*u,this._w=c*h*u-d*f*g;break;case"XZY":this._x=d*h*u-c*f*g,this._y=c*f*u-d*h*g,this._z=c*h*g+d*f*u,this._w=c*h*u+d*f*g;break;default:Zt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],l=e[9],c=e[2],h=e[6],u=e[10],d=n+a+u;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(o-s)*f}else if(n>a&&n>u){let f=2*Math.sqrt(1+n-a-u);this._w=(h-l)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+c)/f}else if(a>u){let f=2*Math.sqrt(1+a-n-u);this._w=(r-c)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+u-n-a);this._w=(o-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(_e(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,l=e._y,c=e._z,h=e._w;return this._x=n*h+o*a+s*c-r*l,this._y=s*h+o*l+r*a-n*c,this._z=r*h+o*c+n*l-s*a,this._w=o*h-n*a-s*l-r*c,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let l=1-e;if(a<.9995){let c=Math.acos(a),h=Math.sin(c);l=Math.sin(l*c)/h,e=Math.sin(e*c)/h,this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this._onChangeCallback()}else this._x=this._x*l+n*e,this._y=this._y*l+s*e,this._z=this._z*l+r*e,this._w=this._w*l+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},W=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(om.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(om.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*s-a*n),h=2*(a*e-r*s),u=2*(r*n-o*e);return this.x=e+l*c+o*u-a*h,this.y=n+l*h+a*c-r*u,this.z=s+l*u+r*h-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,l=e.z;return this.x=s*l-r*a,this.y=r*o-n*l,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return pu.copy(this).projectOnVector(t),this.sub(pu)}reflect(t){return this.sub(pu.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(_e(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},pu=new W,om=new ui,se=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c)}set(t,e,n,s,r,o,a,l,c){let h=this.elements;return h[0]=t,h[1]=s,h[2]=a,h[3]=e,h[4]=r,h[5]=l,h[6]=n,h[7]=o,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],l=n[6],c=n[1],h=n[4],u=n[7],d=n[2],f=n[5],g=n[8],_=s[0],m=s[3],p=s[6],x=s[1],T=s[4],M=s[7],R=s[2],w=s[5],y=s[8];return r[0]=o*_+a*x+l*R,r[3]=o*m+a*T+l*w,r[6]=o*p+a*M+l*y,r[1]=c*_+h*x+u*R,r[4]=c*m+h*T+u*w,r[7]=c*p+h*M+u*y,r[2]=d*_+f*x+g*R,r[5]=d*m+f*T+g*w,r[8]=d*p+f*M+g*y,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8];return e*o*h-e*a*c-n*r*h+n*a*l+s*r*c-s*o*l}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=h*o-a*c,d=a*l-h*r,f=c*r-o*l,g=e*u+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let _=1/g;return t[0]=u*_,t[1]=(s*c-h*n)*_,t[2]=(a*n-s*o)*_,t[3]=d*_,t[4]=(h*e-s*l)*_,t[5]=(s*r-a*e)*_,t[6]=f*_,t[7]=(n*l-c*e)*_,t[8]=(o*e-n*r)*_,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*o+c*a)+o+t,-s*c,s*l,-s*(-c*o+l*a)+a+e,0,0,1),this}scale(t,e){return qo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(mu.makeScale(t,e)),this}rotate(t){return qo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(mu.makeRotation(-t)),this}translate(t,e){return qo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(mu.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},mu=new se,am=new se().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),lm=new se().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function dy(){let i={enabled:!0,workingColorSpace:jo,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Ce&&(s.r=fs(s.r),s.g=fs(s.g),s.b=fs(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Ce&&(s.r=no(s.r),s.g=no(s.g),s.b=no(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===Ms?Ko:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[jo]:{primaries:t,whitePoint:n,transfer:Ko,toXYZ:am,fromXYZ:lm,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:hi},outputColorSpaceConfig:{drawingBufferColorSpace:hi}},[hi]:{primaries:t,whitePoint:n,transfer:Ce,toXYZ:am,fromXYZ:lm,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:hi}}}),i}var Me=dy();function fs(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function no(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Hr,$l=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Hr===void 0&&(Hr=Qo("canvas")),Hr.width=t.width,Hr.height=t.height;let s=Hr.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Hr}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=Qo("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=fs(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(fs(e[n]/255)*255):e[n]=fs(e[n]);return{data:e,width:t.width,height:t.height}}else return Zt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},fy=0,ao=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:fy++}),this.uuid=xo(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(gu(s[o].image)):r.push(gu(s[o]))}else r=gu(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function gu(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?$l.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Zt("Texture: Unable to serialize Texture."),{})}var py=0,_u=new W,jn=class i extends Di{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Yi,s=Yi,r=Zn,o=ys,a=Bi,l=Kn,c=i.DEFAULT_ANISOTROPY,h=Ms){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:py++}),this.uuid=xo(),this.name="",this.source=new ao(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new ie(0,0),this.repeat=new ie(1,1),this.center=new ie(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new se,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(_u).x}get height(){return this.source.getSize(_u).y}get depth(){return this.source.getSize(_u).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Zt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Zt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==ed)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case Hl:t.x=t.x-Math.floor(t.x);break;case Yi:t.x=t.x<0?0:1;break;case Wl:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case Hl:t.y=t.y-Math.floor(t.y);break;case Yi:t.y=t.y<0?0:1;break;case Wl:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};jn.DEFAULT_IMAGE=null;jn.DEFAULT_MAPPING=ed;jn.DEFAULT_ANISOTROPY=1;var Ye=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,l=t.elements,c=l[0],h=l[4],u=l[8],d=l[1],f=l[5],g=l[9],_=l[2],m=l[6],p=l[10];if(Math.abs(h-d)<.01&&Math.abs(u-_)<.01&&Math.abs(g-m)<.01){if(Math.abs(h+d)<.1&&Math.abs(u+_)<.1&&Math.abs(g+m)<.1&&Math.abs(c+f+p-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let T=(c+1)/2,M=(f+1)/2,R=(p+1)/2,w=(h+d)/4,y=(u+_)/4,b=(g+m)/4;return T>M&&T>R?T<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(T),s=w/n,r=y/n):M>R?M<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(M),n=w/s,r=b/s):R<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(R),n=y/r,s=b/r),this.set(n,s,r,e),this}let x=Math.sqrt((m-g)*(m-g)+(u-_)*(u-_)+(d-h)*(d-h));return Math.abs(x)<.001&&(x=1),this.x=(m-g)/x,this.y=(u-_)/x,this.z=(d-h)/x,this.w=Math.acos((c+f+p-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=_e(this.x,t.x,e.x),this.y=_e(this.y,t.y,e.y),this.z=_e(this.z,t.z,e.z),this.w=_e(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=_e(this.x,t,e),this.y=_e(this.y,t,e),this.z=_e(this.z,t,e),this.w=_e(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(_e(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},ql=class extends Di{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Zn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new Ye(0,0,t,e),this.scissorTest=!1,this.viewport=new Ye(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new jn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Zn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new ao(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},di=class extends ql{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},ta=class extends jn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Rn,this.minFilter=Rn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Yl=class extends jn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=Rn,this.minFilter=Rn,this.wrapR=Yi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Xe=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,m){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,m)}set(t,e,n,s,r,o,a,l,c,h,u,d,f,g,_,m){let p=this.elements;return p[0]=t,p[4]=e,p[8]=n,p[12]=s,p[1]=r,p[5]=o,p[9]=a,p[13]=l,p[2]=c,p[6]=h,p[10]=u,p[14]=d,p[3]=f,p[7]=g,p[11]=_,p[15]=m,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Wr.setFromMatrixColumn(t,0).length(),r=1/Wr.setFromMatrixColumn(t,1).length(),o=1/Wr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),u=Math.sin(r);if(t.order==="XYZ"){let d=o*h,f=o*u,g=a*h,_=a*u;e[0]=l*h,e[4]=-l*u,e[8]=c,e[1]=f+g*c,e[5]=d-_*c,e[9]=-a*l,e[2]=_-d*c,e[6]=g+f*c,e[10]=o*l}else if(t.order==="YXZ"){let d=l*h,f=l*u,g=c*h,_=c*u;e[0]=d+_*a,e[4]=g*a-f,e[8]=o*c,e[1]=o*u,e[5]=o*h,e[9]=-a,e[2]=f*a-g,e[6]=_+d*a,e[10]=o*l}else if(t.order==="ZXY"){let d=l*h,f=l*u,g=c*h,_=c*u;e[0]=d-_*a,e[4]=-o*u,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*h,e[9]=_-d*a,e[2]=-o*c,e[6]=a,e[10]=o*l}else if(t.order==="ZYX"){let d=o*h,f=o*u,g=a*h,_=a*u;e[0]=l*h,e[4]=g*c-f,e[8]=d*c+_,e[1]=l*u,e[5]=_*c+d,e[9]=f*c-g,e[2]=-c,e[6]=a*l,e[10]=o*l}else if(t.order==="YZX"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*h,e[4]=_-d*u,e[8]=g*u+f,e[1]=u,e[5]=o*h,e[9]=-a*h,e[2]=-c*h,e[6]=f*u+g,e[10]=d-_*u}else if(t.order==="XZY"){let d=o*l,f=o*c,g=a*l,_=a*c;e[0]=l*h,e[4]=-u,e[8]=c*h,e[1]=d*u+_,e[5]=o*h,e[9]=f*u-g,e[2]=g*u-f,e[6]=a*h,e[10]=_*u+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(my,t,gy)}lookAt(t,e,n){let s=this.elements;return li.subVectors(t,e),li.lengthSq()===0&&(li.z=1),li.normalize(),Ds.crossVectors(n,li),Ds.lengthSq()===0&&(Math.abs(n.z)===1?li.x+=1e-4:li.z+=1e-4,li.normalize(),Ds.crossVectors(n,li)),Ds.normalize(),dl.crossVectors(li,Ds),s[0]=Ds.x,s[4]=dl.x,s[8]=li.x,s[1]=Ds.y,s[5]=dl.y,s[9]=li.y,s[2]=Ds.z,s[6]=dl.z,s[10]=li.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],l=n[8],c=n[12],h=n[1],u=n[5],d=n[9],f=n[13],g=n[2],_=n[6],m=n[10],p=n[14],x=n[3],T=n[7],M=n[11],R=n[15],w=s[0],y=s[4],b=s[8],F=s[12],D=s[1],C=s[5],O=s[9],U=s[13],P=s[2],B=s[6],$=s[10],V=s[14],ot=s[3],X=s[7],Y=s[11],tt=s[15];return r[0]=o*w+a*D+l*P+c*ot,r[4]=o*y+a*C+l*B+c*X,r[8]=o*b+a*O+l*$+c*Y,r[12]=o*F+a*U+l*V+c*tt,r[1]=h*w+u*D+d*P+f*ot,r[5]=h*y+u*C+d*B+f*X,r[9]=h*b+u*O+d*$+f*Y,r[13]=h*F+u*U+d*V+f*tt,r[2]=g*w+_*D+m*P+p*ot,r[6]=g*y+_*C+m*B+p*X,r[10]=g*b+_*O+m*$+p*Y,r[14]=g*F+_*U+m*V+p*tt,r[3]=x*w+T*D+M*P+R*ot,r[7]=x*y+T*C+M*B+R*X,r[11]=x*b+T*O+M*$+R*Y,r[15]=x*F+T*U+M*V+R*tt,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],l=t[9],c=t[13],h=t[2],u=t[6],d=t[10],f=t[14],g=t[3],_=t[7],m=t[11],p=t[15],x=l*f-c*d,T=a*f-c*u,M=a*d-l*u,R=o*f-c*h,w=o*d-l*h,y=o*u-a*h;return e*(_*x-m*T+p*M)-n*(g*x-m*R+p*w)+s*(g*T-_*R+p*y)-r*(g*M-_*w+m*y)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],l=t[2],c=t[6],h=t[10];return e*(o*h-a*c)-n*(r*h-a*l)+s*(r*c-o*l)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],l=t[6],c=t[7],h=t[8],u=t[9],d=t[10],f=t[11],g=t[12],_=t[13],m=t[14],p=t[15],x=e*a-n*o,T=e*l-s*o,M=e*c-r*o,R=n*l-s*a,w=n*c-r*a,y=s*c-r*l,b=h*_-u*g,F=h*m-d*g,D=h*p-f*g,C=u*m-d*_,O=u*p-f*_,U=d*p-f*m,P=x*U-T*O+M*C+R*D-w*F+y*b;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let B=1/P;return t[0]=(a*U-l*O+c*C)*B,t[1]=(s*O-n*U-r*C)*B,t[2]=(_*y-m*w+p*R)*B,t[3]=(d*w-u*y-f*R)*B,t[4]=(l*D-o*U-c*F)*B,t[5]=(e*U-s*D+r*F)*B,t[6]=(m*M-g*y-p*T)*B,t[7]=(h*y-d*M+f*T)*B,t[8]=(o*O-a*D+c*b)*B,t[9]=(n*D-e*O-r*b)*B,t[10]=(g*w-_*M+p*x)*B,t[11]=(u*M-h*w-f*x)*B,t[12]=(a*F-o*C-l*b)*B,t[13]=(e*C-n*F+s*b)*B,t[14]=(_*T-g*R-m*x)*B,t[15]=(h*R-u*T+d*x)*B,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,l=t.z,c=r*o,h=r*a;return this.set(c*o+n,c*a-s*l,c*l+s*a,0,c*a+s*l,h*a+n,h*l-s*o,0,c*l-s*a,h*l+s*o,r*l*l+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,l=e._w,c=r+r,h=o+o,u=a+a,d=r*c,f=r*h,g=r*u,_=o*h,m=o*u,p=a*u,x=l*c,T=l*h,M=l*u,R=n.x,w=n.y,y=n.z;return s[0]=(1-(_+p))*R,s[1]=(f+M)*R,s[2]=(g-T)*R,s[3]=0,s[4]=(f-M)*w,s[5]=(1-(d+p))*w,s[6]=(m+x)*w,s[7]=0,s[8]=(g+T)*y,s[9]=(m-x)*y,s[10]=(1-(d+_))*y,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Wr.set(s[0],s[1],s[2]).length(),a=Wr.set(s[4],s[5],s[6]).length(),l=Wr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),Ci.copy(this);let c=1/o,h=1/a,u=1/l;return Ci.elements[0]*=c,Ci.elements[1]*=c,Ci.elements[2]*=c,Ci.elements[4]*=h,Ci.elements[5]*=h,Ci.elements[6]*=h,Ci.elements[8]*=u,Ci.elements[9]*=u,Ci.elements[10]*=u,e.setFromRotationMatrix(Ci),n.x=o,n.y=a,n.z=l,this}makePerspective(t,e,n,s,r,o,a=Mi,l=!1){let c=this.elements,h=2*r/(e-t),u=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,_;if(l)g=r/(o-r),_=o*r/(o-r);else if(a===Mi)g=-(o+r)/(o-r),_=-2*o*r/(o-r);else if(a===so)g=-o/(o-r),_=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=u,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=Mi,l=!1){let c=this.elements,h=2/(e-t),u=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,_;if(l)g=1/(o-r),_=o/(o-r);else if(a===Mi)g=-2/(o-r),_=-(o+r)/(o-r);else if(a===so)g=-1/(o-r),_=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=u,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=_,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Wr=new W,Ci=new Xe,my=new W(0,0,0),gy=new W(1,1,1),Ds=new W,dl=new W,li=new W,cm=new Xe,hm=new ui,ms=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],l=s[1],c=s[5],h=s[9],u=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(_e(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-_e(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-u,r),this._z=0);break;case"ZXY":this._x=Math.asin(_e(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-u,f),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-_e(u,-1,1)),Math.abs(u)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(_e(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-u,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-_e(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:Zt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return cm.makeRotationFromQuaternion(t),this.setFromRotationMatrix(cm,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return hm.setFromEuler(this),this.setFromQuaternion(hm,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ms.DEFAULT_ORDER="XYZ";var ea=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},_y=0,um=new W,Xr=new ui,ls=new Xe,fl=new W,Go=new W,xy=new W,yy=new ui,dm=new W(1,0,0),fm=new W(0,1,0),pm=new W(0,0,1),mm={type:"added"},vy={type:"removed"},$r={type:"childadded",child:null},xu={type:"childremoved",child:null},Bn=class i extends Di{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:_y++}),this.uuid=xo(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new W,e=new ms,n=new ui,s=new W(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Xe},normalMatrix:{value:new se}}),this.matrix=new Xe,this.matrixWorld=new Xe,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new ea,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Xr.setFromAxisAngle(t,e),this.quaternion.multiply(Xr),this}rotateOnWorldAxis(t,e){return Xr.setFromAxisAngle(t,e),this.quaternion.premultiply(Xr),this}rotateX(t){return this.rotateOnAxis(dm,t)}rotateY(t){return this.rotateOnAxis(fm,t)}rotateZ(t){return this.rotateOnAxis(pm,t)}translateOnAxis(t,e){return um.copy(t).applyQuaternion(this.quaternion),this.position.add(um.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(dm,t)}translateY(t){return this.translateOnAxis(fm,t)}translateZ(t){return this.translateOnAxis(pm,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(ls.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?fl.copy(t):fl.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Go.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ls.lookAt(Go,fl,this.up):ls.lookAt(fl,Go,this.up),this.quaternion.setFromRotationMatrix(ls),s&&(ls.extractRotation(s.matrixWorld),Xr.setFromRotationMatrix(ls),this.quaternion.premultiply(Xr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ne("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(mm),$r.child=t,this.dispatchEvent($r),$r.child=null):ne("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(vy),xu.child=t,this.dispatchEvent(xu),xu.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),ls.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),ls.multiply(t.parent.matrixWorld)),t.applyMatrix4(ls),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(mm),$r.child=t,this.dispatchEvent($r),$r.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Go,t,xy),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Go,yy,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let u=l[c];r(t.shapes,u)}else r(t.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(r(t.materials,this.material[l]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];s.animations.push(r(t.animations,l))}}if(e){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),h=o(t.images),u=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),u.length>0&&(n.shapes=u),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let l=[];for(let c in a){let h=a[c];delete h.metadata,l.push(h)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Bn.DEFAULT_UP=new W(0,1,0);Bn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Bn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Li=class extends Bn{constructor(){super(),this.isGroup=!0,this.type="Group"}},My={type:"move"},lo=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Li,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Li,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new W,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new W),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Li,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new W,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new W,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let _ of t.hand.values()){let m=e.getJointPose(_,n),p=this._getHandJoint(c,_);m!==null&&(p.matrix.fromArray(m.transform.matrix),p.matrix.decompose(p.position,p.quaternion,p.scale),p.matrixWorldNeedsUpdate=!0,p.jointRadius=m.radius),p.visible=m!==null}let h=c.joints["index-finger-tip"],u=c.joints["thumb-tip"],d=h.position.distanceTo(u.position),f=.02,g=.005;c.inputState.pinching&&d>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&d<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(My)))}return a!==null&&(a.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Li;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},_g={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ns={h:0,s:0,l:0},pl={h:0,s:0,l:0};function yu(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ae=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=hi){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,Me.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=Me.workingColorSpace){return this.r=t,this.g=e,this.b=n,Me.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=Me.workingColorSpace){if(t=pd(t,1),e=_e(e,0,1),n=_e(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=yu(o,r,t+1/3),this.g=yu(o,r,t),this.b=yu(o,r,t-1/3)}return Me.colorSpaceToWorking(this,s),this}setStyle(t,e=hi){function n(r){r!==void 0&&parseFloat(r)<1&&Zt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Zt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Zt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=hi){let n=_g[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Zt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=fs(t.r),this.g=fs(t.g),this.b=fs(t.b),this}copyLinearToSRGB(t){return this.r=no(t.r),this.g=no(t.g),this.b=no(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=hi){return Me.workingToColorSpace(Fn.copy(this),t),Math.round(_e(Fn.r*255,0,255))*65536+Math.round(_e(Fn.g*255,0,255))*256+Math.round(_e(Fn.b*255,0,255))}getHexString(t=hi){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=Me.workingColorSpace){Me.workingToColorSpace(Fn.copy(this),e);let n=Fn.r,s=Fn.g,r=Fn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),l,c,h=(a+o)/2;if(a===o)l=0,c=0;else{let u=o-a;switch(c=h<=.5?u/(o+a):u/(2-o-a),o){case n:l=(s-r)/u+(s<r?6:0);break;case s:l=(r-n)/u+2;break;case r:l=(n-s)/u+4;break}l/=6}return t.h=l,t.s=c,t.l=h,t}getRGB(t,e=Me.workingColorSpace){return Me.workingToColorSpace(Fn.copy(this),e),t.r=Fn.r,t.g=Fn.g,t.b=Fn.b,t}getStyle(t=hi){Me.workingToColorSpace(Fn.copy(this),t);let e=Fn.r,n=Fn.g,s=Fn.b;return t!==hi?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Ns),this.setHSL(Ns.h+t,Ns.s+e,Ns.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Ns),t.getHSL(pl);let n=Zo(Ns.h,pl.h,e),s=Zo(Ns.s,pl.s,e),r=Zo(Ns.l,pl.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Fn=new ae;ae.NAMES=_g;var na=class extends Bn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ms,this.environmentIntensity=1,this.environmentRotation=new ms,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},Pi=new W,cs=new W,vu=new W,hs=new W,qr=new W,Yr=new W,gm=new W,Mu=new W,bu=new W,Su=new W,wu=new Ye,Eu=new Ye,Tu=new Ye,Bs=class i{constructor(t=new W,e=new W,n=new W){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),Pi.subVectors(t,e),s.cross(Pi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){Pi.subVectors(s,e),cs.subVectors(n,e),vu.subVectors(t,e);let o=Pi.dot(Pi),a=Pi.dot(cs),l=Pi.dot(vu),c=cs.dot(cs),h=cs.dot(vu),u=o*c-a*a;if(u===0)return r.set(0,0,0),null;let d=1/u,f=(c*l-a*h)*d,g=(o*h-a*l)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,hs)===null?!1:hs.x>=0&&hs.y>=0&&hs.x+hs.y<=1}static getInterpolation(t,e,n,s,r,o,a,l){return this.getBarycoord(t,e,n,s,hs)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,hs.x),l.addScaledVector(o,hs.y),l.addScaledVector(a,hs.z),l)}static getInterpolatedAttribute(t,e,n,s,r,o){return wu.setScalar(0),Eu.setScalar(0),Tu.setScalar(0),wu.fromBufferAttribute(t,e),Eu.fromBufferAttribute(t,n),Tu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(wu,r.x),o.addScaledVector(Eu,r.y),o.addScaledVector(Tu,r.z),o}static isFrontFacing(t,e,n,s){return Pi.subVectors(n,e),cs.subVectors(t,e),Pi.cross(cs).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Pi.subVectors(this.c,this.b),cs.subVectors(this.a,this.b),Pi.cross(cs).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;qr.subVectors(s,n),Yr.subVectors(r,n),Mu.subVectors(t,n);let l=qr.dot(Mu),c=Yr.dot(Mu);if(l<=0&&c<=0)return e.copy(n);bu.subVectors(t,s);let h=qr.dot(bu),u=Yr.dot(bu);if(h>=0&&u<=h)return e.copy(s);let d=l*u-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return o=l/(l-h),e.copy(n).addScaledVector(qr,o);Su.subVectors(t,r);let f=qr.dot(Su),g=Yr.dot(Su);if(g>=0&&f<=g)return e.copy(r);let _=f*c-l*g;if(_<=0&&c>=0&&g<=0)return a=c/(c-g),e.copy(n).addScaledVector(Yr,a);let m=h*g-f*u;if(m<=0&&u-h>=0&&f-g>=0)return gm.subVectors(r,s),a=(u-h)/(u-h+(f-g)),e.copy(s).addScaledVector(gm,a);let p=1/(m+_+d);return o=_*p,a=d*p,e.copy(n).addScaledVector(qr,o).addScaledVector(Yr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},ks=class{constructor(t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ii.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ii.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ii.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ii):Ii.fromBufferAttribute(r,o),Ii.applyMatrix4(t.matrixWorld),this.expandByPoint(Ii);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),ml.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),ml.copy(n.boundingBox)),ml.applyMatrix4(t.matrixWorld),this.union(ml)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ii),Ii.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Ho),gl.subVectors(this.max,Ho),Zr.subVectors(t.a,Ho),Jr.subVectors(t.b,Ho),jr.subVectors(t.c,Ho),Us.subVectors(Jr,Zr),Fs.subVectors(jr,Jr),or.subVectors(Zr,jr);let e=[0,-Us.z,Us.y,0,-Fs.z,Fs.y,0,-or.z,or.y,Us.z,0,-Us.x,Fs.z,0,-Fs.x,or.z,0,-or.x,-Us.y,Us.x,0,-Fs.y,Fs.x,0,-or.y,or.x,0];return!Au(e,Zr,Jr,jr,gl)||(e=[1,0,0,0,1,0,0,0,1],!Au(e,Zr,Jr,jr,gl))?!1:(_l.crossVectors(Us,Fs),e=[_l.x,_l.y,_l.z],Au(e,Zr,Jr,jr,gl))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ii).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ii).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(us[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),us[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),us[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),us[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),us[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),us[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),us[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),us[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(us),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},us=[new W,new W,new W,new W,new W,new W,new W,new W],Ii=new W,ml=new ks,Zr=new W,Jr=new W,jr=new W,Us=new W,Fs=new W,or=new W,Ho=new W,gl=new W,_l=new W,ar=new W;function Au(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){ar.fromArray(i,r);let a=s.x*Math.abs(ar.x)+s.y*Math.abs(ar.y)+s.z*Math.abs(ar.z),l=t.dot(ar),c=e.dot(ar),h=n.dot(ar);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>a)return!1}return!0}var fn=new W,xl=new ie,by=0,On=class extends Di{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:by++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=hg,this.updateRanges=[],this.gpuType=Fi,this.version=0,this._normalizationScale=t!==void 0?gd(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)xl.fromBufferAttribute(this,e),xl.applyMatrix3(t),this.setXY(e,xl.x,xl.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix3(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyMatrix4(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.applyNormalMatrix(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)fn.fromBufferAttribute(this,e),fn.transformDirection(t),this.setXYZ(e,fn.x,fn.y,fn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):mg(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):gg(t,this.array)}};var ia=class extends On{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var sa=class extends On{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var In=class extends On{constructor(t,e,n){super(new Float32Array(t),e,n)}},Sy=new ks,Wo=new W,Ru=new W,hr=class{constructor(t=new W,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):Sy.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Wo.subVectors(t,this.center);let e=Wo.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Wo,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Ru.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Wo.copy(t.center).add(Ru)),this.expandByPoint(Wo.copy(t.center).sub(Ru))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},wy=0,vi=new Xe,Cu=new Bn,Kr=new W,ci=new ks,Xo=new ks,An=new W,kn=class i extends Di{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:wy++}),this.uuid=xo(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(Zx(t)?sa:ia)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new se().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return vi.makeRotationFromQuaternion(t),this.applyMatrix4(vi),this}rotateX(t){return vi.makeRotationX(t),this.applyMatrix4(vi),this}rotateY(t){return vi.makeRotationY(t),this.applyMatrix4(vi),this}rotateZ(t){return vi.makeRotationZ(t),this.applyMatrix4(vi),this}translate(t,e,n){return vi.makeTranslation(t,e,n),this.applyMatrix4(vi),this}scale(t,e,n){return vi.makeScale(t,e,n),this.applyMatrix4(vi),this}lookAt(t){return Cu.lookAt(t),Cu.updateMatrix(),this.applyMatrix4(Cu.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Kr).negate(),this.translate(Kr.x,Kr.y,Kr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new In(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Zt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new ks);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ne("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new W(-1/0,-1/0,-1/0),new W(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];ci.setFromBufferAttribute(r),this.morphTargetsRelative?(An.addVectors(this.boundingBox.min,ci.min),this.boundingBox.expandByPoint(An),An.addVectors(this.boundingBox.max,ci.max),this.boundingBox.expandByPoint(An)):(this.boundingBox.expandByPoint(ci.min),this.boundingBox.expandByPoint(ci.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ne('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new hr);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ne("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new W,1/0);return}if(t){let n=this.boundingSphere.center;if(ci.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Xo.setFromBufferAttribute(a),this.morphTargetsRelative?(An.addVectors(ci.min,Xo.min),ci.expandByPoint(An),An.addVectors(ci.max,Xo.max),ci.expandByPoint(An)):(ci.expandByPoint(Xo.min),ci.expandByPoint(Xo.max))}ci.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)An.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(An));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],l=this.morphTargetsRelative;for(let c=0,h=a.count;c<h;c++)An.fromBufferAttribute(a,c),l&&(Kr.fromBufferAttribute(t,c),An.add(Kr)),s=Math.max(s,n.distanceToSquared(An))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ne('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ne("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new On(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(n.count);for(let F=0;F<n.count;F++)a[F]=new W,l[F]=new W;let h=new W,u=new W,d=new W,f=new ie,g=new ie,_=new ie,m=new W,p=new W;function x(F,D,C){c[F]=c[D]=c[C]=1,h.fromBufferAttribute(n,F),u.fromBufferAttribute(n,D),d.fromBufferAttribute(n,C),f.fromBufferAttribute(r,F),g.fromBufferAttribute(r,D),_.fromBufferAttribute(r,C),u.sub(h),d.sub(h),g.sub(f),_.sub(f);let O=1/(g.x*_.y-_.x*g.y);isFinite(O)&&(m.copy(u).multiplyScalar(_.y).addScaledVector(d,-g.y).multiplyScalar(O),p.copy(d).multiplyScalar(g.x).addScaledVector(u,-_.x).multiplyScalar(O),a[F].add(m),a[D].add(m),a[C].add(m),l[F].add(p),l[D].add(p),l[C].add(p))}let T=this.groups;T.length===0&&(T=[{start:0,count:t.count}]);for(let F=0,D=T.length;F<D;++F){let C=T[F],O=C.start,U=C.count;for(let P=O,B=O+U;P<B;P+=3)x(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let M=new W,R=new W,w=new W,y=new W;function b(F){w.fromBufferAttribute(s,F),y.copy(w);let D=a[F];M.copy(D),M.sub(w.multiplyScalar(w.dot(D))).normalize(),R.crossVectors(y,D);let O=R.dot(l[F])<0?-1:1;o.setXYZW(F,M.x,M.y,M.z,O)}for(let F=0,D=n.count;F<D;++F)c[F]&&b(F);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new On(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new W,r=new W,o=new W,a=new W,l=new W,c=new W,h=new W,u=new W;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),_=t.getX(d+1),m=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,_),o.fromBufferAttribute(e,m),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),a.fromBufferAttribute(n,g),l.fromBufferAttribute(n,_),c.fromBufferAttribute(n,m),a.add(h),l.add(h),c.add(h),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(_,l.x,l.y,l.z),n.setXYZ(m,c.x,c.y,c.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),h.subVectors(o,r),u.subVectors(s,r),h.cross(u),n.setXYZ(d+0,h.x,h.y,h.z),n.setXYZ(d+1,h.x,h.y,h.z),n.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)An.fromBufferAttribute(t,e),An.normalize(),t.setXYZ(e,An.x,An.y,An.z)}toNonIndexed(){function t(a,l){let c=a.array,h=a.itemSize,u=a.normalized,d=new c.constructor(l.length*h),f=0,g=0;for(let _=0,m=l.length;_<m;_++){a.isInterleavedBufferAttribute?f=l[_]*a.data.stride+a.offset:f=l[_]*h;for(let p=0;p<h;p++)d[g++]=c[f++]}return new On(d,h,u)}if(this.index===null)return Zt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let l=s[a],c=t(l,n);e.setAttribute(a,c)}let r=this.morphAttributes;for(let a in r){let l=[],c=r[a];for(let h=0,u=c.length;h<u;h++){let d=c[h],f=t(d,n);l.push(f)}e.morphAttributes[a]=l}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];e.addGroup(c.start,c.count,c.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let l in n){let c=n[l];t.data.attributes[l]=c.toJSON(t.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let u=0,d=c.length;u<d;u++){let f=c[u];h.push(f.toJSON(t.data))}h.length>0&&(s[l]=h,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(e))}let r=t.morphAttributes;for(let c in r){let h=[],u=r[c];for(let d=0,f=u.length;d<f;d++)h.push(u[d].clone(e));this.morphAttributes[c]=h}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,h=o.length;c<h;c++){let u=o[c];this.addGroup(u.start,u.count,u.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var Pu=new W,Ey=new W,Ty=new se,qn=class{constructor(t=new W(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=Pu.subVectors(n,e).cross(Ey.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(Pu),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Ty.getNormalMatrix(t),s=this.coplanarPoint(Pu).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},Ay=0,gs=class extends Di{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Ay++}),this.uuid=xo(),this.name="",this.type="Material",this.blending=mo,this.side=Ni,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=$u,this.blendDst=qu,this.blendEquation=pr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ae(0,0,0),this.blendAlpha=0,this.depthFunc=io,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=sg,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Ul,this.stencilZFail=Ul,this.stencilZPass=Ul,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Zt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Zt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let l=r[a];delete l.metadata,o.push(l)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ae().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new qn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ie().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ie().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ds=new W,Iu=new W,yl=new W,vl=new W,ur=class{constructor(t=new W,e=new W(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ds)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=ds.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(ds.copy(this.origin).addScaledVector(this.direction,e),ds.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){Iu.copy(t).add(e).multiplyScalar(.5),yl.copy(e).sub(t).normalize(),vl.copy(this.origin).sub(Iu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(yl),a=vl.dot(this.direction),l=-vl.dot(yl),c=vl.lengthSq(),h=Math.abs(1-o*o),u,d,f,g;if(h>0)if(u=o*l-a,d=o*a-l,g=r*h,u>=0)if(d>=-g)if(d<=g){let _=1/h;u*=_,d*=_,f=u*(u+o*d+2*a)+d*(o*u+d+2*l)+c}else d=r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d=-r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;else d<=-g?(u=Math.max(0,-(-o*r+a)),d=u>0?-r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c):d<=g?(u=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(u=Math.max(0,-(o*r+a)),d=u>0?r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c);else d=o>0?-r:r,u=Math.max(0,-(o*d+a)),f=-u*u+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,u),s&&s.copy(Iu).addScaledVector(yl,d),f}intersectSphere(t,e){if(t.radius<0)return null;ds.subVectors(t.center,this.origin);let n=ds.dot(this.direction),s=ds.dot(ds)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,l=n+o;return l<0?null:a<0?this.at(l,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,l,c=1/this.direction.x,h=1/this.direction.y,u=1/this.direction.z,d=this.origin;return c>=0?(n=(t.min.x-d.x)*c,s=(t.max.x-d.x)*c):(n=(t.max.x-d.x)*c,s=(t.min.x-d.x)*c),h>=0?(r=(t.min.y-d.y)*h,o=(t.max.y-d.y)*h):(r=(t.max.y-d.y)*h,o=(t.min.y-d.y)*h),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),u>=0?(a=(t.min.z-d.z)*u,l=(t.max.z-d.z)*u):(a=(t.max.z-d.z)*u,l=(t.min.z-d.z)*u),n>l||a>s)||((a>n||n!==n)&&(n=a),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,ds)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,l=a.x,c=a.y,h=a.z,u=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,_=e.y-o.y,m=e.z-o.z,p=n.x-o.x,x=n.y-o.y,T=n.z-o.z,M=Math.abs(l),R=Math.abs(c),w=Math.abs(h),y,b,F,D,C,O,U,P,B,$,V,ot;if(M>=R&&M>=w?(F=l,O=u,B=g,ot=p,l>=0?(y=c,b=h,D=d,C=f,U=_,P=m,$=x,V=T):(y=h,b=c,D=f,C=d,U=m,P=_,$=T,V=x)):R>=w?(F=c,O=d,B=_,ot=x,c>=0?(y=h,b=l,D=f,C=u,U=m,P=g,$=T,V=p):(y=l,b=h,D=u,C=f,U=g,P=m,$=p,V=T)):(F=h,O=f,B=m,ot=T,h>=0?(y=l,b=c,D=u,C=d,U=g,P=_,$=p,V=x):(y=c,b=l,D=d,C=u,U=_,P=g,$=x,V=p)),F===0)return null;let X=y/F,Y=b/F,tt=1/F,nt=D-X*O,at=C-Y*O,J=U-X*B,mt=P-Y*B,ct=$-X*ot,pt=V-Y*ot,xt=ct*mt-pt*J,Wt=nt*pt-at*ct,Kt=J*at-mt*nt;if(s){if(xt<0||Wt<0||Kt<0)return null}else if((xt<0||Wt<0||Kt<0)&&(xt>0||Wt>0||Kt>0))return null;let Gt=xt+Wt+Kt;if(Gt===0)return null;let fe=tt*(xt*O+Wt*B+Kt*ot);return(Gt>0?fe<0:fe>0)?null:this.at(fe/Gt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},_s=class extends gs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=pc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},_m=new Xe,lr=new ur,Ml=new hr,xm=new W,bl=new W,Sl=new W,wl=new W,Lu=new W,El=new W,ym=new W,Tl=new W,Cn=class extends Bn{constructor(t=new kn,e=new _s){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){El.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=a[l],u=r[l];h!==0&&(Lu.fromBufferAttribute(u,t),o?El.addScaledVector(Lu,h):El.addScaledVector(Lu.sub(e),h))}e.add(El)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),Ml.copy(n.boundingSphere),Ml.applyMatrix4(r),lr.copy(t.ray).recast(t.near),!(Ml.containsPoint(lr.origin)===!1&&(lr.intersectSphere(Ml,xm)===null||lr.origin.distanceToSquared(xm)>(t.far-t.near)**2))&&(_m.copy(r).invert(),lr.copy(t.ray).applyMatrix4(_m),!(n.boundingBox!==null&&lr.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,lr)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,u=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let m=d[g],p=o[m.materialIndex],x=Math.max(m.start,f.start),T=Math.min(a.count,Math.min(m.start+m.count,f.start+f.count));for(let M=x,R=T;M<R;M+=3){let w=a.getX(M),y=a.getX(M+1),b=a.getX(M+2);s=Al(this,p,t,n,c,h,u,w,y,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=m.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(a.count,f.start+f.count);for(let m=g,p=_;m<p;m+=3){let x=a.getX(m),T=a.getX(m+1),M=a.getX(m+2);s=Al(this,o,t,n,c,h,u,x,T,M),s&&(s.faceIndex=Math.floor(m/3),e.push(s))}}else if(l!==void 0)if(Array.isArray(o))for(let g=0,_=d.length;g<_;g++){let m=d[g],p=o[m.materialIndex],x=Math.max(m.start,f.start),T=Math.min(l.count,Math.min(m.start+m.count,f.start+f.count));for(let M=x,R=T;M<R;M+=3){let w=M,y=M+1,b=M+2;s=Al(this,p,t,n,c,h,u,w,y,b),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=m.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),_=Math.min(l.count,f.start+f.count);for(let m=g,p=_;m<p;m+=3){let x=m,T=m+1,M=m+2;s=Al(this,o,t,n,c,h,u,x,T,M),s&&(s.faceIndex=Math.floor(m/3),e.push(s))}}}};function Ry(i,t,e,n,s,r,o,a){let l;if(t.side===Ln?l=n.intersectTriangle(o,r,s,!0,a):l=n.intersectTriangle(s,r,o,t.side===Ni,a),l===null)return null;Tl.copy(a),Tl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(Tl);return c<e.near||c>e.far?null:{distance:c,point:Tl.clone(),object:i}}function Al(i,t,e,n,s,r,o,a,l,c){i.getVertexPosition(a,bl),i.getVertexPosition(l,Sl),i.getVertexPosition(c,wl);let h=Ry(i,t,e,n,bl,Sl,wl,ym);if(h){let u=new W;Bs.getBarycoord(ym,bl,Sl,wl,u),s&&(h.uv=Bs.getInterpolatedAttribute(s,a,l,c,u,new ie)),r&&(h.uv1=Bs.getInterpolatedAttribute(r,a,l,c,u,new ie)),o&&(h.normal=Bs.getInterpolatedAttribute(o,a,l,c,u,new W),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let d={a,b:l,c,normal:new W,materialIndex:0};Bs.getNormal(bl,Sl,wl,d.normal),h.face=d,h.barycoord=u}return h}var Zl=class extends jn{constructor(t=null,e=1,n=1,s,r,o,a,l,c=Rn,h=Rn,u,d){super(null,o,a,l,c,h,s,r,u,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var cr=new hr,Cy=new ie(.5,.5),Rl=new W,zs=class{constructor(t=new qn,e=new qn,n=new qn,s=new qn,r=new qn,o=new qn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=Mi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],l=r[2],c=r[3],h=r[4],u=r[5],d=r[6],f=r[7],g=r[8],_=r[9],m=r[10],p=r[11],x=r[12],T=r[13],M=r[14],R=r[15];if(s[0].setComponents(c-o,f-h,p-g,R-x).normalize(),s[1].setComponents(c+o,f+h,p+g,R+x).normalize(),s[2].setComponents(c+a,f+u,p+_,R+T).normalize(),s[3].setComponents(c-a,f-u,p-_,R-T).normalize(),n)s[4].setComponents(l,d,m,M).normalize(),s[5].setComponents(c-l,f-d,p-m,R-M).normalize();else if(s[4].setComponents(c-l,f-d,p-m,R-M).normalize(),e===Mi)s[5].setComponents(c+l,f+d,p+m,R+M).normalize();else if(e===so)s[5].setComponents(l,d,m,M).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),cr.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),cr.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(cr)}intersectsSprite(t){cr.center.set(0,0,0);let e=Cy.distanceTo(t.center);return cr.radius=.7071067811865476+e,cr.applyMatrix4(t.matrixWorld),this.intersectsSphere(cr)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(Rl.x=s.normal.x>0?t.max.x:t.min.x,Rl.y=s.normal.y>0?t.max.y:t.min.y,Rl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(Rl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},vm=new Xe,Jl=class i{constructor(){this.coordinateSystem=Mi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];vm.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new zs),n[s].setFromProjectionMatrix(vm,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new zs),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Vs=class extends gs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ae(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},jl=new W,Kl=new W,Mm=new Xe,$o=new ur,Cl=new hr,Du=new W,bm=new W,ra=class extends Bn{constructor(t=new kn,e=new Vs){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)jl.fromBufferAttribute(e,s-1),Kl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=jl.distanceTo(Kl);t.setAttribute("lineDistance",new In(n,1))}else Zt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Cl.copy(n.boundingSphere),Cl.applyMatrix4(s),Cl.radius+=r,t.ray.intersectsSphere(Cl)===!1)return;Mm.copy(s).invert(),$o.copy(t.ray).applyMatrix4(Mm);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,h=n.index,d=n.attributes.position;if(h!==null){let f=Math.max(0,o.start),g=Math.min(h.count,o.start+o.count);for(let _=f,m=g-1;_<m;_+=c){let p=h.getX(_),x=h.getX(_+1),T=Pl(this,t,$o,l,p,x,_);T&&e.push(T)}if(this.isLineLoop){let _=h.getX(g-1),m=h.getX(f),p=Pl(this,t,$o,l,_,m,g-1);p&&e.push(p)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let _=f,m=g-1;_<m;_+=c){let p=Pl(this,t,$o,l,_,_+1,_);p&&e.push(p)}if(this.isLineLoop){let _=Pl(this,t,$o,l,g-1,f,g-1);_&&e.push(_)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function Pl(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(jl.fromBufferAttribute(a,s),Kl.fromBufferAttribute(a,r),e.distanceSqToSegment(jl,Kl,Du,bm)>n)return;Du.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Du);if(!(c<t.near||c>t.far))return{distance:c,point:bm.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Sm=new W,wm=new W,co=class extends ra{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Sm.fromBufferAttribute(e,s),wm.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Sm.distanceTo(wm);t.setAttribute("lineDistance",new In(n,1))}else Zt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},oa=class extends ra{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var aa=class extends jn{constructor(t=[],e=mr,n,s,r,o,a,l,c,h){super(t,e,n,s,r,o,a,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var xs=class extends jn{constructor(t,e,n=Ui,s,r,o,a=Rn,l=Rn,c,h=ps,u=1){if(h!==ps&&h!==vs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:u};super(d,s,r,o,a,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new ao(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},la=class extends xs{constructor(t,e=Ui,n=mr,s,r,o=Rn,a=Rn,l,c=ps){let h={width:t,height:t,depth:1},u=[h,h,h,h,h,h];super(t,t,e,n,s,r,o,a,l,c),this.image=u,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},ca=class extends jn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},ho=class i extends kn{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let l=[],c=[],h=[],u=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new In(c,3)),this.setAttribute("normal",new In(h,3)),this.setAttribute("uv",new In(u,2));function g(_,m,p,x,T,M,R,w,y,b,F){let D=M/y,C=R/b,O=M/2,U=R/2,P=w/2,B=y+1,$=b+1,V=0,ot=0,X=new W;for(let Y=0;Y<$;Y++){let tt=Y*C-U;for(let nt=0;nt<B;nt++){let at=nt*D-O;X[_]=at*x,X[m]=tt*T,X[p]=P,c.push(X.x,X.y,X.z),X[_]=0,X[m]=0,X[p]=w>0?1:-1,h.push(X.x,X.y,X.z),u.push(nt/y),u.push(1-Y/b),V+=1}}for(let Y=0;Y<b;Y++)for(let tt=0;tt<y;tt++){let nt=d+tt+B*Y,at=d+tt+B*(Y+1),J=d+(tt+1)+B*(Y+1),mt=d+(tt+1)+B*Y;l.push(nt,at,mt),l.push(at,J,mt),ot+=6}a.addGroup(f,ot,F),f+=ot,d+=V}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var dr=class i extends kn{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),l=Math.floor(s),c=a+1,h=l+1,u=t/a,d=e/l,f=[],g=[],_=[],m=[];for(let p=0;p<h;p++){let x=p*d-o;for(let T=0;T<c;T++){let M=T*u-r;g.push(M,-x,0),_.push(0,0,1),m.push(T/a),m.push(1-p/l)}}for(let p=0;p<l;p++)for(let x=0;x<a;x++){let T=x+c*p,M=x+c*(p+1),R=x+1+c*(p+1),w=x+1+c*p;f.push(T,M,w),f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new In(g,3)),this.setAttribute("normal",new In(_,3)),this.setAttribute("uv",new In(m,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var ha=class i extends kn{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let l=Math.min(o+a,Math.PI),c=0,h=[],u=new W,d=new W,f=[],g=[],_=[],m=[];for(let p=0;p<=n;p++){let x=[],T=p/n,M=o+T*a,R=t*Math.cos(M),w=Math.sqrt(t*t-R*R),y=0;p===0&&o===0?y=.5/e:p===n&&l===Math.PI&&(y=-.5/e);for(let b=0;b<=e;b++){let F=b/e,D=s+F*r;u.x=-w*Math.cos(D),u.y=R,u.z=w*Math.sin(D),g.push(u.x,u.y,u.z),d.copy(u).normalize(),_.push(d.x,d.y,d.z),m.push(F+y,1-T),x.push(c++)}h.push(x)}for(let p=0;p<n;p++)for(let x=0;x<e;x++){let T=h[p][x+1],M=h[p][x],R=h[p+1][x],w=h[p+1][x+1];(p!==0||o>0)&&f.push(T,M,w),(p!==n-1||l<Math.PI)&&f.push(M,R,w)}this.setIndex(f),this.setAttribute("position",new In(g,3)),this.setAttribute("normal",new In(_,3)),this.setAttribute("uv",new In(m,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function _r(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(Em(s))s.isRenderTargetTexture?(Zt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(Em(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function zn(i){let t={};for(let e=0;e<i.length;e++){let n=_r(i[e]);for(let s in n)t[s]=n[s]}return t}function Em(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function Py(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function xd(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:Me.workingColorSpace}var xg={clone:_r,merge:zn},Iy=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Ly=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Zi=class extends gs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Iy,this.fragmentShader=Ly,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=_r(t.uniforms),this.uniformsGroups=Py(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ae().setHex(s.value);break;case"v2":this.uniforms[n].value=new ie().fromArray(s.value);break;case"v3":this.uniforms[n].value=new W().fromArray(s.value);break;case"v4":this.uniforms[n].value=new Ye().fromArray(s.value);break;case"m3":this.uniforms[n].value=new se().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Xe().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Ql=class extends Zi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var ua=class extends gs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ae(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=th,this.normalScale=new ie(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ms,this.combine=pc,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},tc=class extends gs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=ng,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},ec=class extends gs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Qr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function Il(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Gs=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},nc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:Fu,endingEnd:Fu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],l=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case Ou:r=t,a=2*e-n;break;case Bu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Ou:o=t,l=2*n-e;break;case Bu:o=1,l=n+s[1]-s[0];break;default:o=t-1,l=e}let c=(n-e)*.5,h=this.valueSize;this._weightPrev=c/(e-a),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=o*h}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this._offsetPrev,u=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),_=g*g,m=_*g,p=-d*m+2*d*_-d*g,x=(1+d)*m+(-1.5-2*d)*_+(-.5+d)*g+1,T=(-1-f)*m+(1.5+f)*_+.5*g,M=f*m-f*_;for(let R=0;R!==a;++R)r[R]=p*o[h+R]+x*o[c+R]+T*o[l+R]+M*o[u+R];return r}},ic=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=(n-e)/(s-e),u=1-h;for(let d=0;d!==a;++d)r[d]=o[c+d]*u+o[l+d]*h;return r}},sc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},rc=class extends Gs{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,h=this.inTangents,u=this.outTangents;if(!h||!u){let g=(n-e)/(s-e),_=1-g;for(let m=0;m!==a;++m)r[m]=o[c+m]*_+o[l+m]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let _=o[c+g],m=o[l+g],p=f*d+g*2,x=u[p],T=u[p+1],M=t*d+g*2,R=h[M],w=h[M+1],y=Ny(n,e,x,R,s);r[g]=yg(y,_,T,w,m)}return r}};function yg(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function Dy(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function Ny(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=yg(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let l=Dy(r,t,e,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-a/l))}return r}var fi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Qr(e,this.TimeBufferType),this.values=Qr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Qr(t.times,Array),values:Qr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),Il(t.settings)&&(n.settings={inTangents:Qr(t.settings.inTangents,Array),outTangents:Qr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new sc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new ic(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new nc(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new rc(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Jo:e=this.InterpolantFactoryMethodDiscrete;break;case Xl:e=this.InterpolantFactoryMethodLinear;break;case Nl:e=this.InterpolantFactoryMethodSmooth;break;case Uu:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Zt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Jo;case this.InterpolantFactoryMethodLinear:return Xl;case this.InterpolantFactoryMethodSmooth:return Nl;case this.InterpolantFactoryMethodBezier:return Uu}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;Il(this.settings)&&(Tm(this.settings.inTangents,t),Tm(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;Il(this.settings)&&(Am(this.settings.inTangents,t),Am(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ne("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ne("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let l=n[a];if(typeof l=="number"&&isNaN(l)){ne("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){ne("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(s!==void 0&&Jx(s))for(let a=0,l=s.length;a!==l;++a){let c=s[a];if(isNaN(c)){ne("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Nl,r=t.length-1,o=1;for(let a=1;a<r;++a){let l=!1,c=t[a],h=t[a+1];if(c!==h&&(a!==1||c!==t[0]))if(s)l=!0;else{let u=a*n,d=u-n,f=u+n;for(let g=0;g!==n;++g){let _=e[u+g];if(_!==e[d+g]||_!==e[f+g]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let u=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[u+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,l=o*n,c=0;c!==n;++c)e[l+c]=e[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,Il(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Tm(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function Am(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}fi.prototype.ValueTypeName="";fi.prototype.TimeBufferType=Float32Array;fi.prototype.ValueBufferType=Float32Array;fi.prototype.DefaultInterpolation=Xl;var Hs=class extends fi{constructor(t,e,n){super(t,e,n)}};Hs.prototype.ValueTypeName="bool";Hs.prototype.ValueBufferType=Array;Hs.prototype.DefaultInterpolation=Jo;Hs.prototype.InterpolantFactoryMethodLinear=void 0;Hs.prototype.InterpolantFactoryMethodSmooth=void 0;var oc=class extends fi{constructor(t,e,n,s){super(t,e,n,s)}};oc.prototype.ValueTypeName="color";var ac=class extends fi{constructor(t,e,n,s){super(t,e,n,s)}};ac.prototype.ValueTypeName="number";var lc=class extends Gs{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(n-e)/(s-e),c=t*a;for(let h=c+a;c!==h;c+=4)ui.slerpFlat(r,0,o,c-a,o,c,l);return r}},da=class extends fi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new lc(this.times,this.values,this.getValueSize(),t)}};da.prototype.ValueTypeName="quaternion";da.prototype.InterpolantFactoryMethodSmooth=void 0;var Ws=class extends fi{constructor(t,e,n){super(t,e,n)}};Ws.prototype.ValueTypeName="string";Ws.prototype.ValueBufferType=Array;Ws.prototype.DefaultInterpolation=Jo;Ws.prototype.InterpolantFactoryMethodLinear=void 0;Ws.prototype.InterpolantFactoryMethodSmooth=void 0;var cc=class extends fi{constructor(t,e,n,s){super(t,e,n,s)}};cc.prototype.ValueTypeName="vector";var hc=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(h){a++,r===!1&&s.onStart!==void 0&&s.onStart(h,o,a),r=!0},this.itemEnd=function(h){o++,s.onProgress!==void 0&&s.onProgress(h,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,u){return c.push(h,u),this},this.removeHandler=function(h){let u=c.indexOf(h);return u!==-1&&c.splice(u,2),this},this.getHandler=function(h){for(let u=0,d=c.length;u<d;u+=2){let f=c[u],g=c[u+1];if(f.global&&(f.lastIndex=0),f.test(h))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},vg=new hc,uc=class{constructor(t){this.manager=t!==void 0?t:vg,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};uc.DEFAULT_MATERIAL_NAME="__DEFAULT";var fa=class extends Bn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ae(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var Nu=new Xe,Rm=new W,Cm=new W,dc=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ie(512,512),this.mapType=Kn,this.map=null,this.mapPass=null,this.matrix=new Xe,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new zs,this._frameExtents=new ie(1,1),this._viewportCount=1,this._viewports=[new Ye(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;Rm.setFromMatrixPosition(t.matrixWorld),e.position.copy(Rm),Cm.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(Cm),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){Nu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(Nu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,l=s?s.x/r.x:0,c=s?s.y/r.y:0;t.coordinateSystem===so||t.reversedDepth?e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),e.multiply(Nu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},Ll=new W,Dl=new ui,qi=new W,pa=class extends Bn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Xe,this.projectionMatrix=new Xe,this.projectionMatrixInverse=new Xe,this.coordinateSystem=Mi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(Ll,Dl,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ll,Dl,qi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(Ll,Dl,qi),qi.x===1&&qi.y===1&&qi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ll,Dl,qi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Os=new W,Pm=new ie,Im=new ie,Yn=class extends pa{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=oo*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Yo*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return oo*2*Math.atan(Math.tan(Yo*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Os.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Os.x,Os.y).multiplyScalar(-t/Os.z),Os.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Os.x,Os.y).multiplyScalar(-t/Os.z)}getViewSize(t,e){return this.getViewBounds(t,Pm,Im),e.subVectors(Im,Pm)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Yo*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;r+=o.offsetX*s/l,e-=o.offsetY*n/c,s*=o.width/l,n*=o.height/c}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var ma=class extends pa{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,l=s-e;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,o=r+c*this.view.width,a-=h*this.view.offsetY,l=a-h*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},ku=class extends dc{constructor(){super(new ma(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},ga=class extends fa{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Bn.DEFAULT_UP),this.updateMatrix(),this.target=new Bn,this.shadow=new ku}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},_a=class extends fa{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var to=-90,eo=1,uo=class extends Bn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new Yn(to,eo,t,e);s.layers=this.layers,this.add(s);let r=new Yn(to,eo,t,e);r.layers=this.layers,this.add(r);let o=new Yn(to,eo,t,e);o.layers=this.layers,this.add(o);let a=new Yn(to,eo,t,e);a.layers=this.layers,this.add(a);let l=new Yn(to,eo,t,e);l.layers=this.layers,this.add(l);let c=new Yn(to,eo,t,e);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,l]=e;for(let c of e)this.remove(c);if(t===Mi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===so)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of e)this.add(c),c.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,l,c,h]=this.children,u=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let _=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let m=!1;t.isWebGLRenderer===!0?m=t.state.buffers.depth.getReversed():m=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),t.setRenderTarget(n,4,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),n.texture.mipmapsAutoUpdate=_,t.setRenderTarget(n,5,s),m&&t.autoClear===!1&&t.clearDepth(),t.render(e,h),t.setRenderTarget(u,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},fc=class extends Yn{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var yd="\\[\\]\\.:\\/",Uy=new RegExp("["+yd+"]","g"),vd="[^"+yd+"]",Fy="[^"+yd.replace("\\.","")+"]",Oy=/((?:WC+[\/:])*)/.source.replace("WC",vd),By=/(WCOD+)?/.source.replace("WCOD",Fy),ky=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",vd),zy=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",vd),Vy=new RegExp("^"+Oy+By+ky+zy+"$"),Gy=["material","materials","bones","map"],zu=class{constructor(t,e,n){let s=n||We.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},We=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(Uy,"")}static parseTrackName(t){let e=Vy.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);Gy.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let l=n(a.children);if(l)return l}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Zt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=e.objectIndex;switch(n){case"materials":if(!t.material){ne("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ne("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ne("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let h=0;h<t.length;h++)if(t[h].name===c){c=h;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ne("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ne("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ne("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(c!==void 0){if(t[c]===void 0){ne("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[s];if(o===void 0){let c=e.nodeName;ne("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ne("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ne("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};We.Composite=zu;We.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};We.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};We.prototype.GetterByBindingType=[We.prototype._getValue_direct,We.prototype._getValue_array,We.prototype._getValue_arrayElement,We.prototype._getValue_toArray];We.prototype.SetterByBindingTypeAndVersioning=[[We.prototype._setValue_direct,We.prototype._setValue_direct_setNeedsUpdate,We.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[We.prototype._setValue_array,We.prototype._setValue_array_setNeedsUpdate,We.prototype._setValue_array_setMatrixWorldNeedsUpdate],[We.prototype._setValue_arrayElement,We.prototype._setValue_arrayElement_setNeedsUpdate,We.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[We.prototype._setValue_fromArray,We.prototype._setValue_fromArray_setNeedsUpdate,We.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var K1=new Float32Array(1);var fo=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=_e(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(_e(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var Vu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var xa=class extends Di{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function Md(i,t,e,n){let s=Hy(n);switch(e){case od:return i*t;case ld:return i*t/s.components*s.byteLength;case Mc:return i*t/s.components*s.byteLength;case qs:return i*t*2/s.components*s.byteLength;case bc:return i*t*2/s.components*s.byteLength;case ad:return i*t*3/s.components*s.byteLength;case Bi:return i*t*4/s.components*s.byteLength;case Sc:return i*t*4/s.components*s.byteLength;case Ma:case ba:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Sa:case wa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Ec:case Ac:return Math.max(i,16)*Math.max(t,8)/4;case wc:case Tc:return Math.max(i,8)*Math.max(t,8)/2;case Rc:case Cc:case Ic:case Lc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case Pc:case Ea:case Dc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Nc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case Uc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case Fc:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case Oc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case Bc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case kc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case zc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Vc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case Gc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case Hc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Wc:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Xc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case $c:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case qc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Yc:case Zc:case Jc:return Math.ceil(i/4)*Math.ceil(t/4)*16;case jc:case Kc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case Ta:case Qc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function Hy(i){switch(i){case Kn:case nd:return{byteLength:1,components:1};case _o:case id:case Oi:return{byteLength:2,components:1};case yc:case vc:return{byteLength:2,components:4};case Ui:case xc:case Fi:return{byteLength:4,components:1};case sd:case rd:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Zt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function Gg(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function Xy(i){let t=new WeakMap;function e(a,l){let c=a.array,h=a.usage,u=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,h),a.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:u}}function n(a,l,c){let h=l.array,u=l.updateRanges;if(i.bindBuffer(c,a),u.length===0)i.bufferSubData(c,0,h);else{u.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<u.length;f++){let g=u[d],_=u[f];_.start<=g.start+g.count+1?g.count=Math.max(g.count,_.start+_.count-g.start):(++d,u[d]=_)}u.length=d+1;for(let f=0,g=u.length;f<g;f++){let _=u[f];i.bufferSubData(c,_.start*h.BYTES_PER_ELEMENT,h,_.start,_.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(i.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let h=t.get(a);(!h||h.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,e(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,a,l),c.version=a.version}}return{get:s,remove:r,update:o}}var $y=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,qy=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,Yy=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Zy=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Jy=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,jy=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Ky=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,Qy=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,tv=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,ev=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,nv=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,iv=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,sv=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,rv=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,ov=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,av=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,lv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,cv=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,hv=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,uv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,dv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,fv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,pv=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,mv=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,gv=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,_v=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,xv=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,yv=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,vv=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Mv="gl_FragColor = linearToOutputTexel( gl_FragColor );",bv=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Sv=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,wv=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Ev=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Tv=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Av=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,Rv=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Cv=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Pv=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Iv=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Lv=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,Dv=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Nv=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,Uv=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Fv=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,Ov=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Bv=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,kv=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,zv=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,Vv=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Gv=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Hv=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,Wv=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,Xv=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,$v=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,qv=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,Yv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Zv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Jv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,jv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Kv=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Qv=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,tM=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,eM=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,nM=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,iM=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,sM=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,rM=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,oM=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,aM=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,lM=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,cM=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,hM=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,uM=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,dM=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,fM=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,pM=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,mM=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,gM=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,_M=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,xM=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,yM=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,vM=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,MM=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,bM=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,SM=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,wM=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,EM=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,TM=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,AM=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,RM=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,CM=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,PM=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,IM=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,LM=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,DM=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,NM=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,UM=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,FM=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,OM=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,BM=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,kM=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,zM=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,VM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,GM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,HM=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,WM=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,XM=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,$M=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,qM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,YM=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,ZM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,JM=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,jM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,KM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,QM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,tb=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,eb=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,nb=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,ib=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,sb=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,rb=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,ob=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,ab=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,lb=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,cb=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,hb=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,ub=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,db=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,fb=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,pb=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,mb=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,gb=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,_b=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,xb=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,yb=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,vb=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Mb=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,bb=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,Sb=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,wb=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,de={alphahash_fragment:$y,alphahash_pars_fragment:qy,alphamap_fragment:Yy,alphamap_pars_fragment:Zy,alphatest_fragment:Jy,alphatest_pars_fragment:jy,aomap_fragment:Ky,aomap_pars_fragment:Qy,batching_pars_vertex:tv,batching_vertex:ev,begin_vertex:nv,beginnormal_vertex:iv,bsdfs:sv,iridescence_fragment:rv,bumpmap_pars_fragment:ov,clipping_planes_fragment:av,clipping_planes_pars_fragment:lv,clipping_planes_pars_vertex:cv,clipping_planes_vertex:hv,color_fragment:uv,color_pars_fragment:dv,color_pars_vertex:fv,color_vertex:pv,common:mv,defaultnormal_vertex:gv,displacementmap_pars_vertex:_v,displacementmap_vertex:xv,emissivemap_fragment:yv,emissivemap_pars_fragment:vv,colorspace_fragment:Mv,colorspace_pars_fragment:bv,envmap_fragment:Sv,envmap_common_pars_fragment:wv,envmap_pars_fragment:Ev,envmap_pars_vertex:Tv,envmap_physical_pars_fragment:Ov,envmap_vertex:Av,fog_vertex:Rv,fog_pars_vertex:Cv,fog_fragment:Pv,fog_pars_fragment:Iv,gradientmap_pars_fragment:Lv,lightmap_pars_fragment:Dv,lights_lambert_fragment:Nv,lights_lambert_pars_fragment:Uv,lights_pars_begin:Fv,lights_toon_fragment:Bv,lights_toon_pars_fragment:kv,lights_phong_fragment:zv,lights_phong_pars_fragment:Vv,lights_physical_fragment:Gv,lights_physical_pars_fragment:Hv,lights_fragment_begin:Wv,lights_fragment_maps:Xv,lights_fragment_end:$v,lightprobes_pars_fragment:qv,logdepthbuf_fragment:Yv,logdepthbuf_pars_fragment:Zv,logdepthbuf_pars_vertex:Jv,logdepthbuf_vertex:jv,map_fragment:Kv,map_pars_fragment:Qv,map_particle_fragment:tM,map_particle_pars_fragment:eM,metalnessmap_fragment:nM,metalnessmap_pars_fragment:iM,morphinstance_vertex:sM,morphcolor_vertex:rM,morphnormal_vertex:oM,morphtarget_pars_vertex:aM,morphtarget_vertex:lM,normal_fragment_begin:cM,normal_fragment_maps:hM,normal_pars_fragment:uM,normal_pars_vertex:dM,normal_vertex:fM,normalmap_pars_fragment:pM,clearcoat_normal_fragment_begin:mM,clearcoat_normal_fragment_maps:gM,clearcoat_pars_fragment:_M,iridescence_pars_fragment:xM,opaque_fragment:yM,packing:vM,premultiplied_alpha_fragment:MM,project_vertex:bM,dithering_fragment:SM,dithering_pars_fragment:wM,roughnessmap_fragment:EM,roughnessmap_pars_fragment:TM,shadowmap_pars_fragment:AM,shadowmap_pars_vertex:RM,shadowmap_vertex:CM,shadowmask_pars_fragment:PM,skinbase_vertex:IM,skinning_pars_vertex:LM,skinning_vertex:DM,skinnormal_vertex:NM,specularmap_fragment:UM,specularmap_pars_fragment:FM,tonemapping_fragment:OM,tonemapping_pars_fragment:BM,transmission_fragment:kM,transmission_pars_fragment:zM,uv_pars_fragment:VM,uv_pars_vertex:GM,uv_vertex:HM,worldpos_vertex:WM,background_vert:XM,background_frag:$M,backgroundCube_vert:qM,backgroundCube_frag:YM,cube_vert:ZM,cube_frag:JM,depth_vert:jM,depth_frag:KM,distance_vert:QM,distance_frag:tb,equirect_vert:eb,equirect_frag:nb,linedashed_vert:ib,linedashed_frag:sb,meshbasic_vert:rb,meshbasic_frag:ob,meshlambert_vert:ab,meshlambert_frag:lb,meshmatcap_vert:cb,meshmatcap_frag:hb,meshnormal_vert:ub,meshnormal_frag:db,meshphong_vert:fb,meshphong_frag:pb,meshphysical_vert:mb,meshphysical_frag:gb,meshtoon_vert:_b,meshtoon_frag:xb,points_vert:yb,points_frag:vb,shadow_vert:Mb,shadow_frag:bb,sprite_vert:Sb,sprite_frag:wb},Nt={common:{diffuse:{value:new ae(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new se},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new se}},envmap:{envMap:{value:null},envMapRotation:{value:new se},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new se}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new se}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new se},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new se},normalScale:{value:new ie(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new se},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new se}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new se}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new se}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ae(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ae(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0},uvTransform:{value:new se}},sprite:{diffuse:{value:new ae(16777215)},opacity:{value:1},center:{value:new ie(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new se},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0}}},Ki={basic:{uniforms:zn([Nt.common,Nt.specularmap,Nt.envmap,Nt.aomap,Nt.lightmap,Nt.fog]),vertexShader:de.meshbasic_vert,fragmentShader:de.meshbasic_frag},lambert:{uniforms:zn([Nt.common,Nt.specularmap,Nt.envmap,Nt.aomap,Nt.lightmap,Nt.emissivemap,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,Nt.fog,Nt.lights,{emissive:{value:new ae(0)},envMapIntensity:{value:1}}]),vertexShader:de.meshlambert_vert,fragmentShader:de.meshlambert_frag},phong:{uniforms:zn([Nt.common,Nt.specularmap,Nt.envmap,Nt.aomap,Nt.lightmap,Nt.emissivemap,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,Nt.fog,Nt.lights,{emissive:{value:new ae(0)},specular:{value:new ae(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:de.meshphong_vert,fragmentShader:de.meshphong_frag},standard:{uniforms:zn([Nt.common,Nt.envmap,Nt.aomap,Nt.lightmap,Nt.emissivemap,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,Nt.roughnessmap,Nt.metalnessmap,Nt.fog,Nt.lights,{emissive:{value:new ae(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:de.meshphysical_vert,fragmentShader:de.meshphysical_frag},toon:{uniforms:zn([Nt.common,Nt.aomap,Nt.lightmap,Nt.emissivemap,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,Nt.gradientmap,Nt.fog,Nt.lights,{emissive:{value:new ae(0)}}]),vertexShader:de.meshtoon_vert,fragmentShader:de.meshtoon_frag},matcap:{uniforms:zn([Nt.common,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,Nt.fog,{matcap:{value:null}}]),vertexShader:de.meshmatcap_vert,fragmentShader:de.meshmatcap_frag},points:{uniforms:zn([Nt.points,Nt.fog]),vertexShader:de.points_vert,fragmentShader:de.points_frag},dashed:{uniforms:zn([Nt.common,Nt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:de.linedashed_vert,fragmentShader:de.linedashed_frag},depth:{uniforms:zn([Nt.common,Nt.displacementmap]),vertexShader:de.depth_vert,fragmentShader:de.depth_frag},normal:{uniforms:zn([Nt.common,Nt.bumpmap,Nt.normalmap,Nt.displacementmap,{opacity:{value:1}}]),vertexShader:de.meshnormal_vert,fragmentShader:de.meshnormal_frag},sprite:{uniforms:zn([Nt.sprite,Nt.fog]),vertexShader:de.sprite_vert,fragmentShader:de.sprite_frag},background:{uniforms:{uvTransform:{value:new se},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:de.background_vert,fragmentShader:de.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new se}},vertexShader:de.backgroundCube_vert,fragmentShader:de.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:de.cube_vert,fragmentShader:de.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:de.equirect_vert,fragmentShader:de.equirect_frag},distance:{uniforms:zn([Nt.common,Nt.displacementmap,{referencePosition:{value:new W},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:de.distance_vert,fragmentShader:de.distance_frag},shadow:{uniforms:zn([Nt.lights,Nt.fog,{color:{value:new ae(0)},opacity:{value:1}}]),vertexShader:de.shadow_vert,fragmentShader:de.shadow_frag}};Ki.physical={uniforms:zn([Ki.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new se},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new se},clearcoatNormalScale:{value:new ie(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new se},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new se},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new se},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new se},sheen:{value:0},sheenColor:{value:new ae(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new se},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new se},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new se},transmissionSamplerSize:{value:new ie},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new se},attenuationDistance:{value:0},attenuationColor:{value:new ae(0)},specularColor:{value:new ae(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new se},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new se},anisotropyVector:{value:new ie},anisotropyMap:{value:null},anisotropyMapTransform:{value:new se}}]),vertexShader:de.meshphysical_vert,fragmentShader:de.meshphysical_frag};var eh={r:0,b:0,g:0},Eb=new Xe,Hg=new se;Hg.set(-1,0,0,0,1,0,0,0,1);function Tb(i,t,e,n,s,r){let o=new ae(0),a=s===!0?0:1,l,c,h=null,u=0,d=null;function f(x){let T=x.isScene===!0?x.background:null;if(T&&T.isTexture){let M=x.backgroundBlurriness>0;T=t.get(T,M)}return T}function g(x){let T=!1,M=f(x);M===null?m(o,a):M&&M.isColor&&(m(M,1),T=!0);let R=i.xr.getEnvironmentBlendMode();R==="additive"?e.buffers.color.setClear(0,0,0,1,r):R==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||T)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function _(x,T){let M=f(T);M&&M.isCubeTexture?(c===void 0&&(c=new Cn(new ho(1,1,1),new Zi({name:"BackgroundCubeMaterial",uniforms:_r(Ki.backgroundCube.uniforms),vertexShader:Ki.backgroundCube.vertexShader,fragmentShader:Ki.backgroundCube.fragmentShader,side:Ln,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(R,w,y){this.matrixWorld.copyPosition(y.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=M,c.material.uniforms.backgroundBlurriness.value=T.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=T.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(Eb.makeRotationFromEuler(T.backgroundRotation)).transpose(),M.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Hg),c.material.toneMapped=Me.getTransfer(M.colorSpace)!==Ce,(h!==M||u!==M.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),c.layers.enableAll(),x.unshift(c,c.geometry,c.material,0,0,null)):M&&M.isTexture&&(l===void 0&&(l=new Cn(new dr(2,2),new Zi({name:"BackgroundMaterial",uniforms:_r(Ki.background.uniforms),vertexShader:Ki.background.vertexShader,fragmentShader:Ki.background.fragmentShader,side:Ni,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=M,l.material.uniforms.backgroundIntensity.value=T.backgroundIntensity,l.material.toneMapped=Me.getTransfer(M.colorSpace)!==Ce,M.matrixAutoUpdate===!0&&M.updateMatrix(),l.material.uniforms.uvTransform.value.copy(M.matrix),(h!==M||u!==M.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,h=M,u=M.version,d=i.toneMapping),l.layers.enableAll(),x.unshift(l,l.geometry,l.material,0,0,null))}function m(x,T){x.getRGB(eh,xd(i)),e.buffers.color.setClear(eh.r,eh.g,eh.b,T,r)}function p(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(x,T=1){o.set(x),a=T,m(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(x){a=x,m(o,a)},render:g,addToRenderList:_,dispose:p}}function Ab(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(C,O,U,P,B){let $=!1,V=u(C,P,U,O);r!==V&&(r=V,c(r.object)),$=f(C,P,U,B),$&&g(C,P,U,B),B!==null&&t.update(B,i.ELEMENT_ARRAY_BUFFER),($||o)&&(o=!1,M(C,O,U,P),B!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(B).buffer))}function l(){return i.createVertexArray()}function c(C){return i.bindVertexArray(C)}function h(C){return i.deleteVertexArray(C)}function u(C,O,U,P){let B=P.wireframe===!0,$=n[O.id];$===void 0&&($={},n[O.id]=$);let V=C.isInstancedMesh===!0?C.id:0,ot=$[V];ot===void 0&&(ot={},$[V]=ot);let X=ot[U.id];X===void 0&&(X={},ot[U.id]=X);let Y=X[B];return Y===void 0&&(Y=d(l()),X[B]=Y),Y}function d(C){let O=[],U=[],P=[];for(let B=0;B<e;B++)O[B]=0,U[B]=0,P[B]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:O,enabledAttributes:U,attributeDivisors:P,object:C,attributes:{},index:null}}function f(C,O,U,P){let B=r.attributes,$=O.attributes,V=0,ot=U.getAttributes();for(let X in ot)if(ot[X].location>=0){let tt=B[X],nt=$[X];if(nt===void 0&&(X==="instanceMatrix"&&C.instanceMatrix&&(nt=C.instanceMatrix),X==="instanceColor"&&C.instanceColor&&(nt=C.instanceColor)),tt===void 0||tt.attribute!==nt||nt&&tt.data!==nt.data)return!0;V++}return r.attributesNum!==V||r.index!==P}function g(C,O,U,P){let B={},$=O.attributes,V=0,ot=U.getAttributes();for(let X in ot)if(ot[X].location>=0){let tt=$[X];tt===void 0&&(X==="instanceMatrix"&&C.instanceMatrix&&(tt=C.instanceMatrix),X==="instanceColor"&&C.instanceColor&&(tt=C.instanceColor));let nt={};nt.attribute=tt,tt&&tt.data&&(nt.data=tt.data),B[X]=nt,V++}r.attributes=B,r.attributesNum=V,r.index=P}function _(){let C=r.newAttributes;for(let O=0,U=C.length;O<U;O++)C[O]=0}function m(C){p(C,0)}function p(C,O){let U=r.newAttributes,P=r.enabledAttributes,B=r.attributeDivisors;U[C]=1,P[C]===0&&(i.enableVertexAttribArray(C),P[C]=1),B[C]!==O&&(i.vertexAttribDivisor(C,O),B[C]=O)}function x(){let C=r.newAttributes,O=r.enabledAttributes;for(let U=0,P=O.length;U<P;U++)O[U]!==C[U]&&(i.disableVertexAttribArray(U),O[U]=0)}function T(C,O,U,P,B,$,V){V===!0?i.vertexAttribIPointer(C,O,U,B,$):i.vertexAttribPointer(C,O,U,P,B,$)}function M(C,O,U,P){_();let B=P.attributes,$=U.getAttributes(),V=O.defaultAttributeValues;for(let ot in $){let X=$[ot];if(X.location>=0){let Y=B[ot];if(Y===void 0&&(ot==="instanceMatrix"&&C.instanceMatrix&&(Y=C.instanceMatrix),ot==="instanceColor"&&C.instanceColor&&(Y=C.instanceColor)),Y!==void 0){let tt=Y.normalized,nt=Y.itemSize,at=t.get(Y);if(at===void 0)continue;let J=at.buffer,mt=at.type,ct=at.bytesPerElement,pt=mt===i.INT||mt===i.UNSIGNED_INT||Y.gpuType===xc;if(Y.isInterleavedBufferAttribute){let xt=Y.data,Wt=xt.isInterleavedBuffer===!0?xt.stride:xt.itemSize,Kt=Y.offset;if(xt.isInstancedInterleavedBuffer||xt.isInstancedBufferAttribute){for(let Gt=0;Gt<X.locationSize;Gt++)p(X.location+Gt,xt.meshPerAttribute);C.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=xt.meshPerAttribute*xt.count)}else for(let Gt=0;Gt<X.locationSize;Gt++)m(X.location+Gt);i.bindBuffer(i.ARRAY_BUFFER,J);for(let Gt=0;Gt<X.locationSize;Gt++)T(X.location+Gt,nt/X.locationSize,mt,tt,Wt*ct,(Kt+nt/X.locationSize*Gt)*ct,pt)}else{if(Y.isInstancedBufferAttribute){for(let xt=0;xt<X.locationSize;xt++)p(X.location+xt,Y.meshPerAttribute);C.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=Y.meshPerAttribute*Y.count)}else for(let xt=0;xt<X.locationSize;xt++)m(X.location+xt);i.bindBuffer(i.ARRAY_BUFFER,J);for(let xt=0;xt<X.locationSize;xt++)T(X.location+xt,nt/X.locationSize,mt,tt,nt*ct,nt/X.locationSize*xt*ct,pt)}}else if(V!==void 0){let tt=V[ot];if(tt!==void 0)switch(tt.length){case 2:i.vertexAttrib2fv(X.location,tt);break;case 3:i.vertexAttrib3fv(X.location,tt);break;case 4:i.vertexAttrib4fv(X.location,tt);break;default:i.vertexAttrib1fv(X.location,tt)}}}}x()}function R(){F();for(let C in n){let O=n[C];for(let U in O){let P=O[U];for(let B in P){let $=P[B];for(let V in $)h($[V].object),delete $[V];delete P[B]}}delete n[C]}}function w(C){if(n[C.id]===void 0)return;let O=n[C.id];for(let U in O){let P=O[U];for(let B in P){let $=P[B];for(let V in $)h($[V].object),delete $[V];delete P[B]}}delete n[C.id]}function y(C){for(let O in n){let U=n[O];for(let P in U){let B=U[P];if(B[C.id]===void 0)continue;let $=B[C.id];for(let V in $)h($[V].object),delete $[V];delete B[C.id]}}}function b(C){for(let O in n){let U=n[O],P=C.isInstancedMesh===!0?C.id:0,B=U[P];if(B!==void 0){for(let $ in B){let V=B[$];for(let ot in V)h(V[ot].object),delete V[ot];delete B[$]}delete U[P],Object.keys(U).length===0&&delete n[O]}}}function F(){D(),o=!0,r!==s&&(r=s,c(r.object))}function D(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:F,resetDefaultState:D,dispose:R,releaseStatesOfGeometry:w,releaseStatesOfObject:b,releaseStatesOfProgram:y,initAttributes:_,enableAttribute:m,disableUnusedAttributes:x}}function Rb(i,t,e){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),e.update(c,n,1)}function o(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),e.update(c,n,h))}function a(l,c,h){if(h===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let d=0;for(let f=0;f<h;f++)d+=c[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function Cb(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let y=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(y.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(y){return!(y!==Bi&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(y){let b=y===Oi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(y!==Kn&&y!==Fi&&!b&&n.convert(y)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(y){if(y==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";y="mediump"}return y==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=e.precision!==void 0?e.precision:"highp",h=l(c);h!==c&&(Zt("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let u=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&u===!1;e.reversedDepthBuffer===!0&&u===!1&&Zt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&u===!0&&Zt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_TEXTURE_SIZE),m=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),p=i.getParameter(i.MAX_VERTEX_ATTRIBS),x=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),T=i.getParameter(i.MAX_VARYING_VECTORS),M=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),R=i.getParameter(i.MAX_SAMPLES),w=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:u,maxTextures:f,maxVertexTextures:g,maxTextureSize:_,maxCubemapSize:m,maxAttributes:p,maxVertexUniforms:x,maxVaryings:T,maxFragmentUniforms:M,maxSamples:R,samples:w}}function Pb(i){let t=this,e=null,n=0,s=!1,r=!1,o=new qn,a=new se,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(u,d){let f=u.length!==0||d||n!==0||s;return s=d,n=u.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(u,d){e=h(u,d,0)},this.setState=function(u,d,f){let g=u.clippingPlanes,_=u.clipIntersection,m=u.clipShadows,p=i.get(u);if(!s||g===null||g.length===0||r&&!m)r?h(null):c();else{let x=r?0:n,T=x*4,M=p.clippingState||null;l.value=M,M=h(g,d,T,f);for(let R=0;R!==T;++R)M[R]=e[R];p.clippingState=M,this.numIntersection=_?this.numPlanes:0,this.numPlanes+=x}};function c(){l.value!==e&&(l.value=e,l.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function h(u,d,f,g){let _=u!==null?u.length:0,m=null;if(_!==0){if(m=l.value,g!==!0||m===null){let p=f+_*4,x=d.matrixWorldInverse;a.getNormalMatrix(x),(m===null||m.length<p)&&(m=new Float32Array(p));for(let T=0,M=f;T!==_;++T,M+=4)o.copy(u[T]).applyMatrix4(x,a),o.normal.toArray(m,M),m[M+3]=o.constant}l.value=m,l.needsUpdate=!0}return t.numPlanes=_,t.numIntersection=0,m}}var Ca=class extends di{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new aa(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new ho(5,5,5),r=new Zi({name:"CubemapFromEquirect",uniforms:_r(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Ln,blending:fr});r.uniforms.tEquirect.value=e;let o=new Cn(s,r),a=e.minFilter;return e.minFilter===ys&&(e.minFilter=Zn),new uo(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},Mg=256,Ib=3,Lb=20,Wg=256,Xg=16,Db=3,Nb=new W,Ub=new ae,ih=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new uo(1,10,null),this._boxMesh=new Cn(new ho(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=Nb}=r,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),h=this._getSourceTarget(!0);e>0&&(h.texture.mipmapsAutoUpdate=!1);let u=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,_=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,_===null&&(t.background=l.getClearColor(Ub));let m=new uo(n,s,h);return m.position.copy(a),m.update(l,t),l.autoClear=u,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=g,t.background=_,e>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,e)),this._applyPMREM(c),c}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=wg(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Sg(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(Mg,md(t))}_fromTexture(t,e){t.mapping===mr||t.mapping===go?this._setSize(t.image.length===0?Mg:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=bg(t,!1,!1),n=Math.log2(t)-Ib;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=bg(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===mr||t.mapping===go?(this._cubemapMaterial===null&&(this._cubemapMaterial=wg()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Sg()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=Fb(),this._integrationMaterial=Ob());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/Xg);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-Db)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(e)+.5*Math.log2(6/(Wg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=Bb());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function bg(i,t,e){return new Ca(i,{minFilter:ys,generateMipmaps:t,type:Oi,colorSpace:jo,depthBuffer:e})}function Pa(i,t,e){return new Zi({name:i,uniforms:t,vertexShader:de.cube_vert,fragmentShader:e,side:Ln,blending:fr,depthTest:!1,depthWrite:!1})}function Fb(){return Pa("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Wg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function Ob(){return Pa("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Xg}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function Bb(){return Pa("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${Lb}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Sg(){return Pa("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function wg(){return Pa("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function kb(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===mc||f===gc)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let _=new Ca(g.height);return _.fromEquirectangularTexture(i,d),t.set(d,_),d.addEventListener("dispose",c),a(_.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===mc||f===gc,_=f===mr||f===go;if(g||_){let m=e.get(d),p=m!==void 0?m.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==p)return n===null&&(n=new ih(i)),m=g?n.fromEquirectangular(d,m):n.fromCubemap(d,m),m.texture.pmremVersion=d.pmremVersion,e.set(d,m),m.texture;if(m!==void 0)return m.texture;{let x=d.image;return g&&x&&x.height>0||_&&x&&l(x)?(n===null&&(n=new ih(i)),m=g?n.fromEquirectangular(d):n.fromCubemap(d),m.texture.pmremVersion=d.pmremVersion,e.set(d,m),d.addEventListener("dispose",h),m.texture):null}}}return d}function a(d,f){return f===mc?d.mapping=mr:f===gc&&(d.mapping=go),d}function l(d){let f=0,g=6;for(let _=0;_<g;_++)d[_]!==void 0&&f++;return f===g}function c(d){let f=d.target;f.removeEventListener("dispose",c);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function h(d){let f=d.target;f.removeEventListener("dispose",h);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function u(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:u}}function zb(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&qo("WebGLRenderer: "+n+" extension not supported."),s}}}function Vb(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){l(g.target)}function l(g){g.index!==null&&t.remove(g.index);for(let m in g.attributes)t.remove(g.attributes[m]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let _=r.get(g);_&&(t.remove(_),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function c(g,_){return s[_.id]!==void 0||(_.addEventListener("dispose",a),s[_.id]=new WeakRef(_),o.register(_,_.id,_),e.memory.geometries++),_}function h(g){let _=g.attributes;for(let m in _)t.update(_[m],i.ARRAY_BUFFER)}function u(g){let _=g.index,m=g.attributes.position,p=0;if(m===void 0)return;let x=_!==null?_.array.length:m.array.length/3-1,T=m.count>=65535?sa:ia,M=new T(Math.ceil(x/3)*6,1),R=M.array;if(_!==null){let y=_.array;p=_.version;for(let b=0,F=0;b<x;b+=3){let D=y[b+0],C=y[b+1],O=y[b+2];R[F++]=D,R[F++]=C,R[F++]=C,R[F++]=O,R[F++]=O,R[F++]=D}}else{p=m.version;for(let y=0,b=0;y<x;y+=3){let F=y+0,D=y+1,C=y+2;R[b++]=F,R[b++]=D,R[b++]=D,R[b++]=C,R[b++]=C,R[b++]=F}}M.version=p;let w=r.get(g);w&&t.remove(w),r.set(g,M)}function d(g){let _=r.get(g);if(_){let m=g.index;m!==null&&_.version<m.version&&u(g)}else u(g);return r.get(g)}function f(){for(let g in s){let _=s[g].deref();_!==void 0&&l(_)}}return{get:c,update:h,getWireframeAttribute:d,dispose:f}}function Gb(i,t,e){let n;function s(u){n=u}let r,o;function a(u){r=u.type,o=u.bytesPerElement}function l(u,d){i.drawElements(n,d,r,u*o),e.update(d,n,1)}function c(u,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,u*o,f),e.update(d,n,f))}function h(u,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,u,0,f);let _=0;for(let m=0;m<f;m++)_+=d[m];e.update(_,n,1)}this.setMode=s,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function Hb(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ne("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function Wb(i,t,e){let n=new WeakMap,s=new Ye;function r(o,a,l){let c=o.morphTargetInfluences,h=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,u=h!==void 0?h.length:0,d=n.get(a);if(d===void 0||d.count!==u){let F=function(){y.dispose(),n.delete(a),a.removeEventListener("dispose",F)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,_=a.morphAttributes.color!==void 0,m=a.morphAttributes.position||[],p=a.morphAttributes.normal||[],x=a.morphAttributes.color||[],T=0;f===!0&&(T=1),g===!0&&(T=2),_===!0&&(T=3);let M=a.attributes.position.count*T,R=1;M>t.maxTextureSize&&(R=Math.ceil(M/t.maxTextureSize),M=t.maxTextureSize);let w=new Float32Array(M*R*4*u),y=new ta(w,M,R,u);y.type=Fi,y.needsUpdate=!0;let b=T*4;for(let D=0;D<u;D++){let C=m[D],O=p[D],U=x[D],P=M*R*4*D;for(let B=0;B<C.count;B++){let $=B*b;f===!0&&(s.fromBufferAttribute(C,B),w[P+$+0]=s.x,w[P+$+1]=s.y,w[P+$+2]=s.z,w[P+$+3]=0),g===!0&&(s.fromBufferAttribute(O,B),w[P+$+4]=s.x,w[P+$+5]=s.y,w[P+$+6]=s.z,w[P+$+7]=0),_===!0&&(s.fromBufferAttribute(U,B),w[P+$+8]=s.x,w[P+$+9]=s.y,w[P+$+10]=s.z,w[P+$+11]=U.itemSize===4?s.w:1)}}d={count:u,texture:y,size:new ie(M,R)},n.set(a,d),a.addEventListener("dispose",F)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let _=0;_<c.length;_++)f+=c[_];let g=a.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function Xb(i,t,e,n,s){let r=new WeakMap;function o(c){let h=s.render.frame,u=c.geometry,d=t.get(c,u);if(r.get(d)!==h&&(t.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(e.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&e.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return d}function a(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),e.remove(h.instanceMatrix),h.instanceColor!==null&&e.remove(h.instanceColor)}return{update:o,dispose:a}}var $b={[Yu]:"LINEAR_TONE_MAPPING",[Zu]:"REINHARD_TONE_MAPPING",[Ju]:"CINEON_TONE_MAPPING",[ju]:"ACES_FILMIC_TONE_MAPPING",[Qu]:"AGX_TONE_MAPPING",[td]:"NEUTRAL_TONE_MAPPING",[Ku]:"CUSTOM_TONE_MAPPING"};function qb(i,t,e,n,s,r){let o=new di(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,h=new kn;h.setAttribute("position",new In([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new In([0,2,0,0,2,0],2));let u=new Ql({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Cn(h,u),f=new ma(-1,1,1,-1,0,1),g=null,_=null,m=!1,p,x=null,T=[],M=!1;this.setSize=function(R,w){o.setSize(R,w),a!==null&&a.setSize(R,w),l!==null&&l.setSize(R,w);for(let y=0;y<T.length;y++){let b=T[y];b.setSize&&b.setSize(R,w)}},this.setEffects=function(R){T=R,M=T.length>0&&T[0].isRenderPass===!0;let w=o.width,y=o.height;T.length>0&&a===null&&(a=new di(w,y,{type:Oi,depthBuffer:!1,stencilBuffer:!1}),l=new di(w,y,{type:Oi,depthBuffer:!1,stencilBuffer:!1}));let b=s===!0&&T.some(F=>F.needsDepthTexture===!0);b!==(o.depthTexture!==null)&&(b===!0&&c===null&&(c=new xs(w,y),r===!0&&(c.format=vs,c.type=gr)),o.dispose(),o.depthTexture=b?c:null,o.resolveDepthBuffer=b,o.storeMultisampledDepthBuffer=b);for(let F=0;F<T.length;F++){let D=T[F];D.setSize&&D.setSize(w,y),b&&D.needsDepthTexture===!0&&D.setDepthTexture&&D.setDepthTexture(c)}},this.begin=function(R,w){if(m||R.toneMapping===Ji&&T.length===0)return!1;if(x=w,w!==null){let y=w.width,b=w.height;(o.width!==y||o.height!==b)&&this.setSize(y,b)}return M===!1&&R.setRenderTarget(o),p=R.toneMapping,R.toneMapping=Ji,!0},this.hasRenderPass=function(){return M},this.end=function(R,w){R.toneMapping=p,m=!0;let y=o,b=a;for(let F=0;F<T.length;F++){let D=T[F];D.enabled!==!1&&(D.render(R,b,y,w),D.needsSwap!==!1&&(y=b,b=b===a?l:a))}if(g!==R.outputColorSpace||_!==R.toneMapping){g=R.outputColorSpace,_=R.toneMapping,u.defines={},Me.getTransfer(g)===Ce&&(u.defines.SRGB_TRANSFER="");let F=$b[_];F&&(u.defines[F]=""),u.needsUpdate=!0}u.uniforms.tDiffuse.value=y.texture,R.setRenderTarget(x),R.render(d,f),x=null,m=!1},this.isCompositing=function(){return m},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),h.dispose(),u.dispose()}}var $g=new jn,qg=new xs(1,1),Yg=new la(1),Zg=new ta,Jg=new Yl,jg=new aa,Eg=[],Tg=[],Ag=new Float32Array(16),Rg=new Float32Array(9),Cg=new Float32Array(4);function vo(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=Eg[s];if(r===void 0&&(r=new Float32Array(s),Eg[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function xn(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function yn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function rh(i,t){let e=Tg[t];e===void 0&&(e=new Int32Array(t),Tg[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function Yb(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function Zb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2fv(this.addr,t),yn(e,t)}}function Jb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(xn(e,t))return;i.uniform3fv(this.addr,t),yn(e,t)}}function jb(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4fv(this.addr,t),yn(e,t)}}function Kb(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;Cg.set(n),i.uniformMatrix2fv(this.addr,!1,Cg),yn(e,n)}}function Qb(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;Rg.set(n),i.uniformMatrix3fv(this.addr,!1,Rg),yn(e,n)}}function tS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(xn(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),yn(e,t)}else{if(xn(e,n))return;Ag.set(n),i.uniformMatrix4fv(this.addr,!1,Ag),yn(e,n)}}function eS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function nS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2iv(this.addr,t),yn(e,t)}}function iS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(xn(e,t))return;i.uniform3iv(this.addr,t),yn(e,t)}}function sS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4iv(this.addr,t),yn(e,t)}}function rS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function oS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(xn(e,t))return;i.uniform2uiv(this.addr,t),yn(e,t)}}function aS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(xn(e,t))return;i.uniform3uiv(this.addr,t),yn(e,t)}}function lS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(xn(e,t))return;i.uniform4uiv(this.addr,t),yn(e,t)}}function oh(i){return i.version===0&&(i.compareFunction=ud,i.needsUpdate=!0),i}function cS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=oh(qg):r=$g,e.setTexture2D(t||r,s)}function hS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||Jg,s)}function uS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=oh(Yg):r=jg,e.setTextureCube(t||r,s)}function dS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||Zg,s)}function fS(i){switch(i){case 5126:return Yb;case 35664:return Zb;case 35665:return Jb;case 35666:return jb;case 35674:return Kb;case 35675:return Qb;case 35676:return tS;case 5124:case 35670:return eS;case 35667:case 35671:return nS;case 35668:case 35672:return iS;case 35669:case 35673:return sS;case 5125:return rS;case 36294:return oS;case 36295:return aS;case 36296:return lS;case 35678:case 36198:case 36298:case 36306:case 35682:return cS;case 35679:case 36299:case 36307:return hS;case 35680:case 36300:case 36308:case 36293:return uS;case 36289:case 36303:case 36311:case 36292:return dS}}function pS(i,t){i.uniform1fv(this.addr,t)}function mS(i,t){let e=vo(t,this.size,2);i.uniform2fv(this.addr,e)}function gS(i,t){let e=vo(t,this.size,3);i.uniform3fv(this.addr,e)}function _S(i,t){let e=vo(t,this.size,4);i.uniform4fv(this.addr,e)}function xS(i,t){let e=vo(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function yS(i,t){let e=vo(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function vS(i,t){let e=vo(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function MS(i,t){i.uniform1iv(this.addr,t)}function bS(i,t){i.uniform2iv(this.addr,t)}function SS(i,t){i.uniform3iv(this.addr,t)}function wS(i,t){i.uniform4iv(this.addr,t)}function ES(i,t){i.uniform1uiv(this.addr,t)}function TS(i,t){i.uniform2uiv(this.addr,t)}function AS(i,t){i.uniform3uiv(this.addr,t)}function RS(i,t){i.uniform4uiv(this.addr,t)}function CS(i,t,e){let n=this.cache,s=t.length,r=rh(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=oh(qg):o=$g;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function PS(i,t,e){let n=this.cache,s=t.length,r=rh(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||Jg,r[o])}function IS(i,t,e){let n=this.cache,s=t.length,r=rh(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=oh(Yg):o=jg;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function LS(i,t,e){let n=this.cache,s=t.length,r=rh(e,s);xn(n,r)||(i.uniform1iv(this.addr,r),yn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||Zg,r[o])}function DS(i){switch(i){case 5126:return pS;case 35664:return mS;case 35665:return gS;case 35666:return _S;case 35674:return xS;case 35675:return yS;case 35676:return vS;case 5124:case 35670:return MS;case 35667:case 35671:return bS;case 35668:case 35672:return SS;case 35669:case 35673:return wS;case 5125:return ES;case 36294:return TS;case 36295:return AS;case 36296:return RS;case 35678:case 36198:case 36298:case 36306:case 35682:return CS;case 35679:case 36299:case 36307:return PS;case 35680:case 36300:case 36308:case 36293:return IS;case 36289:case 36303:case 36311:case 36292:return LS}}var wd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=fS(e.type)}},Ed=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=DS(e.type)}},Td=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},bd=/(\w+)(\])?(\[|\.)?/g;function Pg(i,t){i.seq.push(t),i.map[t.id]=t}function NS(i,t,e){let n=i.name,s=n.length;for(bd.lastIndex=0;;){let r=bd.exec(n),o=bd.lastIndex,a=r[1],l=r[2]==="]",c=r[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===s){Pg(e,c===void 0?new wd(a,i,t):new Ed(a,i,t));break}else{let u=e.map[a];u===void 0&&(u=new Td(a),Pg(e,u)),e=u}}}var yo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),l=t.getUniformLocation(e,a.name);NS(a,l,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],l=n[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function Ig(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var US=37297,FS=0;function OS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var Lg=new se;function BS(i){Me._getMatrix(Lg,Me.workingColorSpace,i);let t=`mat3( ${Lg.elements.map(e=>e.toFixed(4))} )`;switch(Me.getTransfer(i)){case Ko:return[t,"LinearTransferOETF"];case Ce:return[t,"sRGBTransferOETF"];default:return Zt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function Dg(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+OS(i.getShaderSource(t),a)}else return r}function kS(i,t){let e=BS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var zS={[Yu]:"Linear",[Zu]:"Reinhard",[Ju]:"Cineon",[ju]:"ACESFilmic",[Qu]:"AgX",[td]:"Neutral",[Ku]:"Custom"};function VS(i,t){let e=zS[t];return e===void 0?(Zt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var nh=new W;function GS(){Me.getLuminanceCoefficients(nh);let i=nh.x.toFixed(4),t=nh.y.toFixed(4),e=nh.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function HS(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Ra).join(`
`)}function WS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function XS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function Ra(i){return i!==""}function Ng(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function Ug(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var $S=/^[ \t]*#include +<([\w\d./]+)>/gm;function Ad(i){return i.replace($S,qS)}function qS(i,t){let e=de[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return Ad(e)}var YS=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Fg(i){return i.replace(YS,ZS)}function ZS(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Og(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var JS={[ya]:"SHADOWMAP_TYPE_PCF",[po]:"SHADOWMAP_TYPE_VSM"};function jS(i){return JS[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var KS={[go]:"ENVMAP_MODE_REFRACTION"};function QS(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":KS[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var tw={[pc]:"ENVMAP_BLENDING_MULTIPLY",[Qm]:"ENVMAP_BLENDING_MIX",[tg]:"ENVMAP_BLENDING_ADD"};function ew(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":tw[i.combine]||"ENVMAP_BLENDING_NONE"}function nw(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,l=jS(e),c=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=QS(e),u=ew(e),d=HS(e),f=WS(r),g=s.createProgram(),_,m,p=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(_=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ra).join(`
`),_.length>0&&(_+=`
`),m=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(Ra).join(`
`),m.length>0&&(m+=`
`)):(_=[Og(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+h:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Ra).join(`
`),m=[Og(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+c:"",e.envMap?"#define "+h:"",e.envMap?"#define "+u:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+l:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Ji?"#define TONE_MAPPING":"",e.toneMapping!==Ji?de.tonemapping_pars_fragment:"",e.toneMapping!==Ji?VS("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",de.colorspace_pars_fragment,kS("linearToOutputTexel",e.outputColorSpace),GS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(Ra).join(`
`)),o=Ad(o),o=Ng(o,e),o=Ug(o,e),a=Ad(a),a=Ng(a,e),a=Ug(a,e),o=Fg(o),a=Fg(a),e.isRawShaderMaterial!==!0&&(p=`#version 300 es
`,_=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+_,m=["#define varying in",e.glslVersion===dd?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===dd?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+m);let x=p+_+o,T=p+m+a,M=Ig(s,s.VERTEX_SHADER,x),R=Ig(s,s.FRAGMENT_SHADER,T);s.attachShader(g,M),s.attachShader(g,R),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function w(D){if(i.debug.checkShaderErrors){let C=s.getProgramInfoLog(g)||"",O=s.getShaderInfoLog(M)||"",U=s.getShaderInfoLog(R)||"",P=C.trim(),B=O.trim(),$=U.trim(),V=!0,ot=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(V=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,M,R);else{let X=Dg(s,M,"vertex"),Y=Dg(s,R,"fragment");ne("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+D.name+`
Material Type: `+D.type+`

Program Info Log: `+P+`
`+X+`
`+Y)}else P!==""?Zt("WebGLProgram: Program Info Log:",P):(B===""||$==="")&&(ot=!1);ot&&(D.diagnostics={runnable:V,programLog:P,vertexShader:{log:B,prefix:_},fragmentShader:{log:$,prefix:m}})}s.deleteShader(M),s.deleteShader(R),y=new yo(s,g),b=XS(s,g)}let y;this.getUniforms=function(){return y===void 0&&w(this),y};let b;this.getAttributes=function(){return b===void 0&&w(this),b};let F=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return F===!1&&(F=s.getProgramParameter(g,US)),F},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=FS++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=M,this.fragmentShader=R,this}var iw=0,Rd=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new Cd(t),e.set(t,n)),n}},Cd=class{constructor(t){this.id=iw++,this.code=t,this.usedTimes=0}};function sw(i){return i===qs||i===Ea||i===Ta}function rw(i,t,e,n,s,r){let o=new ea,a=new Rd,l=new Set,c=[],h=new Map,u=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(y){return l.add(y),y===0?"uv":`uv${y}`}function g(y,b,F,D,C,O){let U=D.fog,P=C.geometry,B=y.isMeshStandardMaterial||y.isMeshLambertMaterial||y.isMeshPhongMaterial?D.environment:null,$=y.isMeshStandardMaterial||y.isMeshLambertMaterial&&!y.envMap||y.isMeshPhongMaterial&&!y.envMap,V=t.get(y.envMap||B,$),ot=d[y.type],X=n.precision;y.precision!==null&&(X=n.getMaxPrecision(y.precision),X!==y.precision&&Zt("WebGLProgram.getParameters:",y.precision,"not supported, using",X,"instead."));let Y=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,tt=Y!==void 0?Y.length:0,nt=0;P.morphAttributes.position!==void 0&&(nt=1),P.morphAttributes.normal!==void 0&&(nt=2),P.morphAttributes.color!==void 0&&(nt=3);let at,J,mt,ct;if(ot){let Pt=Ki[ot];at=Pt.vertexShader,J=Pt.fragmentShader}else{at=y.vertexShader,J=y.fragmentShader;let Pt=a.getVertexShaderStage(y),ce=a.getFragmentShaderStage(y);a.update(y,Pt,ce),mt=Pt.id,ct=ce.id}let pt=i.getRenderTarget(),xt=i.state.buffers.depth.getReversed(),Wt=C.isInstancedMesh===!0,Kt=C.isBatchedMesh===!0,Gt=!!y.map,fe=!!y.matcap,he=!!V,re=he&&V.isPMREMTexture===!0,$e=!!y.aoMap,Be=!!y.lightMap,on=!!y.bumpMap&&y.wireframe===!1,De=!!y.normalMap,Mn=!!y.displacementMap,be=!!y.emissiveMap,pn=!!y.metalnessMap,Je=!!y.roughnessMap,an=y.anisotropy>0,z=y.clearcoat>0,It=y.diffuseRoughness>0,Jt=y.dispersion>0,le=y.retroreflectivity>0,Tt=y.iridescence>0,Ue=y.sheen>0,Ht=y.transmission>0,Yt=an&&!!y.anisotropyMap,I=z&&!!y.clearcoatMap,S=z&&!!y.clearcoatNormalMap,q=z&&!!y.clearcoatRoughnessMap,ft=It&&!!y.diffuseRoughnessMap,ht=Tt&&!!y.iridescenceMap,bt=Tt&&!!y.iridescenceThicknessMap,St=Ue&&!!y.sheenColorMap,it=Ue&&!!y.sheenRoughnessMap,rt=!!y.specularMap,yt=!!y.specularColorMap,k=!!y.specularIntensityMap,lt=Ht&&!!y.transmissionMap,st=Ht&&!!y.thicknessMap,At=!!y.gradientMap,Mt=!!y.alphaMap,Et=y.alphaTest>0,Xt=!!y.alphaHash,Qt=!!y.extensions,dt=Ji;y.toneMapped&&(pt===null||pt.isXRRenderTarget===!0)&&(dt=i.toneMapping);let kt=re?V.isCompressedCubeTexture?V.image[0].mipmaps:V.mipmaps:null,te={shaderID:ot,shaderType:y.type,shaderName:y.name,vertexShader:at,fragmentShader:J,defines:y.defines,customVertexShaderID:mt,customFragmentShaderID:ct,isRawShaderMaterial:y.isRawShaderMaterial===!0,glslVersion:y.glslVersion,precision:X,batching:Kt,batchingColor:Kt&&C._colorsTexture!==null,instancing:Wt,instancingColor:Wt&&C.instanceColor!==null,instancingMorph:Wt&&C.morphTexture!==null,outputColorSpace:pt===null?i.outputColorSpace:pt.isXRRenderTarget===!0?pt.texture.colorSpace:Me.workingColorSpace,alphaToCoverage:!!y.alphaToCoverage,map:Gt,matcap:fe,envMap:he,envMapMode:he&&V.mapping,envMapPMREM:re,envMapMaxLod:re?kt.length-1:null,envMapSize:re?kt[0].width:null,aoMap:$e,lightMap:Be,bumpMap:on,normalMap:De,displacementMap:Mn,emissiveMap:be,normalMapObjectSpace:De&&y.normalMapType===ig,normalMapTangentSpace:De&&y.normalMapType===th,packedNormalMap:De&&y.normalMapType===th&&sw(y.normalMap.format),metalnessMap:pn,roughnessMap:Je,anisotropy:an,anisotropyMap:Yt,clearcoat:z,clearcoatMap:I,clearcoatNormalMap:S,clearcoatRoughnessMap:q,diffuseRoughness:It,diffuseRoughnessMap:ft,dispersion:Jt,retroreflection:le,iridescence:Tt,iridescenceMap:ht,iridescenceThicknessMap:bt,sheen:Ue,sheenColorMap:St,sheenRoughnessMap:it,specularMap:rt,specularColorMap:yt,specularIntensityMap:k,transmission:Ht,transmissionMap:lt,thicknessMap:st,gradientMap:At,opaque:y.transparent===!1&&y.blending===mo&&y.alphaToCoverage===!1,alphaMap:Mt,alphaTest:Et,alphaHash:Xt,combine:y.combine,mapUv:Gt&&f(y.map.channel),aoMapUv:$e&&f(y.aoMap.channel),lightMapUv:Be&&f(y.lightMap.channel),bumpMapUv:on&&f(y.bumpMap.channel),normalMapUv:De&&f(y.normalMap.channel),displacementMapUv:Mn&&f(y.displacementMap.channel),emissiveMapUv:be&&f(y.emissiveMap.channel),metalnessMapUv:pn&&f(y.metalnessMap.channel),roughnessMapUv:Je&&f(y.roughnessMap.channel),anisotropyMapUv:Yt&&f(y.anisotropyMap.channel),clearcoatMapUv:I&&f(y.clearcoatMap.channel),clearcoatNormalMapUv:S&&f(y.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:q&&f(y.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ft&&f(y.diffuseRoughnessMap.channel),iridescenceMapUv:ht&&f(y.iridescenceMap.channel),iridescenceThicknessMapUv:bt&&f(y.iridescenceThicknessMap.channel),sheenColorMapUv:St&&f(y.sheenColorMap.channel),sheenRoughnessMapUv:it&&f(y.sheenRoughnessMap.channel),specularMapUv:rt&&f(y.specularMap.channel),specularColorMapUv:yt&&f(y.specularColorMap.channel),specularIntensityMapUv:k&&f(y.specularIntensityMap.channel),transmissionMapUv:lt&&f(y.transmissionMap.channel),thicknessMapUv:st&&f(y.thicknessMap.channel),alphaMapUv:Mt&&f(y.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(De||an),vertexNormals:!!P.attributes.normal,vertexColors:y.vertexColors,vertexAlphas:y.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:C.isPoints===!0&&!!P.attributes.uv&&(Gt||Mt),fog:!!U,useFog:y.fog===!0,fogExp2:!!U&&U.isFogExp2,flatShading:y.wireframe===!1&&(y.flatShading===!0||P.attributes.normal===void 0&&De===!1&&(y.isMeshLambertMaterial||y.isMeshPhongMaterial||y.isMeshStandardMaterial||y.isMeshPhysicalMaterial)),sizeAttenuation:y.sizeAttenuation===!0,logarithmicDepthBuffer:u,reversedDepthBuffer:xt,skinning:C.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:tt,morphTextureStride:nt,numSunLights:b.sun.length,numDirLights:b.directional.length,numPointLights:b.point.length,numSpotLights:b.spot.length,numSpotLightMaps:b.spotLightMap.length,numRectAreaLights:b.rectArea.length,numHemiLights:b.hemi.length,numSunLightShadows:b.sunShadowMap.length,numDirLightShadows:b.directionalShadowMap.length,numPointLightShadows:b.pointShadowMap.length,numSpotLightShadows:b.spotShadowMap.length,numSpotLightShadowsWithMaps:b.numSpotLightShadowsWithMaps,numLightProbes:b.numLightProbes,numLightProbeGrids:O.filter(Pt=>Pt.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:y.dithering,shadowMapEnabled:i.shadowMap.enabled&&F.length>0,shadowMapType:i.shadowMap.type,toneMapping:dt,decodeVideoTexture:Gt&&y.map.isVideoTexture===!0&&Me.getTransfer(y.map.colorSpace)===Ce,decodeVideoTextureEmissive:be&&y.emissiveMap.isVideoTexture===!0&&Me.getTransfer(y.emissiveMap.colorSpace)===Ce,premultipliedAlpha:y.premultipliedAlpha,doubleSided:y.side===Jn,flipSided:y.side===Ln,useDepthPacking:y.depthPacking>=0,depthPacking:y.depthPacking||0,index0AttributeName:y.index0AttributeName,extensionClipCullDistance:Qt&&y.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Qt&&y.extensions.multiDraw===!0||Kt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:y.customProgramCacheKey()};return te.vertexUv1s=l.has(1),te.vertexUv2s=l.has(2),te.vertexUv3s=l.has(3),l.clear(),te}function _(y){let b=[];if(y.shaderID?b.push(y.shaderID):(b.push(y.customVertexShaderID),b.push(y.customFragmentShaderID)),y.defines!==void 0)for(let F in y.defines)b.push(F),b.push(y.defines[F]);return y.isRawShaderMaterial===!1&&(m(b,y),p(b,y),b.push(i.outputColorSpace)),b.push(y.customProgramCacheKey),b.join()}function m(y,b){y.push(b.precision),y.push(b.outputColorSpace),y.push(b.envMapMode),y.push(b.envMapPMREM),y.push(b.envMapMaxLod),y.push(b.envMapSize),y.push(b.mapUv),y.push(b.alphaMapUv),y.push(b.lightMapUv),y.push(b.aoMapUv),y.push(b.bumpMapUv),y.push(b.normalMapUv),y.push(b.displacementMapUv),y.push(b.emissiveMapUv),y.push(b.metalnessMapUv),y.push(b.roughnessMapUv),y.push(b.anisotropyMapUv),y.push(b.clearcoatMapUv),y.push(b.clearcoatNormalMapUv),y.push(b.clearcoatRoughnessMapUv),y.push(b.diffuseRoughnessMapUv),y.push(b.iridescenceMapUv),y.push(b.iridescenceThicknessMapUv),y.push(b.sheenColorMapUv),y.push(b.sheenRoughnessMapUv),y.push(b.specularMapUv),y.push(b.specularColorMapUv),y.push(b.specularIntensityMapUv),y.push(b.transmissionMapUv),y.push(b.thicknessMapUv),y.push(b.combine),y.push(b.fogExp2),y.push(b.sizeAttenuation),y.push(b.morphTargetsCount),y.push(b.numSunLights),y.push(b.numDirLights),y.push(b.numPointLights),y.push(b.numSpotLights),y.push(b.numSpotLightMaps),y.push(b.numHemiLights),y.push(b.numRectAreaLights),y.push(b.numSunLightShadows),y.push(b.numDirLightShadows),y.push(b.numPointLightShadows),y.push(b.numSpotLightShadows),y.push(b.numSpotLightShadowsWithMaps),y.push(b.numLightProbes),y.push(b.numLightProbeGrids),y.push(b.shadowMapType),y.push(b.toneMapping),y.push(b.numClippingPlanes),y.push(b.numClipIntersection),y.push(b.depthPacking)}function p(y,b){o.disableAll(),b.instancing&&o.enable(0),b.instancingColor&&o.enable(1),b.instancingMorph&&o.enable(2),b.matcap&&o.enable(3),b.envMap&&o.enable(4),b.normalMapObjectSpace&&o.enable(5),b.normalMapTangentSpace&&o.enable(6),b.clearcoat&&o.enable(7),b.iridescence&&o.enable(8),b.alphaTest&&o.enable(9),b.vertexColors&&o.enable(10),b.vertexAlphas&&o.enable(11),b.vertexUv1s&&o.enable(12),b.vertexUv2s&&o.enable(13),b.vertexUv3s&&o.enable(14),b.vertexTangents&&o.enable(15),b.anisotropy&&o.enable(16),b.alphaHash&&o.enable(17),b.batching&&o.enable(18),b.dispersion&&o.enable(19),b.retroreflection&&o.enable(24),b.diffuseRoughness&&o.enable(25),b.batchingColor&&o.enable(20),b.gradientMap&&o.enable(21),b.packedNormalMap&&o.enable(22),b.vertexNormals&&o.enable(23),y.push(o.mask),o.disableAll(),b.fog&&o.enable(0),b.useFog&&o.enable(1),b.flatShading&&o.enable(2),b.logarithmicDepthBuffer&&o.enable(3),b.reversedDepthBuffer&&o.enable(4),b.skinning&&o.enable(5),b.morphTargets&&o.enable(6),b.morphNormals&&o.enable(7),b.morphColors&&o.enable(8),b.premultipliedAlpha&&o.enable(9),b.shadowMapEnabled&&o.enable(10),b.doubleSided&&o.enable(11),b.flipSided&&o.enable(12),b.useDepthPacking&&o.enable(13),b.dithering&&o.enable(14),b.transmission&&o.enable(15),b.sheen&&o.enable(16),b.opaque&&o.enable(17),b.pointsUvs&&o.enable(18),b.decodeVideoTexture&&o.enable(19),b.decodeVideoTextureEmissive&&o.enable(20),b.alphaToCoverage&&o.enable(21),b.numLightProbeGrids>0&&o.enable(22),b.hasPositionAttribute&&o.enable(23),y.push(o.mask)}function x(y){let b=d[y.type],F;if(b){let D=Ki[b];F=xg.clone(D.uniforms)}else F=y.uniforms;return F}function T(y,b){let F=h.get(b);return F!==void 0?++F.usedTimes:(F=new nw(i,b,y,s),c.push(F),h.set(b,F)),F}function M(y){if(--y.usedTimes===0){let b=c.indexOf(y);c[b]=c[c.length-1],c.pop(),h.delete(y.cacheKey),y.destroy()}}function R(y){a.remove(y)}function w(){a.dispose()}return{getParameters:g,getProgramCacheKey:_,getUniforms:x,acquireProgram:T,releaseProgram:M,releaseShaderCache:R,programs:c,dispose:w}}function ow(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,l){i.get(o)[a]=l}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function aw(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function Bg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function kg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,_,m,p){let x=i[t];return x===void 0?(x={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:_,renderOrder:d.renderOrder,z:m,group:p},i[t]=x):(x.id=d.id,x.object=d,x.geometry=f,x.material=g,x.materialVariant=o(d),x.groupOrder=_,x.renderOrder=d.renderOrder,x.z=m,x.group=p),t++,x}function l(d,f,g,_,m,p,x){x.reversedDepth===!0&&(m=-m);let T=a(d,f,g,_,m,p);g.transmission>0?n.push(T):g.transparent===!0?s.push(T):e.push(T)}function c(d,f,g,_,m,p){let x=a(d,f,g,_,m,p);g.transmission>0?n.unshift(x):g.transparent===!0?s.unshift(x):e.unshift(x)}function h(d,f){e.length>1&&e.sort(d||aw),n.length>1&&n.sort(f||Bg),s.length>1&&s.sort(f||Bg)}function u(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:u,sort:h}}function lw(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new kg,i.set(n,[o])):s>=r.length?(o=new kg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function cw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new W,color:new ae};break;case"SpotLight":e={position:new W,direction:new W,color:new ae,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new W,color:new ae,distance:0,decay:0};break;case"HemisphereLight":e={direction:new W,skyColor:new ae,groundColor:new ae};break;case"RectAreaLight":e={color:new ae,position:new W,halfWidth:new W,halfHeight:new W};break}return i[t.id]=e,e}}}function hw(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var uw=0;function dw(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function fw(i){let t=new cw,e=hw(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new W);let s=new W,r=new Xe,o=new Xe;function a(c){let h=0,u=0,d=0;for(let O=0;O<9;O++)n.probe[O].set(0,0,0);let f=0,g=0,_=0,m=0,p=0,x=0,T=0,M=0,R=0,w=0,y=0,b=0,F=0,D=0;c.sort(dw);for(let O=0,U=c.length;O<U;O++){let P=c[O],B=P.color,$=P.intensity,V=P.distance,ot=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===qs?ot=P.shadow.map.texture:ot=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)h+=B.r*$,u+=B.g*$,d+=B.b*$;else if(P.isLightProbe){for(let X=0;X<9;X++)n.probe[X].addScaledVector(P.sh.coefficients[X],$);D++}else if(P.isSunLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let Y=P.shadow,tt=e.get(P);tt.shadowIntensity=Y.intensity,tt.shadowBias=Y.bias,tt.shadowNormalBias=Y.normalBias,tt.shadowRadius=Y.radius,tt.shadowMapSize.copy(Y.mapSize).multiply(Y.getFrameExtents()),n.sunShadow[g]=tt,n.sunShadowMap[g]=ot;let nt=Y.getViewportCount();for(let at=0;at<nt;at++)n.sunShadowMatrix[_+at]=Y.getMatrix(at),n.sunShadowCascade[_+at]=Y._cascadeData[at];_+=nt,g++}n.sun[f]=X,f++}else if(P.isDirectionalLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let Y=P.shadow,tt=e.get(P);tt.shadowIntensity=Y.intensity,tt.shadowBias=Y.bias,tt.shadowNormalBias=Y.normalBias,tt.shadowRadius=Y.radius,tt.shadowMapSize=Y.mapSize,n.directionalShadow[m]=tt,n.directionalShadowMap[m]=ot,n.directionalShadowMatrix[m]=P.shadow.matrix,R++}n.directional[m]=X,m++}else if(P.isSpotLight){let X=t.get(P);X.position.setFromMatrixPosition(P.matrixWorld),X.color.copy(B).multiplyScalar($),X.distance=V,X.coneCos=Math.cos(P.angle),X.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),X.decay=P.decay,n.spot[x]=X;let Y=P.shadow;if(P.map&&(n.spotLightMap[b]=P.map,b++,Y.updateMatrices(P),P.castShadow&&F++),n.spotLightMatrix[x]=Y.matrix,P.castShadow){let tt=e.get(P);tt.shadowIntensity=Y.intensity,tt.shadowBias=Y.bias,tt.shadowNormalBias=Y.normalBias,tt.shadowRadius=Y.radius,tt.shadowMapSize=Y.mapSize,n.spotShadow[x]=tt,n.spotShadowMap[x]=ot,y++}x++}else if(P.isRectAreaLight){let X=t.get(P);X.color.copy(B).multiplyScalar($),X.halfWidth.set(P.width*.5,0,0),X.halfHeight.set(0,P.height*.5,0),n.rectArea[T]=X,T++}else if(P.isPointLight){let X=t.get(P);if(X.color.copy(P.color).multiplyScalar(P.intensity),X.distance=P.distance,X.decay=P.decay,P.castShadow){let Y=P.shadow,tt=e.get(P);tt.shadowIntensity=Y.intensity,tt.shadowBias=Y.bias,tt.shadowNormalBias=Y.normalBias,tt.shadowRadius=Y.radius,tt.shadowMapSize=Y.mapSize,tt.shadowCameraNear=Y.camera.near,tt.shadowCameraFar=Y.camera.far,n.pointShadow[p]=tt,n.pointShadowMap[p]=ot,n.pointShadowMatrix[p]=P.shadow.matrix,w++}n.point[p]=X,p++}else if(P.isHemisphereLight){let X=t.get(P);X.skyColor.copy(P.color).multiplyScalar($),X.groundColor.copy(P.groundColor).multiplyScalar($),n.hemi[M]=X,M++}}T>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Nt.LTC_FLOAT_1,n.rectAreaLTC2=Nt.LTC_FLOAT_2):(n.rectAreaLTC1=Nt.LTC_HALF_1,n.rectAreaLTC2=Nt.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=u,n.ambient[2]=d;let C=n.hash;(C.sunLength!==f||C.directionalLength!==m||C.pointLength!==p||C.spotLength!==x||C.rectAreaLength!==T||C.hemiLength!==M||C.numSunShadows!==g||C.numDirectionalShadows!==R||C.numPointShadows!==w||C.numSpotShadows!==y||C.numSpotMaps!==b||C.numLightProbes!==D)&&(n.sun.length=f,n.directional.length=m,n.spot.length=x,n.rectArea.length=T,n.point.length=p,n.hemi.length=M,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=_,n.sunShadowCascade.length=_,n.directionalShadow.length=R,n.directionalShadowMap.length=R,n.directionalShadowMatrix.length=R,n.pointShadow.length=w,n.pointShadowMap.length=w,n.pointShadowMatrix.length=w,n.spotShadow.length=y,n.spotShadowMap.length=y,n.spotLightMatrix.length=y+b-F,n.spotLightMap.length=b,n.numSpotLightShadowsWithMaps=F,n.numLightProbes=D,C.sunLength=f,C.directionalLength=m,C.pointLength=p,C.spotLength=x,C.rectAreaLength=T,C.hemiLength=M,C.numSunShadows=g,C.numDirectionalShadows=R,C.numPointShadows=w,C.numSpotShadows=y,C.numSpotMaps=b,C.numLightProbes=D,n.version=uw++)}function l(c,h){let u=0,d=0,f=0,g=0,_=0,m=0,p=h.matrixWorldInverse;for(let x=0,T=c.length;x<T;x++){let M=c[x];if(M.isSunLight){let R=n.sun[u];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(p),u++}else if(M.isDirectionalLight){let R=n.directional[d];R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(p),d++}else if(M.isSpotLight){let R=n.spot[g];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(p),R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(p),g++}else if(M.isRectAreaLight){let R=n.rectArea[_];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(p),o.identity(),r.copy(M.matrixWorld),r.premultiply(p),o.extractRotation(r),R.halfWidth.set(M.width*.5,0,0),R.halfHeight.set(0,M.height*.5,0),R.halfWidth.applyMatrix4(o),R.halfHeight.applyMatrix4(o),_++}else if(M.isPointLight){let R=n.point[f];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(p),f++}else if(M.isHemisphereLight){let R=n.hemi[m];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(p),m++}}}return{setup:a,setupView:l,state:n}}function zg(i){let t=new fw(i),e=[],n=[],s=[];function r(u){h.camera=u,e.length=0,n.length=0,s.length=0}function o(u){u.isLightProbeGrid?s.push(u):e.push(u)}function a(u){n.push(u)}function l(){t.setup(e),s.sort((u,d)=>u.priority-d.priority||u.id-d.id)}function c(u){t.setupView(e,u)}let h={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function pw(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new zg(i),t.set(s,[a])):r>=o.length?(a=new zg(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var mw=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,gw=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,_w=[new W(1,0,0),new W(-1,0,0),new W(0,1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1)],xw=[new W(0,-1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1),new W(0,-1,0),new W(0,-1,0)],Vg=new Xe,Aa=new W,Sd=new W;function yw(i,t,e){let n=new zs,s=new ie,r=new ie,o=new Ye,a=new tc,l=new ec,c={},h=e.maxTextureSize,u={[Ni]:Ln,[Ln]:Ni,[Jn]:Jn},d=new Zi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ie},radius:{value:4}},vertexShader:mw,fragmentShader:gw}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new kn;g.setAttribute("position",new On(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let _=new Cn(g,d),m=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=ya;let p=this.type;this.render=function(w,y,b){if(m.enabled===!1||m.autoUpdate===!1&&m.needsUpdate===!1||w.length===0)return;this.type===Nm&&(Zt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=ya);let F=i.getRenderTarget(),D=i.getActiveCubeFace(),C=i.getActiveMipmapLevel(),O=i.state;O.setBlending(fr),O.buffers.depth.getReversed()===!0?O.buffers.color.setClear(0,0,0,0):O.buffers.color.setClear(1,1,1,1),O.buffers.depth.setTest(!0),O.setScissorTest(!1);let U=p!==this.type;U&&y.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(B=>B.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,B=w.length;P<B;P++){let $=w[P],V=$.shadow;if(V===void 0){Zt("WebGLShadowMap:",$,"has no shadow.");continue}if(V.autoUpdate===!1&&V.needsUpdate===!1)continue;s.copy(V.mapSize);let ot=V.getFrameExtents();s.multiply(ot),r.copy(V.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/ot.x),s.x=r.x*ot.x,V.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/ot.y),s.y=r.y*ot.y,V.mapSize.y=r.y));let X=i.state.buffers.depth.getReversed();if(V.camera._reversedDepth=X,V.map===null||U===!0){if(V.map!==null&&(V.map.depthTexture!==null&&(V.map.depthTexture.dispose(),V.map.depthTexture=null),V.map.dispose()),this.type===po){if($.isPointLight){Zt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}V.map=new di(s.x,s.y,{format:qs,type:Oi,minFilter:Zn,magFilter:Zn,generateMipmaps:!1}),V.map.texture.name=$.name+".shadowMap",V.map.depthTexture=new xs(s.x,s.y,Fi),V.map.depthTexture.name=$.name+".shadowMapDepth",V.map.depthTexture.format=ps,V.map.depthTexture.compareFunction=null,V.map.depthTexture.minFilter=Rn,V.map.depthTexture.magFilter=Rn}else $.isPointLight?(V.map=new Ca(s.x),V.map.depthTexture=new la(s.x,Ui)):(V.map=new di(s.x,s.y),V.map.depthTexture=new xs(s.x,s.y,Ui)),V.map.depthTexture.name=$.name+".shadowMap",V.map.depthTexture.format=ps,this.type===ya?(V.map.depthTexture.compareFunction=X?hd:cd,V.map.depthTexture.minFilter=Zn,V.map.depthTexture.magFilter=Zn):(V.map.depthTexture.compareFunction=null,V.map.depthTexture.minFilter=Rn,V.map.depthTexture.magFilter=Rn);V.camera.updateProjectionMatrix()}V.map.isWebGLCubeRenderTarget!==!0&&(V.map.width!==s.x||V.map.height!==s.y)&&V.map.setSize(s.x,s.y);let Y=V.map.isWebGLCubeRenderTarget?6:V.getViewportCount();$.isPointLight!==!0&&V.updateMatrices($,b);let tt=(V.camera.layers.mask&4294967294)!==0?V.camera.layers:b.layers;for(let nt=0;nt<Y;nt++){let at=V.getCamera(nt);if($.isPointLight){let J=V.camera,mt=V.matrix,ct=$.distance||J.far;ct!==J.far&&(J.far=ct,J.updateProjectionMatrix()),Aa.setFromMatrixPosition($.matrixWorld),J.position.copy(Aa),Sd.copy(J.position),Sd.add(_w[nt]),J.up.copy(xw[nt]),J.lookAt(Sd),J.updateMatrixWorld(),mt.makeTranslation(-Aa.x,-Aa.y,-Aa.z),Vg.multiplyMatrices(J.projectionMatrix,J.matrixWorldInverse),V._frustum.setFromProjectionMatrix(Vg,J.coordinateSystem,J.reversedDepth)}if(V.map.isWebGLCubeRenderTarget)i.setRenderTarget(V.map,nt),i.clear();else{nt===0&&(i.setRenderTarget(V.map),i.clear());let J=V.getViewport(nt);o.set(r.x*J.x,r.y*J.y,r.x*J.z,r.y*J.w),O.viewport(o)}n=V.getFrustum(nt),M(y,b,at,$,tt,this.type)}V.isPointLightShadow!==!0&&this.type===po&&x(V,b),V.needsUpdate=!1}p=this.type,m.needsUpdate=!1,i.setRenderTarget(F,D,C)};function x(w,y){let b=t.update(_);d.defines.VSM_SAMPLES!==w.blurSamples&&(d.defines.VSM_SAMPLES=w.blurSamples,f.defines.VSM_SAMPLES=w.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),w.mapPass===null?w.mapPass=new di(s.x,s.y,{format:qs,type:Oi}):(w.mapPass.width!==w.map.width||w.mapPass.height!==w.map.height)&&w.mapPass.setSize(w.map.width,w.map.height),d.uniforms.shadow_pass.value=w.map.depthTexture,d.uniforms.resolution.value.set(w.map.width,w.map.height),d.uniforms.radius.value=w.radius,i.setRenderTarget(w.mapPass),i.clear(),i.renderBufferDirect(y,null,b,d,_,null),f.uniforms.shadow_pass.value=w.mapPass.texture,f.uniforms.resolution.value.set(w.map.width,w.map.height),f.uniforms.radius.value=w.radius,i.setRenderTarget(w.map),i.clear(),i.renderBufferDirect(y,null,b,f,_,null)}function T(w,y,b,F){let D=null,C=b.isPointLight===!0?w.customDistanceMaterial:w.customDepthMaterial;if(C!==void 0)D=C;else if(D=b.isPointLight===!0?l:a,i.localClippingEnabled&&y.clipShadows===!0&&Array.isArray(y.clippingPlanes)&&y.clippingPlanes.length!==0||y.displacementMap&&y.displacementScale!==0||y.alphaMap&&y.alphaTest>0||y.map&&y.alphaTest>0||y.alphaToCoverage===!0){let O=D.uuid,U=y.uuid,P=c[O];P===void 0&&(P={},c[O]=P);let B=P[U];B===void 0&&(B=D.clone(),P[U]=B,y.addEventListener("dispose",R)),D=B}if(D.visible=y.visible,D.wireframe=y.wireframe,F===po?D.side=y.shadowSide!==null?y.shadowSide:y.side:D.side=y.shadowSide!==null?y.shadowSide:u[y.side],D.alphaMap=y.alphaMap,D.alphaTest=y.alphaToCoverage===!0?.5:y.alphaTest,D.map=y.map,D.clipShadows=y.clipShadows,D.clippingPlanes=y.clippingPlanes,D.clipIntersection=y.clipIntersection,D.displacementMap=y.displacementMap,D.displacementScale=y.displacementScale,D.displacementBias=y.displacementBias,D.wireframeLinewidth=y.wireframeLinewidth,D.linewidth=y.linewidth,b.isPointLight===!0&&D.isMeshDistanceMaterial===!0){let O=i.properties.get(D);O.light=b}return D}function M(w,y,b,F,D,C){if(w.visible===!1)return;if(w.layers.test(D)&&(w.isMesh||w.isLine||w.isPoints)&&(w.castShadow||w.receiveShadow&&C===po)&&(!w.frustumCulled||w.intersectsFrustum(n))){w.modelViewMatrix.multiplyMatrices(b.matrixWorldInverse,w.matrixWorld);let P=t.update(w),B=w.material;if(Array.isArray(B)){let $=P.groups;for(let V=0,ot=$.length;V<ot;V++){let X=$[V],Y=B[X.materialIndex];if(Y&&Y.visible){let tt=T(w,Y,F,C);w.onBeforeShadow(i,w,y,b,P,tt,X),i.renderBufferDirect(b,null,P,tt,w,X),w.onAfterShadow(i,w,y,b,P,tt,X)}}}else if(B.visible){let $=T(w,B,F,C);w.onBeforeShadow(i,w,y,b,P,$,null),i.renderBufferDirect(b,null,P,$,w,null),w.onAfterShadow(i,w,y,b,P,$,null)}}let U=w.children;for(let P=0,B=U.length;P<B;P++)M(U[P],y,b,F,D,C)}function R(w){w.target.removeEventListener("dispose",R);for(let b in c){let F=c[b],D=w.target.uuid;D in F&&(F[D].dispose(),delete F[D])}}}function vw(i,t){function e(){let k=!1,lt=new Ye,st=null,At=new Ye(0,0,0,0);return{setMask:function(Mt){st!==Mt&&!k&&(i.colorMask(Mt,Mt,Mt,Mt),st=Mt)},setLocked:function(Mt){k=Mt},setClear:function(Mt,Et,Xt,Qt,dt){dt===!0&&(Mt*=Qt,Et*=Qt,Xt*=Qt),lt.set(Mt,Et,Xt,Qt),At.equals(lt)===!1&&(i.clearColor(Mt,Et,Xt,Qt),At.copy(lt))},reset:function(){k=!1,st=null,At.set(-1,0,0,0)}}}function n(){let k=!1,lt=!1,st=null,At=null,Mt=null;return{setReversed:function(Et){if(lt!==Et){let Xt=t.get("EXT_clip_control");Et?Xt.clipControlEXT(Xt.LOWER_LEFT_EXT,Xt.ZERO_TO_ONE_EXT):Xt.clipControlEXT(Xt.LOWER_LEFT_EXT,Xt.NEGATIVE_ONE_TO_ONE_EXT),lt=Et;let Qt=Mt;Mt=null,this.setClear(Qt)}},getReversed:function(){return lt},setTest:function(Et){Et?xt(i.DEPTH_TEST):Wt(i.DEPTH_TEST)},setMask:function(Et){st!==Et&&!k&&(i.depthMask(Et),st=Et)},setFunc:function(Et){if(lt&&(Et=pg[Et]),At!==Et){switch(Et){case Fl:i.depthFunc(i.NEVER);break;case Ol:i.depthFunc(i.ALWAYS);break;case Bl:i.depthFunc(i.LESS);break;case io:i.depthFunc(i.LEQUAL);break;case kl:i.depthFunc(i.EQUAL);break;case zl:i.depthFunc(i.GEQUAL);break;case Vl:i.depthFunc(i.GREATER);break;case Gl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}At=Et}},setLocked:function(Et){k=Et},setClear:function(Et){Mt!==Et&&(Mt=Et,lt&&(Et=1-Et),i.clearDepth(Et))},reset:function(){k=!1,st=null,At=null,Mt=null,lt=!1}}}function s(){let k=!1,lt=null,st=null,At=null,Mt=null,Et=null,Xt=null,Qt=null,dt=null;return{setTest:function(kt){k||(kt?xt(i.STENCIL_TEST):Wt(i.STENCIL_TEST))},setMask:function(kt){lt!==kt&&!k&&(i.stencilMask(kt),lt=kt)},setFunc:function(kt,te,Pt){(st!==kt||At!==te||Mt!==Pt)&&(i.stencilFunc(kt,te,Pt),st=kt,At=te,Mt=Pt)},setOp:function(kt,te,Pt){(Et!==kt||Xt!==te||Qt!==Pt)&&(i.stencilOp(kt,te,Pt),Et=kt,Xt=te,Qt=Pt)},setLocked:function(kt){k=kt},setClear:function(kt){dt!==kt&&(i.clearStencil(kt),dt=kt)},reset:function(){k=!1,lt=null,st=null,At=null,Mt=null,Et=null,Xt=null,Qt=null,dt=null}}}let r=new e,o=new n,a=new s,l={},c=new WeakMap,h={},u={},d={},f=new WeakMap,g=[],_=null,m=!1,p=null,x=null,T=null,M=null,R=null,w=null,y=null,b=new ae(0,0,0),F=0,D=!1,C=null,O=null,U=null,P=null,B=null,$=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),V=!1,ot=0,X=i.getParameter(i.VERSION);X.indexOf("WebGL")!==-1?(ot=parseFloat(/^WebGL (\d)/.exec(X)[1]),V=ot>=1):X.indexOf("OpenGL ES")!==-1&&(ot=parseFloat(/^OpenGL ES (\d)/.exec(X)[1]),V=ot>=2);let Y=null,tt={},nt=i.getParameter(i.SCISSOR_BOX),at=i.getParameter(i.VIEWPORT),J=new Ye().fromArray(nt),mt=new Ye().fromArray(at);function ct(k,lt,st,At){let Mt=new Uint8Array(4),Et=i.createTexture();i.bindTexture(k,Et),i.texParameteri(k,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(k,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Xt=0;Xt<st;Xt++)k===i.TEXTURE_3D||k===i.TEXTURE_2D_ARRAY?i.texImage3D(lt,0,i.RGBA,1,1,At,0,i.RGBA,i.UNSIGNED_BYTE,Mt):i.texImage2D(lt+Xt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,Mt);return Et}let pt={};pt[i.TEXTURE_2D]=ct(i.TEXTURE_2D,i.TEXTURE_2D,1),pt[i.TEXTURE_CUBE_MAP]=ct(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),pt[i.TEXTURE_2D_ARRAY]=ct(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),pt[i.TEXTURE_3D]=ct(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),xt(i.DEPTH_TEST),o.setFunc(io),on(!1),De(Gu),xt(i.CULL_FACE),$e(fr);function xt(k){h[k]!==!0&&(i.enable(k),h[k]=!0)}function Wt(k){h[k]!==!1&&(i.disable(k),h[k]=!1)}function Kt(k,lt){return d[k]!==lt?(i.bindFramebuffer(k,lt),d[k]=lt,k===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=lt),k===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=lt),!0):!1}function Gt(k,lt){let st=g,At=!1;if(k){st=f.get(lt),st===void 0&&(st=[],f.set(lt,st));let Mt=k.textures;if(st.length!==Mt.length||st[0]!==i.COLOR_ATTACHMENT0){for(let Et=0,Xt=Mt.length;Et<Xt;Et++)st[Et]=i.COLOR_ATTACHMENT0+Et;st.length=Mt.length,At=!0}}else st[0]!==i.BACK&&(st[0]=i.BACK,At=!0);At&&i.drawBuffers(st)}function fe(k){return _!==k?(i.useProgram(k),_=k,!0):!1}let he={[pr]:i.FUNC_ADD,[Fm]:i.FUNC_SUBTRACT,[Om]:i.FUNC_REVERSE_SUBTRACT};he[Bm]=i.MIN,he[km]=i.MAX;let re={[zm]:i.ZERO,[Vm]:i.ONE,[Gm]:i.SRC_COLOR,[$u]:i.SRC_ALPHA,[Ym]:i.SRC_ALPHA_SATURATE,[$m]:i.DST_COLOR,[Wm]:i.DST_ALPHA,[Hm]:i.ONE_MINUS_SRC_COLOR,[qu]:i.ONE_MINUS_SRC_ALPHA,[qm]:i.ONE_MINUS_DST_COLOR,[Xm]:i.ONE_MINUS_DST_ALPHA,[Zm]:i.CONSTANT_COLOR,[Jm]:i.ONE_MINUS_CONSTANT_COLOR,[jm]:i.CONSTANT_ALPHA,[Km]:i.ONE_MINUS_CONSTANT_ALPHA};function $e(k,lt,st,At,Mt,Et,Xt,Qt,dt,kt){if(k===fr){m===!0&&(Wt(i.BLEND),m=!1);return}if(m===!1&&(xt(i.BLEND),m=!0),k!==Um){if(k!==p||kt!==D){if((x!==pr||R!==pr)&&(i.blendEquation(i.FUNC_ADD),x=pr,R=pr),kt)switch(k){case mo:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Hu:i.blendFunc(i.ONE,i.ONE);break;case Wu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Xu:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ne("WebGLState: Invalid blending: ",k);break}else switch(k){case mo:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Hu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Wu:ne("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Xu:ne("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ne("WebGLState: Invalid blending: ",k);break}T=null,M=null,w=null,y=null,b.set(0,0,0),F=0,p=k,D=kt}return}Mt=Mt||lt,Et=Et||st,Xt=Xt||At,(lt!==x||Mt!==R)&&(i.blendEquationSeparate(he[lt],he[Mt]),x=lt,R=Mt),(st!==T||At!==M||Et!==w||Xt!==y)&&(i.blendFuncSeparate(re[st],re[At],re[Et],re[Xt]),T=st,M=At,w=Et,y=Xt),(Qt.equals(b)===!1||dt!==F)&&(i.blendColor(Qt.r,Qt.g,Qt.b,dt),b.copy(Qt),F=dt),p=k,D=!1}function Be(k,lt){k.side===Jn?Wt(i.CULL_FACE):xt(i.CULL_FACE);let st=k.side===Ln;lt&&(st=!st),on(st),k.blending===mo&&k.transparent===!1?$e(fr):$e(k.blending,k.blendEquation,k.blendSrc,k.blendDst,k.blendEquationAlpha,k.blendSrcAlpha,k.blendDstAlpha,k.blendColor,k.blendAlpha,k.premultipliedAlpha),o.setFunc(k.depthFunc),o.setTest(k.depthTest),o.setMask(k.depthWrite),r.setMask(k.colorWrite);let At=k.stencilWrite;a.setTest(At),At&&(a.setMask(k.stencilWriteMask),a.setFunc(k.stencilFunc,k.stencilRef,k.stencilFuncMask),a.setOp(k.stencilFail,k.stencilZFail,k.stencilZPass)),be(k.polygonOffset,k.polygonOffsetFactor,k.polygonOffsetUnits),k.alphaToCoverage===!0?xt(i.SAMPLE_ALPHA_TO_COVERAGE):Wt(i.SAMPLE_ALPHA_TO_COVERAGE)}function on(k){C!==k&&(k?i.frontFace(i.CW):i.frontFace(i.CCW),C=k)}function De(k){k!==Lm?(xt(i.CULL_FACE),k!==O&&(k===Gu?i.cullFace(i.BACK):k===Dm?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Wt(i.CULL_FACE),O=k}function Mn(k){k!==U&&(V&&i.lineWidth(k),U=k)}function be(k,lt,st){k?(xt(i.POLYGON_OFFSET_FILL),(P!==lt||B!==st)&&(P=lt,B=st,o.getReversed()&&(lt=-lt,st=-st),i.polygonOffset(lt,st))):Wt(i.POLYGON_OFFSET_FILL)}function pn(k){k?xt(i.SCISSOR_TEST):Wt(i.SCISSOR_TEST)}function Je(k){k===void 0&&(k=i.TEXTURE0+$-1),Y!==k&&(i.activeTexture(k),Y=k)}function an(k,lt,st){st===void 0&&(Y===null?st=i.TEXTURE0+$-1:st=Y);let At=tt[st];At===void 0&&(At={type:void 0,texture:void 0},tt[st]=At),(At.type!==k||At.texture!==lt)&&(Y!==st&&(i.activeTexture(st),Y=st),i.bindTexture(k,lt||pt[k]),At.type=k,At.texture=lt)}function z(){let k=tt[Y];k!==void 0&&k.type!==void 0&&(i.bindTexture(k.type,null),k.type=void 0,k.texture=void 0)}function It(){try{i.compressedTexImage2D(...arguments)}catch(k){ne("WebGLState:",k)}}function Jt(){try{i.compressedTexImage3D(...arguments)}catch(k){ne("WebGLState:",k)}}function le(){try{i.texSubImage2D(...arguments)}catch(k){ne("WebGLState:",k)}}function Tt(){try{i.texSubImage3D(...arguments)}catch(k){ne("WebGLState:",k)}}function Ue(){try{i.compressedTexSubImage2D(...arguments)}catch(k){ne("WebGLState:",k)}}function Ht(){try{i.compressedTexSubImage3D(...arguments)}catch(k){ne("WebGLState:",k)}}function Yt(){try{i.texStorage2D(...arguments)}catch(k){ne("WebGLState:",k)}}function I(){try{i.texStorage3D(...arguments)}catch(k){ne("WebGLState:",k)}}function S(){try{i.texImage2D(...arguments)}catch(k){ne("WebGLState:",k)}}function q(){try{i.texImage3D(...arguments)}catch(k){ne("WebGLState:",k)}}function ft(k){return u[k]!==void 0?u[k]:i.getParameter(k)}function ht(k,lt){u[k]!==lt&&(i.pixelStorei(k,lt),u[k]=lt)}function bt(k){J.equals(k)===!1&&(i.scissor(k.x,k.y,k.z,k.w),J.copy(k))}function St(k){mt.equals(k)===!1&&(i.viewport(k.x,k.y,k.z,k.w),mt.copy(k))}function it(k,lt){let st=c.get(lt);st===void 0&&(st=new WeakMap,c.set(lt,st));let At=st.get(k);At===void 0&&(At=i.getUniformBlockIndex(lt,k.name),i.uniformBlockBinding(lt,At,At),st.set(k,At))}function rt(k,lt,st){let Mt=c.get(lt).get(k);l[Mt]!==st&&(i.bindBufferBase(i.UNIFORM_BUFFER,Mt,st),l[Mt]=st)}function yt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},u={},Y=null,tt={},d={},l={},f=new WeakMap,g=[],_=null,m=!1,p=null,x=null,T=null,M=null,R=null,w=null,y=null,b=new ae(0,0,0),F=0,D=!1,C=null,O=null,U=null,P=null,B=null,J.set(0,0,i.canvas.width,i.canvas.height),mt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:xt,disable:Wt,bindFramebuffer:Kt,drawBuffers:Gt,useProgram:fe,setBlending:$e,setMaterial:Be,setFlipSided:on,setCullFace:De,setLineWidth:Mn,setPolygonOffset:be,setScissorTest:pn,activeTexture:Je,bindTexture:an,unbindTexture:z,compressedTexImage2D:It,compressedTexImage3D:Jt,texImage2D:S,texImage3D:q,pixelStorei:ht,getParameter:ft,updateUBOMapping:it,uniformBlockBinding:rt,texStorage2D:Yt,texStorage3D:I,texSubImage2D:le,texSubImage3D:Tt,compressedTexSubImage2D:Ue,compressedTexSubImage3D:Ht,scissor:bt,viewport:St,reset:yt}}function Mw(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new ie,h=new WeakMap,u=new Set,d,f=new WeakMap,g=new Set,_=new FinalizationRegistry(I=>g.delete(I)),m=!1;try{m=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function p(I,S){return m?new OffscreenCanvas(I,S):Qo("canvas")}function x(I,S,q){let ft=1,ht=Yt(I);if((ht.width>q||ht.height>q)&&(ft=q/Math.max(ht.width,ht.height)),ft<1)if(typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&I instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&I instanceof ImageBitmap||typeof VideoFrame<"u"&&I instanceof VideoFrame){let bt=Math.floor(ft*ht.width),St=Math.floor(ft*ht.height);d===void 0&&(d=p(bt,St));let it=S?p(bt,St):d;return it.width=bt,it.height=St,it.getContext("2d").drawImage(I,0,0,bt,St),Zt("WebGLRenderer: Texture has been resized from ("+ht.width+"x"+ht.height+") to ("+bt+"x"+St+")."),it}else return"data"in I&&Zt("WebGLRenderer: Image in DataTexture is too big ("+ht.width+"x"+ht.height+")."),I;return I}function T(I){return I.generateMipmaps}function M(I){i.generateMipmap(I)}function R(I){return I.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:I.isWebGL3DRenderTarget?i.TEXTURE_3D:I.isWebGLArrayRenderTarget||I.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function w(I,S,q,ft,ht,bt=!1){if(I!==null){if(i[I]!==void 0)return i[I];Zt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+I+"'")}let St;ft&&(St=t.get("EXT_texture_norm16"),St||Zt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let it=S;if(S===i.RED&&(q===i.FLOAT&&(it=i.R32F),q===i.HALF_FLOAT&&(it=i.R16F),q===i.UNSIGNED_BYTE&&(it=i.R8),q===i.UNSIGNED_SHORT&&St&&(it=St.R16_EXT),q===i.SHORT&&St&&(it=St.R16_SNORM_EXT)),S===i.RED_INTEGER&&(q===i.UNSIGNED_BYTE&&(it=i.R8UI),q===i.UNSIGNED_SHORT&&(it=i.R16UI),q===i.UNSIGNED_INT&&(it=i.R32UI),q===i.BYTE&&(it=i.R8I),q===i.SHORT&&(it=i.R16I),q===i.INT&&(it=i.R32I)),S===i.RG&&(q===i.FLOAT&&(it=i.RG32F),q===i.HALF_FLOAT&&(it=i.RG16F),q===i.UNSIGNED_BYTE&&(it=i.RG8),q===i.UNSIGNED_SHORT&&St&&(it=St.RG16_EXT),q===i.SHORT&&St&&(it=St.RG16_SNORM_EXT)),S===i.RG_INTEGER&&(q===i.UNSIGNED_BYTE&&(it=i.RG8UI),q===i.UNSIGNED_SHORT&&(it=i.RG16UI),q===i.UNSIGNED_INT&&(it=i.RG32UI),q===i.BYTE&&(it=i.RG8I),q===i.SHORT&&(it=i.RG16I),q===i.INT&&(it=i.RG32I)),S===i.RGB_INTEGER&&(q===i.UNSIGNED_BYTE&&(it=i.RGB8UI),q===i.UNSIGNED_SHORT&&(it=i.RGB16UI),q===i.UNSIGNED_INT&&(it=i.RGB32UI),q===i.BYTE&&(it=i.RGB8I),q===i.SHORT&&(it=i.RGB16I),q===i.INT&&(it=i.RGB32I)),S===i.RGBA_INTEGER&&(q===i.UNSIGNED_BYTE&&(it=i.RGBA8UI),q===i.UNSIGNED_SHORT&&(it=i.RGBA16UI),q===i.UNSIGNED_INT&&(it=i.RGBA32UI),q===i.BYTE&&(it=i.RGBA8I),q===i.SHORT&&(it=i.RGBA16I),q===i.INT&&(it=i.RGBA32I)),S===i.RGB&&(q===i.UNSIGNED_SHORT&&St&&(it=St.RGB16_EXT),q===i.SHORT&&St&&(it=St.RGB16_SNORM_EXT),q===i.UNSIGNED_INT_5_9_9_9_REV&&(it=i.RGB9_E5),q===i.UNSIGNED_INT_10F_11F_11F_REV&&(it=i.R11F_G11F_B10F)),S===i.RGBA){let rt=bt?Ko:Me.getTransfer(ht);q===i.FLOAT&&(it=i.RGBA32F),q===i.HALF_FLOAT&&(it=i.RGBA16F),q===i.UNSIGNED_BYTE&&(it=rt===Ce?i.SRGB8_ALPHA8:i.RGBA8),q===i.UNSIGNED_SHORT&&St&&(it=St.RGBA16_EXT),q===i.SHORT&&St&&(it=St.RGBA16_SNORM_EXT),q===i.UNSIGNED_SHORT_4_4_4_4&&(it=i.RGBA4),q===i.UNSIGNED_SHORT_5_5_5_1&&(it=i.RGB5_A1)}return(it===i.R16F||it===i.R32F||it===i.RG16F||it===i.RG32F||it===i.RGBA16F||it===i.RGBA32F)&&t.get("EXT_color_buffer_float"),it}function y(I,S){let q;return I?S===null||S===Ui||S===gr?q=i.DEPTH24_STENCIL8:S===Fi?q=i.DEPTH32F_STENCIL8:S===_o&&(q=i.DEPTH24_STENCIL8,Zt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):S===null||S===Ui||S===gr?q=i.DEPTH_COMPONENT24:S===Fi?q=i.DEPTH_COMPONENT32F:S===_o&&(q=i.DEPTH_COMPONENT16),q}function b(I,S){return T(I)===!0||I.isFramebufferTexture&&I.minFilter!==Rn&&I.minFilter!==Zn?Math.log2(Math.max(S.width,S.height))+1:I.mipmaps.length>0?I.mipmaps.length:I.isCompressedTexture&&Array.isArray(I.image)?S.mipmaps.length:1}function F(I){let S=new WeakRef(I);n.get(I).__ref=S,g.add(S),_.register(I,S,S)}function D(I){let S=n.get(I).__ref;S!==void 0&&(g.delete(S),_.unregister(S))}function C(I){U(I.target)}function O(I){P(I.target)}function U(I){I.removeEventListener("dispose",C),D(I),$(I),I.isVideoTexture&&h.delete(I),I.isHTMLTexture&&u.delete(I)}function P(I){I.removeEventListener("dispose",O),D(I),ot(I)}function B(){for(let I of g){let S=I.deref();S!==void 0&&(S.isRenderTarget===!0?P(S):U(S))}g.clear(),u.clear()}function $(I){let S=n.get(I);if(S.__webglInit===void 0)return;let q=I.source,ft=f.get(q);if(ft){let ht=ft[S.__cacheKey];ht.usedTimes--,ht.usedTimes===0&&V(I),Object.keys(ft).length===0&&f.delete(q)}n.remove(I)}function V(I){let S=n.get(I);i.deleteTexture(S.__webglTexture);let q=I.source,ft=f.get(q);delete ft[S.__cacheKey],o.memory.textures--}function ot(I){let S=n.get(I);S.__depthDisposeCallback&&S.__depthDisposeCallback();let q=I.depthTexture;if(q&&q.renderTarget===I&&U(q),I.isWebGLCubeRenderTarget)for(let ht=0;ht<6;ht++){if(Array.isArray(S.__webglFramebuffer[ht]))for(let bt=0;bt<S.__webglFramebuffer[ht].length;bt++)i.deleteFramebuffer(S.__webglFramebuffer[ht][bt]);else i.deleteFramebuffer(S.__webglFramebuffer[ht]);S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer[ht])}else{if(Array.isArray(S.__webglFramebuffer))for(let ht=0;ht<S.__webglFramebuffer.length;ht++)i.deleteFramebuffer(S.__webglFramebuffer[ht]);else i.deleteFramebuffer(S.__webglFramebuffer);if(S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer),S.__webglMultisampledFramebuffer&&i.deleteFramebuffer(S.__webglMultisampledFramebuffer),S.__webglColorRenderbuffer)for(let ht=0;ht<S.__webglColorRenderbuffer.length;ht++)S.__webglColorRenderbuffer[ht]&&i.deleteRenderbuffer(S.__webglColorRenderbuffer[ht]);S.__webglDepthRenderbuffer&&i.deleteRenderbuffer(S.__webglDepthRenderbuffer)}let ft=I.textures;for(let ht=0,bt=ft.length;ht<bt;ht++){let St=n.get(ft[ht]);St.__webglTexture&&(i.deleteTexture(St.__webglTexture),o.memory.textures--),n.remove(ft[ht])}n.remove(I)}let X=0;function Y(){X=0}function tt(){return X}function nt(I){X=I}function at(){let I=X;return I>=s.maxTextures&&Zt("WebGLTextures: Trying to use "+(I+1)+" texture units while this GPU supports only "+s.maxTextures),X+=1,I}function J(I){let S=[];return S.push(I.wrapS),S.push(I.wrapT),S.push(I.wrapR||0),S.push(I.magFilter),S.push(I.minFilter),S.push(I.anisotropy),S.push(I.internalFormat),S.push(I.format),S.push(I.type),S.push(I.generateMipmaps),S.push(I.mipmapsAutoUpdate),S.push(I.premultiplyAlpha),S.push(I.flipY),S.push(I.unpackAlignment),S.push(I.colorSpace),S.join()}function mt(I,S){let q=n.get(I);if(I.isVideoTexture&&Ue(I),I.isRenderTargetTexture===!1&&I.isExternalTexture!==!0&&I.version>0&&q.__version!==I.version){let ft=I.image;if(ft===null)Zt("WebGLRenderer: Texture marked for update but no image data found.");else if(ft.complete===!1)Zt("WebGLRenderer: Texture marked for update but image is incomplete");else{Be(q,I,S);return}}else I.isExternalTexture&&(q.__webglTexture=I.sourceTexture?I.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,q.__webglTexture,i.TEXTURE0+S)}function ct(I,S){let q=n.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&q.__version!==I.version){Be(q,I,S);return}else I.isExternalTexture&&(q.__webglTexture=I.sourceTexture?I.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,q.__webglTexture,i.TEXTURE0+S)}function pt(I,S){let q=n.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&q.__version!==I.version){Be(q,I,S);return}e.bindTexture(i.TEXTURE_3D,q.__webglTexture,i.TEXTURE0+S)}function xt(I,S){let q=n.get(I);if(I.version>0&&q.__version!==I.version){on(q,I,S);return}e.bindTexture(i.TEXTURE_CUBE_MAP,q.__webglTexture,i.TEXTURE0+S)}let Wt={[Hl]:i.REPEAT,[Yi]:i.CLAMP_TO_EDGE,[Wl]:i.MIRRORED_REPEAT},Kt={[Rn]:i.NEAREST,[eg]:i.NEAREST_MIPMAP_NEAREST,[va]:i.NEAREST_MIPMAP_LINEAR,[Zn]:i.LINEAR,[_c]:i.LINEAR_MIPMAP_NEAREST,[ys]:i.LINEAR_MIPMAP_LINEAR},Gt={[rg]:i.NEVER,[ud]:i.ALWAYS,[og]:i.LESS,[cd]:i.LEQUAL,[ag]:i.EQUAL,[hd]:i.GEQUAL,[lg]:i.GREATER,[cg]:i.NOTEQUAL};function fe(I,S){if(S.type===Fi&&t.has("OES_texture_float_linear")===!1&&(S.magFilter===Zn||S.magFilter===_c||S.magFilter===va||S.magFilter===ys||S.minFilter===Zn||S.minFilter===_c||S.minFilter===va||S.minFilter===ys)&&Zt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(I,i.TEXTURE_WRAP_S,Wt[S.wrapS]),i.texParameteri(I,i.TEXTURE_WRAP_T,Wt[S.wrapT]),(I===i.TEXTURE_3D||I===i.TEXTURE_2D_ARRAY)&&i.texParameteri(I,i.TEXTURE_WRAP_R,Wt[S.wrapR]),i.texParameteri(I,i.TEXTURE_MAG_FILTER,Kt[S.magFilter]),i.texParameteri(I,i.TEXTURE_MIN_FILTER,Kt[S.minFilter]),S.compareFunction&&(i.texParameteri(I,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(I,i.TEXTURE_COMPARE_FUNC,Gt[S.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(S.magFilter===Rn||S.minFilter!==va&&S.minFilter!==ys||S.type===Fi&&t.has("OES_texture_float_linear")===!1)return;if(S.anisotropy>1||n.get(S).__currentAnisotropy){let q=t.get("EXT_texture_filter_anisotropic");i.texParameterf(I,q.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(S.anisotropy,s.getMaxAnisotropy())),n.get(S).__currentAnisotropy=S.anisotropy}}}function he(I,S){let q=!1;I.__webglInit===void 0&&(I.__webglInit=!0,S.addEventListener("dispose",C),F(S));let ft=S.source,ht=f.get(ft);ht===void 0&&(ht={},f.set(ft,ht));let bt=J(S);if(bt!==I.__cacheKey){ht[bt]===void 0&&(ht[bt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,q=!0),ht[bt].usedTimes++;let St=ht[I.__cacheKey];St!==void 0&&(ht[I.__cacheKey].usedTimes--,St.usedTimes===0&&V(S)),I.__cacheKey=bt,I.__webglTexture=ht[bt].texture}return q}function re(I,S,q){return Math.floor(Math.floor(I/q)/S)}function $e(I,S,q,ft){let bt=I.updateRanges;if(bt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,S.width,S.height,q,ft,S.data);else{bt.sort((k,lt)=>k.start-lt.start);let St=0;for(let k=1;k<bt.length;k++){let lt=bt[St],st=bt[k],At=lt.start+lt.count,Mt=re(st.start,S.width,4),Et=re(lt.start,S.width,4);st.start<=At+1&&Mt===Et&&re(st.start+st.count-1,S.width,4)===Mt?lt.count=Math.max(lt.count,st.start+st.count-lt.start):(++St,bt[St]=st)}bt.length=St+1;let it=e.getParameter(i.UNPACK_ROW_LENGTH),rt=e.getParameter(i.UNPACK_SKIP_PIXELS),yt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,S.width);for(let k=0,lt=bt.length;k<lt;k++){let st=bt[k],At=Math.floor(st.start/4),Mt=Math.ceil(st.count/4),Et=At%S.width,Xt=Math.floor(At/S.width),Qt=Mt,dt=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,Et),e.pixelStorei(i.UNPACK_SKIP_ROWS,Xt),e.texSubImage2D(i.TEXTURE_2D,0,Et,Xt,Qt,dt,q,ft,S.data)}I.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,it),e.pixelStorei(i.UNPACK_SKIP_PIXELS,rt),e.pixelStorei(i.UNPACK_SKIP_ROWS,yt)}}function Be(I,S,q){let ft=i.TEXTURE_2D;(S.isDataArrayTexture||S.isCompressedArrayTexture)&&(ft=i.TEXTURE_2D_ARRAY),S.isData3DTexture&&(ft=i.TEXTURE_3D);let ht=he(I,S),bt=S.source;e.bindTexture(ft,I.__webglTexture,i.TEXTURE0+q);let St=n.get(bt);if(bt.version!==St.__version||ht===!0){if(e.activeTexture(i.TEXTURE0+q),(typeof ImageBitmap<"u"&&S.image instanceof ImageBitmap)===!1){let dt=Me.getPrimaries(Me.workingColorSpace),kt=S.colorSpace===Ms?null:Me.getPrimaries(S.colorSpace),te=S.colorSpace===Ms||dt===kt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,te)}e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment);let rt=x(S.image,!1,s.maxTextureSize);rt=Ht(S,rt);let yt=r.convert(S.format,S.colorSpace),k=r.convert(S.type),lt=w(S.internalFormat,yt,k,S.normalized,S.colorSpace,S.isVideoTexture);fe(ft,S);let st,At=S.mipmaps,Mt=S.isVideoTexture!==!0,Et=St.__version===void 0||ht===!0,Xt=bt.dataReady,Qt=b(S,rt);if(S.isDepthTexture)lt=y(S.format===vs,S.type),Et&&(Mt?e.texStorage2D(i.TEXTURE_2D,1,lt,rt.width,rt.height):e.texImage2D(i.TEXTURE_2D,0,lt,rt.width,rt.height,0,yt,k,null));else if(S.isDataTexture)if(At.length>0){Mt&&Et&&e.texStorage2D(i.TEXTURE_2D,Qt,lt,At[0].width,At[0].height);for(let dt=0,kt=At.length;dt<kt;dt++)st=At[dt],Mt?Xt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,yt,k,st.data):e.texImage2D(i.TEXTURE_2D,dt,lt,st.width,st.height,0,yt,k,st.data);S.generateMipmaps=!1}else Mt?(Et&&e.texStorage2D(i.TEXTURE_2D,Qt,lt,rt.width,rt.height),Xt&&$e(S,rt,yt,k)):e.texImage2D(i.TEXTURE_2D,0,lt,rt.width,rt.height,0,yt,k,rt.data);else if(S.isCompressedTexture)if(S.isCompressedArrayTexture){Mt&&Et&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,lt,At[0].width,At[0].height,rt.depth);for(let dt=0,kt=At.length;dt<kt;dt++)if(st=At[dt],S.format!==Bi)if(yt!==null)if(Mt){if(Xt)if(S.layerUpdates.size>0){let te=Md(st.width,st.height,S.format,S.type);for(let Pt of S.layerUpdates){let ce=st.data.subarray(Pt*te/st.data.BYTES_PER_ELEMENT,(Pt+1)*te/st.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,Pt,st.width,st.height,1,yt,ce)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,st.width,st.height,rt.depth,yt,st.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,dt,lt,st.width,st.height,rt.depth,0,st.data,0,0);else Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else Mt?Xt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,dt,0,0,0,st.width,st.height,rt.depth,yt,k,st.data):e.texImage3D(i.TEXTURE_2D_ARRAY,dt,lt,st.width,st.height,rt.depth,0,yt,k,st.data);S.layerUpdates.size>0&&S.clearLayerUpdates()}else{Mt&&Et&&e.texStorage2D(i.TEXTURE_2D,Qt,lt,At[0].width,At[0].height);for(let dt=0,kt=At.length;dt<kt;dt++)st=At[dt],S.format!==Bi?yt!==null?Mt?Xt&&e.compressedTexSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,yt,st.data):e.compressedTexImage2D(i.TEXTURE_2D,dt,lt,st.width,st.height,0,st.data):Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):Mt?Xt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,st.width,st.height,yt,k,st.data):e.texImage2D(i.TEXTURE_2D,dt,lt,st.width,st.height,0,yt,k,st.data)}else if(S.isDataArrayTexture)if(Mt){if(Et&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,lt,rt.width,rt.height,rt.depth),Xt)if(S.layerUpdates.size>0){let dt=Md(rt.width,rt.height,S.format,S.type);for(let kt of S.layerUpdates){let te=rt.data.subarray(kt*dt/rt.data.BYTES_PER_ELEMENT,(kt+1)*dt/rt.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,kt,rt.width,rt.height,1,yt,k,te)}S.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,rt.width,rt.height,rt.depth,yt,k,rt.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,lt,rt.width,rt.height,rt.depth,0,yt,k,rt.data);else if(S.isData3DTexture)Mt?(Et&&e.texStorage3D(i.TEXTURE_3D,Qt,lt,rt.width,rt.height,rt.depth),Xt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,rt.width,rt.height,rt.depth,yt,k,rt.data)):e.texImage3D(i.TEXTURE_3D,0,lt,rt.width,rt.height,rt.depth,0,yt,k,rt.data);else if(S.isFramebufferTexture){if(Et)if(Mt)e.texStorage2D(i.TEXTURE_2D,Qt,lt,rt.width,rt.height);else{let dt=rt.width,kt=rt.height;for(let te=0;te<Qt;te++)e.texImage2D(i.TEXTURE_2D,te,lt,dt,kt,0,yt,k,null),dt>>=1,kt>>=1}}else if(S.isHTMLTexture){if("texElementImage2D"in i){let dt=i.canvas;if(dt.hasAttribute("layoutsubtree")||dt.setAttribute("layoutsubtree","true"),rt.parentNode!==dt){dt.appendChild(rt),u.add(S),dt.onpaint=kt=>{let te=kt.changedElements;for(let Pt of u)te.includes(Pt.image)&&(Pt.needsUpdate=!0)},dt.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,rt);else{let te=i.RGBA,Pt=i.RGBA,ce=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,te,Pt,ce,rt)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(At.length>0){if(Mt&&Et){let dt=Yt(At[0]);e.texStorage2D(i.TEXTURE_2D,Qt,lt,dt.width,dt.height)}for(let dt=0,kt=At.length;dt<kt;dt++)st=At[dt],Mt?Xt&&e.texSubImage2D(i.TEXTURE_2D,dt,0,0,yt,k,st):e.texImage2D(i.TEXTURE_2D,dt,lt,yt,k,st);S.generateMipmaps=!1}else if(Mt){if(Et){let dt=Yt(rt);e.texStorage2D(i.TEXTURE_2D,Qt,lt,dt.width,dt.height)}Xt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,yt,k,rt)}else e.texImage2D(i.TEXTURE_2D,0,lt,yt,k,rt);T(S)&&S.mipmapsAutoUpdate===!0&&M(ft),St.__version=bt.version,S.onUpdate&&S.onUpdate(S)}I.__version=S.version}function on(I,S,q){if(S.image.length!==6)return;let ft=he(I,S),ht=S.source;e.bindTexture(i.TEXTURE_CUBE_MAP,I.__webglTexture,i.TEXTURE0+q);let bt=n.get(ht);if(ht.version!==bt.__version||ft===!0){e.activeTexture(i.TEXTURE0+q);let St=Me.getPrimaries(Me.workingColorSpace),it=S.colorSpace===Ms?null:Me.getPrimaries(S.colorSpace),rt=S.colorSpace===Ms||St===it?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,rt);let yt=S.isCompressedTexture||S.image[0].isCompressedTexture,k=S.image[0]&&S.image[0].isDataTexture,lt=[];for(let Pt=0;Pt<6;Pt++)!yt&&!k?lt[Pt]=x(S.image[Pt],!0,s.maxCubemapSize):lt[Pt]=k?S.image[Pt].image:S.image[Pt],lt[Pt]=Ht(S,lt[Pt]);let st=lt[0],At=r.convert(S.format,S.colorSpace),Mt=r.convert(S.type),Et=w(S.internalFormat,At,Mt,S.normalized,S.colorSpace),Xt=S.isVideoTexture!==!0,Qt=bt.__version===void 0||ft===!0,dt=ht.dataReady,kt=b(S,st);fe(i.TEXTURE_CUBE_MAP,S);let te;if(S.isDepthTexture){if(Et=y(S.format===vs,S.type),Qt)if(Xt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,Et,st.width,st.height);else for(let Pt=0;Pt<6;Pt++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,0,Et,st.width,st.height,0,At,Mt,null)}else if(yt){Xt&&Qt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,kt,Et,st.width,st.height);for(let Pt=0;Pt<6;Pt++){te=lt[Pt].mipmaps;for(let ce=0;ce<te.length;ce++){let ke=te[ce];S.format!==Bi?At!==null?Xt?dt&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce,0,0,ke.width,ke.height,At,ke.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce,Et,ke.width,ke.height,0,ke.data):Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Xt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce,0,0,ke.width,ke.height,At,Mt,ke.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce,Et,ke.width,ke.height,0,At,Mt,ke.data)}}}else{if(te=S.mipmaps,Xt&&Qt){te.length>0&&kt++;let Pt=Yt(lt[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,kt,Et,Pt.width,Pt.height)}for(let Pt=0;Pt<6;Pt++)if(k){Xt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,0,0,0,lt[Pt].width,lt[Pt].height,At,Mt,lt[Pt].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,0,Et,lt[Pt].width,lt[Pt].height,0,At,Mt,lt[Pt].data);for(let ce=0;ce<te.length;ce++){let Vn=te[ce].image[Pt].image;Xt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce+1,0,0,Vn.width,Vn.height,At,Mt,Vn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce+1,Et,Vn.width,Vn.height,0,At,Mt,Vn.data)}}else{Xt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,0,0,0,At,Mt,lt[Pt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,0,Et,At,Mt,lt[Pt]);for(let ce=0;ce<te.length;ce++){let ke=te[ce];Xt?dt&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce+1,0,0,At,Mt,ke.image[Pt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Pt,ce+1,Et,At,Mt,ke.image[Pt])}}}T(S)&&S.mipmapsAutoUpdate===!0&&M(i.TEXTURE_CUBE_MAP),bt.__version=ht.version,S.onUpdate&&S.onUpdate(S)}I.__version=S.version}function De(I,S,q,ft,ht,bt){let St=r.convert(q.format,q.colorSpace),it=r.convert(q.type),rt=w(q.internalFormat,St,it,q.normalized,q.colorSpace),yt=n.get(S),k=n.get(q);if(k.__renderTarget=S,!yt.__hasExternalTextures){let lt=Math.max(1,S.width>>bt),st=Math.max(1,S.height>>bt);ht===i.TEXTURE_3D||ht===i.TEXTURE_2D_ARRAY?e.texImage3D(ht,bt,rt,lt,st,S.depth,0,St,it,null):e.texImage2D(ht,bt,rt,lt,st,0,St,it,null)}e.bindFramebuffer(i.FRAMEBUFFER,I),Tt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ft,ht,k.__webglTexture,0,le(S)):(ht===i.TEXTURE_2D||ht>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&ht<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,ft,ht,k.__webglTexture,bt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function Mn(I,S,q){if(i.bindRenderbuffer(i.RENDERBUFFER,I),S.depthBuffer){let ft=S.depthTexture,ht=ft&&ft.isDepthTexture?ft.type:null,bt=y(S.stencilBuffer,ht),St=S.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;Tt(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,le(S),bt,S.width,S.height):q?i.renderbufferStorageMultisample(i.RENDERBUFFER,le(S),bt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,bt,S.width,S.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,St,i.RENDERBUFFER,I)}else{let ft=S.textures;for(let ht=0;ht<ft.length;ht++){let bt=ft[ht],St=r.convert(bt.format,bt.colorSpace),it=r.convert(bt.type),rt=w(bt.internalFormat,St,it,bt.normalized,bt.colorSpace);Tt(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,le(S),rt,S.width,S.height):q?i.renderbufferStorageMultisample(i.RENDERBUFFER,le(S),rt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,rt,S.width,S.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function be(I,S,q){let ft=S.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,I),!(S.depthTexture&&S.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let ht=n.get(S.depthTexture);ht.__renderTarget=S;let bt=ft?S.depthTexture.image[0]:S.depthTexture.image;(!ht.__webglTexture||bt.width!==S.width||bt.height!==S.height)&&(bt.width=S.width,bt.height=S.height,S.depthTexture.needsUpdate=!0),ft?xt(S.depthTexture,0):mt(S.depthTexture,0);let St=ht.__webglTexture,it=le(S),rt=ft?i.TEXTURE_CUBE_MAP_POSITIVE_X+q:i.TEXTURE_2D,yt=S.depthTexture.format===vs?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(S.depthTexture.format===ps)Tt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,St,0,it):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,St,0);else if(S.depthTexture.format===vs)Tt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,yt,rt,St,0,it):i.framebufferTexture2D(i.FRAMEBUFFER,yt,rt,St,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function pn(I){let S=n.get(I),q=I.isWebGLCubeRenderTarget===!0;if(S.__boundDepthTexture!==I.depthTexture){let ft=I.depthTexture;if(S.__depthDisposeCallback&&S.__depthDisposeCallback(),ft){let ht=()=>{delete S.__boundDepthTexture,delete S.__depthDisposeCallback,ft.removeEventListener("dispose",ht)};ft.addEventListener("dispose",ht),S.__depthDisposeCallback=ht}S.__boundDepthTexture=ft}if(I.depthTexture&&!S.__autoAllocateDepthBuffer)if(q)for(let ft=0;ft<6;ft++)be(S.__webglFramebuffer[ft],I,ft);else I.texture.mipmaps.length>0?be(S.__webglFramebuffer[0],I,0):be(S.__webglFramebuffer,I,0);else if(q){S.__webglDepthbuffer=[];for(let ft=0;ft<6;ft++)if(e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[ft]),S.__webglDepthbuffer[ft]===void 0)S.__webglDepthbuffer[ft]=i.createRenderbuffer(),Mn(S.__webglDepthbuffer[ft],I,!1);else{let ht=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,bt=S.__webglDepthbuffer[ft];i.bindRenderbuffer(i.RENDERBUFFER,bt),i.framebufferRenderbuffer(i.FRAMEBUFFER,ht,i.RENDERBUFFER,bt)}}else if(I.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer),S.__webglDepthbuffer===void 0)S.__webglDepthbuffer=i.createRenderbuffer(),Mn(S.__webglDepthbuffer,I,!1);else{let ht=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,bt=S.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,bt),i.framebufferRenderbuffer(i.FRAMEBUFFER,ht,i.RENDERBUFFER,bt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Je(I,S,q){let ft=n.get(I);S!==void 0&&De(ft.__webglFramebuffer,I,I.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),q!==void 0&&pn(I)}function an(I){let S=I.texture,q=n.get(I),ft=n.get(S);I.addEventListener("dispose",O),F(I);let ht=I.textures,bt=I.isWebGLCubeRenderTarget===!0,St=ht.length>1;if(St||(ft.__webglTexture===void 0&&(ft.__webglTexture=i.createTexture()),ft.__version=S.version,o.memory.textures++),bt){q.__webglFramebuffer=[];for(let it=0;it<6;it++)if(S.mipmaps.length>0){q.__webglFramebuffer[it]=[];for(let rt=0;rt<S.mipmaps.length;rt++)q.__webglFramebuffer[it][rt]=i.createFramebuffer()}else q.__webglFramebuffer[it]=i.createFramebuffer()}else{if(S.mipmaps.length>0){q.__webglFramebuffer=[];for(let it=0;it<S.mipmaps.length;it++)q.__webglFramebuffer[it]=i.createFramebuffer()}else q.__webglFramebuffer=i.createFramebuffer();if(St)for(let it=0,rt=ht.length;it<rt;it++){let yt=n.get(ht[it]);yt.__webglTexture===void 0&&(yt.__webglTexture=i.createTexture(),o.memory.textures++)}if(I.samples>0&&Tt(I)===!1){q.__webglMultisampledFramebuffer=i.createFramebuffer(),q.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,q.__webglMultisampledFramebuffer);for(let it=0;it<ht.length;it++){let rt=ht[it];q.__webglColorRenderbuffer[it]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,q.__webglColorRenderbuffer[it]);let yt=r.convert(rt.format,rt.colorSpace),k=r.convert(rt.type),lt=w(rt.internalFormat,yt,k,rt.normalized,rt.colorSpace,I.isXRRenderTarget===!0),st=le(I);i.renderbufferStorageMultisample(i.RENDERBUFFER,st,lt,I.width,I.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+it,i.RENDERBUFFER,q.__webglColorRenderbuffer[it])}i.bindRenderbuffer(i.RENDERBUFFER,null),I.depthBuffer&&(q.__webglDepthRenderbuffer=i.createRenderbuffer(),Mn(q.__webglDepthRenderbuffer,I,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(bt){e.bindTexture(i.TEXTURE_CUBE_MAP,ft.__webglTexture),fe(i.TEXTURE_CUBE_MAP,S);for(let it=0;it<6;it++)if(S.mipmaps.length>0)for(let rt=0;rt<S.mipmaps.length;rt++)De(q.__webglFramebuffer[it][rt],I,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+it,rt);else De(q.__webglFramebuffer[it],I,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+it,0);T(S)?M(i.TEXTURE_CUBE_MAP):S.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}else if(St){for(let it=0,rt=ht.length;it<rt;it++){let yt=ht[it],k=n.get(yt),lt=i.TEXTURE_2D;(I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(lt=I.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(lt,k.__webglTexture),fe(lt,yt),De(q.__webglFramebuffer,I,yt,i.COLOR_ATTACHMENT0+it,lt,0),T(yt)&&M(lt)}e.unbindTexture()}else{let it=i.TEXTURE_2D;if((I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(it=I.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(it,ft.__webglTexture),fe(it,S),S.mipmaps.length>0)for(let rt=0;rt<S.mipmaps.length;rt++)De(q.__webglFramebuffer[rt],I,S,i.COLOR_ATTACHMENT0,it,rt);else De(q.__webglFramebuffer,I,S,i.COLOR_ATTACHMENT0,it,0);T(S)?M(it):S.mipmaps.length>0&&i.texParameteri(it,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}I.depthBuffer&&pn(I)}function z(I){let S=I.textures;for(let q=0,ft=S.length;q<ft;q++){let ht=S[q];if(T(ht)&&ht.mipmapsAutoUpdate===!0){let bt=R(I),St=n.get(ht).__webglTexture;e.bindTexture(bt,St),M(bt),e.unbindTexture()}}}let It=[];function Jt(I){if(I.samples>0){if(Tt(I)===!1){let S=I.textures,q=I.width,ft=I.height,ht=i.COLOR_BUFFER_BIT,bt=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,St=n.get(I),it=S.length>1;if(it)for(let yt=0;yt<S.length;yt++)e.bindFramebuffer(i.FRAMEBUFFER,St.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,St.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,St.__webglMultisampledFramebuffer),I.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,St.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,St.__webglFramebuffer);for(let yt=0;yt<S.length;yt++){if(I.resolveDepthBuffer&&(I.depthBuffer&&(ht|=i.DEPTH_BUFFER_BIT),I.stencilBuffer&&I.resolveStencilBuffer&&(ht|=i.STENCIL_BUFFER_BIT)),it){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,St.__webglColorRenderbuffer[yt]);let k=n.get(S[yt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,k,0)}i.blitFramebuffer(0,0,q,ft,0,0,q,ft,ht,i.NEAREST),l===!0&&(It.length=0,It.push(i.COLOR_ATTACHMENT0+yt),I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&It.push(bt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,It))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),it)for(let yt=0;yt<S.length;yt++){e.bindFramebuffer(i.FRAMEBUFFER,St.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.RENDERBUFFER,St.__webglColorRenderbuffer[yt]);let k=n.get(S[yt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,St.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+yt,i.TEXTURE_2D,k,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,St.__webglMultisampledFramebuffer)}else if(I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&l){let S=I.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[S])}}}function le(I){return Math.min(s.maxSamples,I.samples)}function Tt(I){let S=n.get(I);return I.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&S.__useRenderToTexture!==!1}function Ue(I){let S=o.render.frame;h.get(I)!==S&&(h.set(I,S),I.update())}function Ht(I,S){let q=I.colorSpace,ft=I.format,ht=I.type;return I.isCompressedTexture===!0||I.isVideoTexture===!0||q!==jo&&q!==Ms&&(Me.getTransfer(q)===Ce?(ft!==Bi||ht!==Kn)&&Zt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ne("WebGLTextures: Unsupported texture color space:",q)),S}function Yt(I){return typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement?(c.width=I.naturalWidth||I.width,c.height=I.naturalHeight||I.height):typeof VideoFrame<"u"&&I instanceof VideoFrame?(c.width=I.displayWidth,c.height=I.displayHeight):(c.width=I.width,c.height=I.height),c}this.allocateTextureUnit=at,this.resetTextureUnits=Y,this.getTextureUnits=tt,this.setTextureUnits=nt,this.setTexture2D=mt,this.setTexture2DArray=ct,this.setTexture3D=pt,this.setTextureCube=xt,this.rebindTextures=Je,this.setupRenderTarget=an,this.updateRenderTargetMipmap=z,this.updateMultisampleRenderTarget=Jt,this.setupDepthRenderbuffer=pn,this.setupFrameBufferTexture=De,this.useMultisampledRTT=Tt,this.dispose=B}function bw(i,t){function e(n,s=Ms){let r,o=Me.getTransfer(s);if(n===Kn)return i.UNSIGNED_BYTE;if(n===yc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===vc)return i.UNSIGNED_SHORT_5_5_5_1;if(n===sd)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===rd)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===nd)return i.BYTE;if(n===id)return i.SHORT;if(n===_o)return i.UNSIGNED_SHORT;if(n===xc)return i.INT;if(n===Ui)return i.UNSIGNED_INT;if(n===Fi)return i.FLOAT;if(n===Oi)return i.HALF_FLOAT;if(n===od)return i.ALPHA;if(n===ad)return i.RGB;if(n===Bi)return i.RGBA;if(n===ps)return i.DEPTH_COMPONENT;if(n===vs)return i.DEPTH_STENCIL;if(n===ld)return i.RED;if(n===Mc)return i.RED_INTEGER;if(n===qs)return i.RG;if(n===bc)return i.RG_INTEGER;if(n===Sc)return i.RGBA_INTEGER;if(n===Ma||n===ba||n===Sa||n===wa)if(o===Ce)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Ma)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===ba)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Sa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===wa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Ma)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===ba)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Sa)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===wa)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===wc||n===Ec||n===Tc||n===Ac)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===wc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===Ec)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Tc)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Ac)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Rc||n===Cc||n===Pc||n===Ic||n===Lc||n===Ea||n===Dc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Rc||n===Cc)return o===Ce?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Pc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Ic)return r.COMPRESSED_R11_EAC;if(n===Lc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ea)return r.COMPRESSED_RG11_EAC;if(n===Dc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Nc||n===Uc||n===Fc||n===Oc||n===Bc||n===kc||n===zc||n===Vc||n===Gc||n===Hc||n===Wc||n===Xc||n===$c||n===qc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Nc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Uc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Fc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Oc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Bc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===kc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===zc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Vc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Gc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Hc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Wc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Xc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===$c)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===qc)return o===Ce?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Yc||n===Zc||n===Jc)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Yc)return o===Ce?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Zc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Jc)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===jc||n===Kc||n===Ta||n===Qc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===jc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Kc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Ta)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Qc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===gr?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var Sw=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,ww=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Pd=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new ca(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Zi({vertexShader:Sw,fragmentShader:ww,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Cn(new dr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Id=class extends Di{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",l=1,c=null,h=null,u=null,d=null,f=null,g=null,_=typeof XRWebGLBinding<"u",m=new Pd,p={},x=e.getContextAttributes(),T=null,M=null,R=[],w=[],y=new ie,b=null,F=null,D=new Yn;D.viewport=new Ye;let C=new Yn;C.viewport=new Ye;let O=[D,C],U=new fc,P=null,B=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(J){let mt=R[J];return mt===void 0&&(mt=new lo,R[J]=mt),mt.getTargetRaySpace()},this.getControllerGrip=function(J){let mt=R[J];return mt===void 0&&(mt=new lo,R[J]=mt),mt.getGripSpace()},this.getHand=function(J){let mt=R[J];return mt===void 0&&(mt=new lo,R[J]=mt),mt.getHandSpace()};function $(J){let mt=w.indexOf(J.inputSource);if(mt===-1)return;let ct=R[mt];ct!==void 0&&(ct.update(J.inputSource,J.frame,c||o),ct.dispatchEvent({type:J.type,data:J.inputSource}))}function V(){s.removeEventListener("select",$),s.removeEventListener("selectstart",$),s.removeEventListener("selectend",$),s.removeEventListener("squeeze",$),s.removeEventListener("squeezestart",$),s.removeEventListener("squeezeend",$),s.removeEventListener("end",V),s.removeEventListener("inputsourceschange",ot);for(let J=0;J<R.length;J++){let mt=w[J];mt!==null&&(w[J]=null,R[J].disconnect(mt))}P=null,B=null,m.reset();for(let J in p)delete p[J];if(t.setRenderTarget(T),f=null,d=null,u=null,s=null,M=null,at.stop(),n.isPresenting=!1,t.setPixelRatio(b),t.setSize(y.width,y.height,!1),F!==null){let J=F.camera;J.fov=F.fov,J.zoom=F.zoom,J.updateProjectionMatrix(),F=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(J){r=J,n.isPresenting===!0&&Zt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(J){a=J,n.isPresenting===!0&&Zt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function(J){c=J},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return u===null&&_&&(u=new XRWebGLBinding(s,e)),u},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(J){if(s=J,s!==null){if(T=t.getRenderTarget(),s.addEventListener("select",$),s.addEventListener("selectstart",$),s.addEventListener("selectend",$),s.addEventListener("squeeze",$),s.addEventListener("squeezestart",$),s.addEventListener("squeezeend",$),s.addEventListener("end",V),s.addEventListener("inputsourceschange",ot),x.xrCompatible!==!0&&await e.makeXRCompatible(),b=t.getPixelRatio(),t.getSize(y),_&&"createProjectionLayer"in XRWebGLBinding.prototype){let ct=null,pt=null,xt=null;x.depth&&(xt=x.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,ct=x.stencil?vs:ps,pt=x.stencil?gr:Ui);let Wt={colorFormat:e.RGBA8,depthFormat:xt,scaleFactor:r};u=this.getBinding(),d=u.createProjectionLayer(Wt),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),M=new di(d.textureWidth,d.textureHeight,{format:Bi,type:Kn,depthTexture:new xs(d.textureWidth,d.textureHeight,pt,void 0,void 0,void 0,void 0,void 0,void 0,ct),stencilBuffer:x.stencil,colorSpace:t.outputColorSpace,samples:x.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let ct={antialias:x.antialias,alpha:!0,depth:x.depth,stencil:x.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,ct),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),M=new di(f.framebufferWidth,f.framebufferHeight,{format:Bi,type:Kn,colorSpace:t.outputColorSpace,stencilBuffer:x.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}M.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await s.requestReferenceSpace(a),at.setContext(s),at.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return m.getDepthTexture()};function ot(J){for(let mt=0;mt<J.removed.length;mt++){let ct=J.removed[mt],pt=w.indexOf(ct);pt>=0&&(w[pt]=null,R[pt].disconnect(ct))}for(let mt=0;mt<J.added.length;mt++){let ct=J.added[mt],pt=w.indexOf(ct);if(pt===-1){for(let Wt=0;Wt<R.length;Wt++)if(Wt>=w.length){w.push(ct),pt=Wt;break}else if(w[Wt]===null){w[Wt]=ct,pt=Wt;break}if(pt===-1)break}let xt=R[pt];xt&&xt.connect(ct)}}function X(J,mt){mt===null?J.matrixWorld.copy(J.matrix):J.matrixWorld.multiplyMatrices(mt.matrixWorld,J.matrix),J.matrixWorldInverse.copy(J.matrixWorld).invert()}this.updateCamera=function(J){if(s===null)return;let mt=J.near,ct=J.far;m.texture!==null&&(m.depthNear>0&&(mt=m.depthNear),m.depthFar>0&&(ct=m.depthFar)),U.near=C.near=D.near=mt,U.far=C.far=D.far=ct,(P!==U.near||B!==U.far)&&(s.updateRenderState({depthNear:U.near,depthFar:U.far}),P=U.near,B=U.far),U.layers.mask=J.layers.mask|6,D.layers.mask=U.layers.mask&-5,C.layers.mask=U.layers.mask&-3;let pt=J.parent,xt=U.cameras;X(U,pt);for(let Wt=0;Wt<xt.length;Wt++)X(xt[Wt],pt);U.projectionMatrix.copy(D.projectionMatrix),U.projectionMatrixInverse.copy(D.projectionMatrixInverse),F===null&&J.isPerspectiveCamera&&(F={camera:J,fov:J.fov,zoom:J.zoom}),Y(J,U,pt)};function Y(J,mt,ct){ct===null?J.matrix.copy(mt.matrixWorld):(J.matrix.copy(ct.matrixWorld),J.matrix.invert(),J.matrix.multiply(mt.matrixWorld)),J.matrix.decompose(J.position,J.quaternion,J.scale),J.updateMatrixWorld(!0),J.projectionMatrix.copy(mt.projectionMatrix),J.projectionMatrixInverse.copy(mt.projectionMatrixInverse),J.isPerspectiveCamera&&(J.fov=oo*2*Math.atan(1/J.projectionMatrix.elements[5]),J.zoom=1)}this.getCamera=function(){return U},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function(J){l=J,d!==null&&(d.fixedFoveation=J),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=J)},this.hasDepthSensing=function(){return m.texture!==null},this.getDepthSensingMesh=function(){return m.getMesh(U)},this.getCameraTexture=function(J){return p[J]};let tt=null;function nt(J,mt){if(h=mt.getViewerPose(c||o),g=mt,h!==null){let ct=h.views;f!==null&&(t.setRenderTargetFramebuffer(M,f.framebuffer),t.setRenderTarget(M));let pt=!1;ct.length!==U.cameras.length&&(U.cameras.length=0,pt=!0);for(let Gt=0;Gt<ct.length;Gt++){let fe=ct[Gt],he=null;if(f!==null)he=f.getViewport(fe);else{let $e=u.getViewSubImage(d,fe);he=$e.viewport,Gt===0&&(t.setRenderTargetTextures(M,$e.colorTexture,$e.depthStencilTexture),t.setRenderTarget(M))}let re=O[Gt];re===void 0&&(re=new Yn,re.layers.enable(Gt),re.viewport=new Ye,O[Gt]=re),re.matrix.fromArray(fe.transform.matrix),re.matrix.decompose(re.position,re.quaternion,re.scale),re.projectionMatrix.fromArray(fe.projectionMatrix),re.projectionMatrixInverse.copy(re.projectionMatrix).invert(),re.viewport.set(he.x,he.y,he.width,he.height),Gt===0&&(U.matrix.copy(re.matrix),U.matrix.decompose(U.position,U.quaternion,U.scale)),pt===!0&&U.cameras.push(re)}let xt=s.enabledFeatures;if(xt&&xt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&_){u=n.getBinding();let Gt=u.getDepthInformation(ct[0]);Gt&&Gt.isValid&&Gt.texture&&m.init(Gt,s.renderState)}if(xt&&xt.includes("camera-access")&&_){t.state.unbindTexture(),u=n.getBinding();for(let Gt=0;Gt<ct.length;Gt++){let fe=ct[Gt].camera;if(fe){let he=p[fe];he||(he=new ca,p[fe]=he);let re=u.getCameraImage(fe);he.sourceTexture=re}}}}for(let ct=0;ct<R.length;ct++){let pt=w[ct],xt=R[ct];pt!==null&&xt!==void 0&&xt.update(pt,mt,c||o)}tt&&tt(J,mt),mt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:mt}),g=null}let at=new Gg;at.setAnimationLoop(nt),this.setAnimationLoop=function(J){tt=J},this.dispose=function(){}}},Ew=new Xe,Kg=new se;Kg.set(-1,0,0,0,1,0,0,0,1);function Tw(i,t){function e(m,p){m.matrixAutoUpdate===!0&&m.updateMatrix(),p.value.copy(m.matrix)}function n(m,p){p.color.getRGB(m.fogColor.value,xd(i)),p.isFog?(m.fogNear.value=p.near,m.fogFar.value=p.far):p.isFogExp2&&(m.fogDensity.value=p.density)}function s(m,p,x,T,M){p.isNodeMaterial?p.uniformsNeedUpdate=!1:p.isMeshBasicMaterial?r(m,p):p.isMeshLambertMaterial?(r(m,p),p.envMap&&(m.envMapIntensity.value=p.envMapIntensity)):p.isMeshToonMaterial?(r(m,p),u(m,p)):p.isMeshPhongMaterial?(r(m,p),h(m,p),p.envMap&&(m.envMapIntensity.value=p.envMapIntensity)):p.isMeshStandardMaterial?(r(m,p),d(m,p),p.isMeshPhysicalMaterial&&f(m,p,M)):p.isMeshMatcapMaterial?(r(m,p),g(m,p)):p.isMeshDepthMaterial?r(m,p):p.isMeshDistanceMaterial?(r(m,p),_(m,p)):p.isMeshNormalMaterial?r(m,p):p.isLineBasicMaterial?(o(m,p),p.isLineDashedMaterial&&a(m,p)):p.isPointsMaterial?l(m,p,x,T):p.isSpriteMaterial?c(m,p):p.isShadowMaterial?(m.color.value.copy(p.color),m.opacity.value=p.opacity):p.isShaderMaterial&&(p.uniformsNeedUpdate=!1)}function r(m,p){m.opacity.value=p.opacity,p.color&&m.diffuse.value.copy(p.color),p.emissive&&m.emissive.value.copy(p.emissive).multiplyScalar(p.emissiveIntensity),p.map&&(m.map.value=p.map,e(p.map,m.mapTransform)),p.alphaMap&&(m.alphaMap.value=p.alphaMap,e(p.alphaMap,m.alphaMapTransform)),p.bumpMap&&(m.bumpMap.value=p.bumpMap,e(p.bumpMap,m.bumpMapTransform),m.bumpScale.value=p.bumpScale,p.side===Ln&&(m.bumpScale.value*=-1)),p.normalMap&&(m.normalMap.value=p.normalMap,e(p.normalMap,m.normalMapTransform),m.normalScale.value.copy(p.normalScale),p.side===Ln&&m.normalScale.value.negate()),p.displacementMap&&(m.displacementMap.value=p.displacementMap,e(p.displacementMap,m.displacementMapTransform),m.displacementScale.value=p.displacementScale,m.displacementBias.value=p.displacementBias),p.emissiveMap&&(m.emissiveMap.value=p.emissiveMap,e(p.emissiveMap,m.emissiveMapTransform)),p.specularMap&&(m.specularMap.value=p.specularMap,e(p.specularMap,m.specularMapTransform)),p.alphaTest>0&&(m.alphaTest.value=p.alphaTest);let x=t.get(p),T=x.envMap,M=x.envMapRotation;T&&(m.envMap.value=T,m.envMapRotation.value.setFromMatrix4(Ew.makeRotationFromEuler(M)).transpose(),T.isCubeTexture&&T.isRenderTargetTexture===!1&&m.envMapRotation.value.premultiply(Kg),m.reflectivity.value=p.reflectivity,m.ior.value=p.ior,m.refractionRatio.value=p.refractionRatio),p.lightMap&&(m.lightMap.value=p.lightMap,m.lightMapIntensity.value=p.lightMapIntensity,e(p.lightMap,m.lightMapTransform)),p.aoMap&&(m.aoMap.value=p.aoMap,m.aoMapIntensity.value=p.aoMapIntensity,e(p.aoMap,m.aoMapTransform))}function o(m,p){m.diffuse.value.copy(p.color),m.opacity.value=p.opacity,p.map&&(m.map.value=p.map,e(p.map,m.mapTransform))}function a(m,p){m.dashSize.value=p.dashSize,m.totalSize.value=p.dashSize+p.gapSize,m.scale.value=p.scale}function l(m,p,x,T){m.diffuse.value.copy(p.color),m.opacity.value=p.opacity,m.size.value=p.size*x,m.scale.value=T*.5,p.map&&(m.map.value=p.map,e(p.map,m.uvTransform)),p.alphaMap&&(m.alphaMap.value=p.alphaMap,e(p.alphaMap,m.alphaMapTransform)),p.alphaTest>0&&(m.alphaTest.value=p.alphaTest)}function c(m,p){m.diffuse.value.copy(p.color),m.opacity.value=p.opacity,m.rotation.value=p.rotation,p.map&&(m.map.value=p.map,e(p.map,m.mapTransform)),p.alphaMap&&(m.alphaMap.value=p.alphaMap,e(p.alphaMap,m.alphaMapTransform)),p.alphaTest>0&&(m.alphaTest.value=p.alphaTest)}function h(m,p){m.specular.value.copy(p.specular),m.shininess.value=Math.max(p.shininess,1e-4)}function u(m,p){p.gradientMap&&(m.gradientMap.value=p.gradientMap)}function d(m,p){m.metalness.value=p.metalness,p.metalnessMap&&(m.metalnessMap.value=p.metalnessMap,e(p.metalnessMap,m.metalnessMapTransform)),m.roughness.value=p.roughness,p.roughnessMap&&(m.roughnessMap.value=p.roughnessMap,e(p.roughnessMap,m.roughnessMapTransform)),p.envMap&&(m.envMapIntensity.value=p.envMapIntensity)}function f(m,p,x){m.ior.value=p.ior,p.diffuseRoughness>0&&(m.diffuseRoughness.value=p.diffuseRoughness,p.diffuseRoughnessMap&&(m.diffuseRoughnessMap.value=p.diffuseRoughnessMap,e(p.diffuseRoughnessMap,m.diffuseRoughnessMapTransform))),p.sheen>0&&(m.sheenColor.value.copy(p.sheenColor).multiplyScalar(p.sheen),m.sheenRoughness.value=p.sheenRoughness,p.sheenColorMap&&(m.sheenColorMap.value=p.sheenColorMap,e(p.sheenColorMap,m.sheenColorMapTransform)),p.sheenRoughnessMap&&(m.sheenRoughnessMap.value=p.sheenRoughnessMap,e(p.sheenRoughnessMap,m.sheenRoughnessMapTransform))),p.clearcoat>0&&(m.clearcoat.value=p.clearcoat,m.clearcoatRoughness.value=p.clearcoatRoughness,p.clearcoatMap&&(m.clearcoatMap.value=p.clearcoatMap,e(p.clearcoatMap,m.clearcoatMapTransform)),p.clearcoatRoughnessMap&&(m.clearcoatRoughnessMap.value=p.clearcoatRoughnessMap,e(p.clearcoatRoughnessMap,m.clearcoatRoughnessMapTransform)),p.clearcoatNormalMap&&(m.clearcoatNormalMap.value=p.clearcoatNormalMap,e(p.clearcoatNormalMap,m.clearcoatNormalMapTransform),m.clearcoatNormalScale.value.copy(p.clearcoatNormalScale),p.side===Ln&&m.clearcoatNormalScale.value.negate())),p.dispersion>0&&(m.dispersion.value=p.dispersion),p.retroreflectivity>0&&(m.retroreflectivity.value=p.retroreflectivity),p.iridescence>0&&(m.iridescence.value=p.iridescence,m.iridescenceIOR.value=p.iridescenceIOR,m.iridescenceThicknessMinimum.value=p.iridescenceThicknessMinimum,m.iridescenceThicknessMaximum.value=p.iridescenceThicknessMaximum,p.iridescenceMap&&(m.iridescenceMap.value=p.iridescenceMap,e(p.iridescenceMap,m.iridescenceMapTransform)),p.iridescenceThicknessMap&&(m.iridescenceThicknessMap.value=p.iridescenceThicknessMap,e(p.iridescenceThicknessMap,m.iridescenceThicknessMapTransform))),p.transmission>0&&(m.transmission.value=p.transmission,m.transmissionSamplerMap.value=x.texture,m.transmissionSamplerSize.value.set(x.width,x.height),p.transmissionMap&&(m.transmissionMap.value=p.transmissionMap,e(p.transmissionMap,m.transmissionMapTransform)),m.thickness.value=p.thickness,p.thicknessMap&&(m.thicknessMap.value=p.thicknessMap,e(p.thicknessMap,m.thicknessMapTransform)),m.attenuationDistance.value=p.attenuationDistance,m.attenuationColor.value.copy(p.attenuationColor)),p.anisotropy>0&&(m.anisotropyVector.value.set(p.anisotropy*Math.cos(p.anisotropyRotation),p.anisotropy*Math.sin(p.anisotropyRotation)),p.anisotropyMap&&(m.anisotropyMap.value=p.anisotropyMap,e(p.anisotropyMap,m.anisotropyMapTransform))),m.specularIntensity.value=p.specularIntensity,m.specularColor.value.copy(p.specularColor),p.specularColorMap&&(m.specularColorMap.value=p.specularColorMap,e(p.specularColorMap,m.specularColorMapTransform)),p.specularIntensityMap&&(m.specularIntensityMap.value=p.specularIntensityMap,e(p.specularIntensityMap,m.specularIntensityMapTransform))}function g(m,p){p.matcap&&(m.matcap.value=p.matcap)}function _(m,p){let x=t.get(p).light;m.referencePosition.value.setFromMatrixPosition(x.matrixWorld),m.nearDistance.value=x.shadow.camera.near,m.farDistance.value=x.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Aw(i,t,e,n){let s={},r={};function o(x,T){let M=T.program;n.uniformBlockBinding(x,M,s[x.id])}function a(x,T){let M=s[x.id];M===void 0&&(g(x),M=l(x),s[x.id]=M,x.addEventListener("dispose",m));let R=T.program;n.updateUBOMapping(x,R);let w=t.render.frame;r[x.id]!==w&&(c(x),r[x.id]=w)}function l(x){let T=i.createBuffer(),M=x.__size,R=x.usage;return i.bindBuffer(i.UNIFORM_BUFFER,T),i.bufferData(i.UNIFORM_BUFFER,M,R),i.bindBuffer(i.UNIFORM_BUFFER,null),T}function c(x){let T=s[x.id],M=x.uniforms,R=x.__cache;i.bindBuffer(i.UNIFORM_BUFFER,T);for(let w=0,y=M.length;w<y;w++){let b=M[w];if(Array.isArray(b))for(let F=0,D=b.length;F<D;F++)h(b[F],w,F,R);else h(b,w,0,R)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(x,T,M,R){if(d(x,T,M,R)===!0){let w=x.__offset,y=x.value;if(Array.isArray(y)){let b=0;for(let F=0;F<y.length;F++){let D=y[F],C=_(D,!0);u(D,x.__data,b),b+=C.storage/Float32Array.BYTES_PER_ELEMENT}}else u(y,x.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,w,x.__data)}}function u(x,T,M){typeof x=="number"||typeof x=="boolean"?T[M]=x:x.isMatrix3?(T[M]=x.elements[0],T[M+1]=x.elements[1],T[M+2]=x.elements[2],T[M+3]=0,T[M+4]=x.elements[3],T[M+5]=x.elements[4],T[M+6]=x.elements[5],T[M+7]=0,T[M+8]=x.elements[6],T[M+9]=x.elements[7],T[M+10]=x.elements[8],T[M+11]=0):ArrayBuffer.isView(x)?T.set(x.subarray(0,T.length-M),M):x.toArray(T,M)}function d(x,T,M,R){let w=x.value,y=T+"_"+M;if(Array.isArray(w)){R[y]===void 0&&(R[y]=[]);let b=R[y],F=!1;for(let D=0;D<w.length;D++)f(w[D],b,D)===!0&&(F=!0);return F}return f(w,R,y)}function f(x,T,M){if(T[M]===void 0)return typeof x=="number"||typeof x=="boolean"?T[M]=x:ArrayBuffer.isView(x)?T[M]=x.slice():T[M]=x.clone(),!0;{let R=T[M];if(typeof x=="number"||typeof x=="boolean"){if(R!==x)return T[M]=x,!0}else{if(ArrayBuffer.isView(x))return!0;if(R.equals(x)===!1)return R.copy(x),!0}}return!1}function g(x){let T=x.uniforms,M=0,R=16;for(let y=0,b=T.length;y<b;y++){let F=Array.isArray(T[y])?T[y]:[T[y]];for(let D=0,C=F.length;D<C;D++){let O=F[D],U=Array.isArray(O.value)?O.value:[O.value],P=Array.isArray(T[y])||Array.isArray(O.value),B=M;for(let V=0,ot=U.length;V<ot;V++){let X=U[V],Y=_(X,P),tt=M%R,nt=tt%Y.boundary,at=tt+nt;M+=nt,at!==0&&R-at<Y.storage&&(M+=R-at),V===0&&(B=M),M+=Y.storage}let $=O.type==="int"?Int32Array:O.type==="uint"?Uint32Array:Float32Array;O.__data=new $((M-B)/Float32Array.BYTES_PER_ELEMENT),O.__offset=B}}let w=M%R;return w>0&&(M+=R-w),x.__size=M,x.__cache={},this}function _(x,T){let M={boundary:0,storage:0};return typeof x=="number"||typeof x=="boolean"?(M.boundary=4,M.storage=4):x.isVector2?(M.boundary=8,M.storage=8):x.isVector3||x.isColor?(M.boundary=16,M.storage=12):x.isVector4?(M.boundary=16,M.storage=16):x.isMatrix3?(M.boundary=16,M.storage=48):x.isMatrix4?(M.boundary=16,M.storage=64):x.isTexture?Zt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(x)?(M.boundary=16,M.storage=x.byteLength):Zt("WebGLRenderer: Unsupported uniform value type.",x),T===!0&&(M.boundary=16,M.storage=Math.ceil(M.storage/16)*16),M}function m(x){let T=x.target;T.removeEventListener("dispose",m),i.deleteBuffer(s[T.id]),delete s[T.id],delete r[T.id]}function p(){for(let x in s)i.deleteBuffer(s[x]);s={},r={}}return{bind:o,update:a,dispose:p}}var Rw=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),ji=null;function Cw(){return ji===null&&(ji=new Zl(Rw,16,16,qs,Oi),ji.name="DFG_LUT",ji.minFilter=Zn,ji.magFilter=Zn,ji.wrapS=Yi,ji.wrapT=Yi,ji.generateMipmaps=!1,ji.needsUpdate=!0),ji}var sh=class{constructor(t={}){let{canvas:e=ug(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:u=!1,reversedDepthBuffer:d=!1,outputBufferType:f=Kn}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let _=f,m=new Set([Sc,bc,Mc]),p=new Set([Kn,Ui,_o,gr,yc,vc]),x=new Uint32Array(4),T=new Int32Array(4),M={textures:[],min:[],max:[],resolution:[]},R=null,w=null,y=[],b=[],F=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Ji,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let D=this,C=!1,O=null,U=null,P=null,B=null;this._outputColorSpace=hi;let $=0,V=0,ot=null,X=-1,Y=null,tt=new Ye,nt=new Ye,at=null,J=new ae(0),mt=0,ct=e.width,pt=e.height,xt=1,Wt=null,Kt=null,Gt=new Ye(0,0,ct,pt),fe=new Ye(0,0,ct,pt),he=!1,re=new zs,$e=new Jl,Be=!1,on=!1,De=new Xe,Mn=new W,be=new Ye,pn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Je=!1;function an(){return ot===null?xt:1}let z=n;function It(A,G){return e.getContext(A,G)}let Jt,le,Tt,Ue,Ht,Yt,I,S,q,ft,ht,bt,St,it,rt,yt,k,lt,st,At,Mt,Et,Xt;try{let A={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:u};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",kt,!1),e.addEventListener("webglcontextrestored",te,!1),e.addEventListener("webglcontextcreationerror",Pt,!1),z===null){let G="webgl2";if(z=It(G,A),z===null)throw It(G)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Qt()}catch(A){throw e.removeEventListener("webglcontextlost",kt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Pt,!1),ne("WebGLRenderer: "+A.message),A}function Qt(){Jt=new zb(z),Jt.init(),Mt=new bw(z,Jt),le=new Cb(z,Jt,t,Mt),Tt=new vw(z,Jt),le.reversedDepthBuffer&&d&&Tt.buffers.depth.setReversed(!0),U=z.createFramebuffer(),P=z.createFramebuffer(),B=z.createFramebuffer(),Ue=new Hb(z),Ht=new ow,Yt=new Mw(z,Jt,Tt,Ht,le,Mt,Ue),I=new kb(D),S=new Xy(z),Et=new Ab(z,S),q=new Vb(z,S,Ue,Et),ft=new Xb(z,q,S,Et,Ue),lt=new Wb(z,le,Yt),rt=new Pb(Ht),ht=new rw(D,I,Jt,le,Et,rt),bt=new Tw(D,Ht),St=new lw,it=new pw(Jt),k=new Tb(D,I,Tt,ft,g,l),yt=new yw(D,ft,le),Xt=new Aw(z,Ue,le,Tt),st=new Rb(z,Jt,Ue),At=new Gb(z,Jt,Ue),Ue.programs=ht.programs,D.capabilities=le,D.extensions=Jt,D.properties=Ht,D.renderLists=St,D.shadowMap=yt,D.state=Tt,D.info=Ue}_!==Kn&&(F=new qb(_,e.width,e.height,a,s,r));let dt=new Id(D,z);this.xr=dt,this.getContext=function(){return z},this.getContextAttributes=function(){return z.getContextAttributes()},this.forceContextLoss=function(){let A=Jt.get("WEBGL_lose_context");A&&A.loseContext()},this.forceContextRestore=function(){let A=Jt.get("WEBGL_lose_context");A&&A.restoreContext()},this.getPixelRatio=function(){return xt},this.setPixelRatio=function(A){A!==void 0&&(xt=A,this.setSize(ct,pt,!1))},this.getSize=function(A){return A.set(ct,pt)},this.setSize=function(A,G,et=!0){if(dt.isPresenting){Zt("WebGLRenderer: Can't change size while VR device is presenting.");return}ct=A,pt=G,e.width=Math.floor(A*xt),e.height=Math.floor(G*xt),et===!0&&(e.style.width=A+"px",e.style.height=G+"px"),F!==null&&F.setSize(e.width,e.height),this.setViewport(0,0,A,G)},this.getDrawingBufferSize=function(A){return A.set(ct*xt,pt*xt).floor()},this.setDrawingBufferSize=function(A,G,et){ct=A,pt=G,xt=et,e.width=Math.floor(A*et),e.height=Math.floor(G*et),this.setViewport(0,0,A,G)},this.setEffects=function(A){if(_===Kn){ne("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(A){for(let G=0;G<A.length;G++)if(A[G].isOutputPass===!0){Zt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}F.setEffects(A||[])},this.getCurrentViewport=function(A){return A.copy(tt)},this.getViewport=function(A){return A.copy(Gt)},this.setViewport=function(A,G,et,Z){A.isVector4?Gt.set(A.x,A.y,A.z,A.w):Gt.set(A,G,et,Z),Tt.viewport(tt.copy(Gt).multiplyScalar(an()).round())},this.getScissor=function(A){return A.copy(fe)},this.setScissor=function(A,G,et,Z){A.isVector4?fe.set(A.x,A.y,A.z,A.w):fe.set(A,G,et,Z),Tt.scissor(nt.copy(fe).multiplyScalar(an()).round())},this.getScissorTest=function(){return he},this.setScissorTest=function(A){Tt.setScissorTest(he=A)},this.setOpaqueSort=function(A){Wt=A},this.setTransparentSort=function(A){Kt=A},this.getClearColor=function(A){return A.copy(k.getClearColor())},this.setClearColor=function(){k.setClearColor(...arguments)},this.getClearAlpha=function(){return k.getClearAlpha()},this.setClearAlpha=function(){k.setClearAlpha(...arguments)},this.clear=function(A=!0,G=!0,et=!0){let Z=0;if(A){let j=!1;if(ot!==null){let Rt=ot.texture.format;j=m.has(Rt)}if(j){let Rt=ot.texture.type,Lt=p.has(Rt),Ct=k.getClearColor(),Dt=k.getClearAlpha(),Vt=Ct.r,ee=Ct.g,me=Ct.b;Lt?(x[0]=Vt,x[1]=ee,x[2]=me,x[3]=Dt,z.clearBufferuiv(z.COLOR,0,x)):(T[0]=Vt,T[1]=ee,T[2]=me,T[3]=Dt,z.clearBufferiv(z.COLOR,0,T))}else Z|=z.COLOR_BUFFER_BIT}G&&(Z|=z.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),et&&(Z|=z.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),Z!==0&&z.clear(Z)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(A){A.setRenderer(this),O=A},this.dispose=function(){e.removeEventListener("webglcontextlost",kt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Pt,!1),k.dispose(),St.dispose(),it.dispose(),Yt.dispose(),Ht.dispose(),I.dispose(),ft.dispose(),q.dispose(),Et.dispose(),Xt.dispose(),ht.dispose(),dt.dispose(),dt.removeEventListener("sessionstart",Na),dt.removeEventListener("sessionend",ki),Qi.stop()};function kt(A){A.preventDefault(),fd("WebGLRenderer: Context Lost."),C=!0}function te(){fd("WebGLRenderer: Context Restored."),C=!1;let A=Ue.autoReset,G=yt.enabled,et=yt.autoUpdate,Z=yt.needsUpdate,j=yt.type;Qt(),Ue.autoReset=A,yt.enabled=G,yt.autoUpdate=et,yt.needsUpdate=Z,yt.type=j}function Pt(A){ne("WebGLRenderer: A WebGL context could not be created. Reason: ",A.statusMessage)}function ce(A){let G=A.target;G.removeEventListener("dispose",ce),ke(G)}function ke(A){Vn(A),Ht.remove(A)}function Vn(A){let G=Ht.get(A).programs;G!==void 0&&(G.forEach(function(et){ht.releaseProgram(et)}),A.isShaderMaterial&&ht.releaseShaderCache(A))}this.renderBufferDirect=function(A,G,et,Z,j,Rt){G===null&&(G=pn);let Lt=j.isMesh&&j.matrixWorld.determinantAffine()<0,Ct=wo(A,G,et,Z,j);Tt.setMaterial(Z,Lt);let Dt=et.index,Vt=1;if(Z.wireframe===!0){if(Dt=q.getWireframeAttribute(et),Dt===void 0)return;Vt=2}let ee=et.drawRange,me=et.attributes.position,zt=ee.start*Vt,ge=(ee.start+ee.count)*Vt;Rt!==null&&(zt=Math.max(zt,Rt.start*Vt),ge=Math.min(ge,(Rt.start+Rt.count)*Vt)),Dt!==null?(zt=Math.max(zt,0),ge=Math.min(ge,Dt.count)):me!=null&&(zt=Math.max(zt,0),ge=Math.min(ge,me.count));let Ze=ge-zt;if(Ze<0||Ze===1/0)return;Et.setup(j,Z,Ct,et,Dt);let Pe,Ie=st;if(Dt!==null&&(Pe=S.get(Dt),Ie=At,Ie.setIndex(Pe)),j.isMesh)Z.wireframe===!0?(Tt.setLineWidth(Z.wireframeLinewidth*an()),Ie.setMode(z.LINES)):Ie.setMode(z.TRIANGLES);else if(j.isLine){let mn=Z.linewidth;mn===void 0&&(mn=1),Tt.setLineWidth(mn*an()),j.isLineSegments?Ie.setMode(z.LINES):j.isLineLoop?Ie.setMode(z.LINE_LOOP):Ie.setMode(z.LINE_STRIP)}else j.isPoints?Ie.setMode(z.POINTS):j.isSprite&&Ie.setMode(z.TRIANGLES);if(j.isBatchedMesh)if(Jt.get("WEBGL_multi_draw"))Ie.renderMultiDraw(j._multiDrawStarts,j._multiDrawCounts,j._multiDrawCount);else{let mn=j._multiDrawStarts,Ot=j._multiDrawCounts,ln=j._multiDrawCount,ye=Dt?S.get(Dt).bytesPerElement:1,es=Ht.get(Z).currentProgram.getUniforms();for(let cn=0;cn<ln;cn++)es.setValue(z,"_gl_DrawID",cn),Ie.render(mn[cn]/ye,Ot[cn])}else if(j.isInstancedMesh)Ie.renderInstances(zt,Ze,j.count);else if(et.isInstancedBufferGeometry){let mn=et._maxInstanceCount!==void 0?et._maxInstanceCount:1/0,Ot=Math.min(et.instanceCount,mn);Ie.renderInstances(zt,Ze,Ot)}else Ie.render(zt,Ze)};function Mo(A,G,et,Z){O!==null&&A.isNodeMaterial&&O.setObject(Z,A),Be===!0&&rt.setState(A,et,!1),A.transparent===!0&&A.side===Jn&&A.forceSinglePass===!1?(A.side=Ln,A.needsUpdate=!0,zi(A,G,Z),A.side=Ni,A.needsUpdate=!0,zi(A,G,Z),A.side=Jn):zi(A,G,Z)}this.compile=function(A,G,et=null){et===null&&(et=A),O!==null&&O.renderStart(A,G,et),w=it.get(et),w.init(G),b.push(w),et.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(w.pushLight(j),j.castShadow&&w.pushShadow(j))}),A!==et&&A.traverseVisible(function(j){j.isLight&&j.layers.test(G.layers)&&(w.pushLight(j),j.castShadow&&w.pushShadow(j))}),w.setupLights(),O!==null&&O.updateLights(w.state.lightsArray),on=this.localClippingEnabled,Be=rt.init(this.clippingPlanes,on),Be===!0&&rt.setGlobalState(this.clippingPlanes,G),O!==null&&yt.render(w.state.shadowsArray,et,G);let Z=new Set;return A.traverse(function(j){if(!(j.isMesh||j.isPoints||j.isLine||j.isSprite))return;let Rt=j.material;if(Rt)if(Array.isArray(Rt))for(let Lt=0;Lt<Rt.length;Lt++){let Ct=Rt[Lt];Mo(Ct,et,G,j),Z.add(Ct)}else Mo(Rt,et,G,j),Z.add(Rt)}),w=b.pop(),O!==null&&O.renderEnd(),Z},this.compileAsync=function(A,G,et=null){let Z=this.compile(A,G,et);return new Promise(j=>{function Rt(){if(Z.forEach(function(Lt){let Dt=Ht.get(Lt).currentProgram;(Dt===void 0||Dt.isReady())&&Z.delete(Lt)}),Z.size===0){j(A);return}setTimeout(Rt,10)}Jt.get("KHR_parallel_shader_compile")!==null?Rt():setTimeout(Rt,10)})};let yr=null;function vh(A){yr&&yr(A)}function Na(){Qi.stop()}function ki(){Qi.start()}let Qi=new Gg;Qi.setAnimationLoop(vh),typeof self<"u"&&Qi.setContext(self),this.setAnimationLoop=function(A){yr=A,dt.setAnimationLoop(A),A===null?Qi.stop():Qi.start()},dt.addEventListener("sessionstart",Na),dt.addEventListener("sessionend",ki),this.render=function(A,G){if(G!==void 0&&G.isCamera!==!0){ne("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(C===!0)return;O!==null&&O.renderStart(A,G);let et=dt.enabled===!0&&dt.isPresenting===!0,Z=F!==null&&(ot===null||et)&&F.begin(D,ot);if(A.matrixWorldAutoUpdate===!0&&A.updateMatrixWorld(),G.parent===null&&G.matrixWorldAutoUpdate===!0&&G.updateMatrixWorld(),dt.enabled===!0&&dt.isPresenting===!0&&(F===null||F.isCompositing()===!1)&&(dt.cameraAutoUpdate===!0&&dt.updateCamera(G),G=dt.getCamera()),A.isScene===!0&&A.onBeforeRender(D,A,G,ot),w=it.get(A,b.length),w.init(G),w.state.textureUnits=Yt.getTextureUnits(),b.push(w),De.multiplyMatrices(G.projectionMatrix,G.matrixWorldInverse),G.isArrayCamera?$e.setFromArrayCamera(G):re.setFromProjectionMatrix(De,Mi,G.reversedDepth),on=this.localClippingEnabled,Be=rt.init(this.clippingPlanes,on),R=St.get(A,y.length),R.init(),y.push(R),this.info.render.frame++,dt.enabled===!0&&dt.isPresenting===!0){let Lt=D.xr.getDepthSensingMesh();Lt!==null&&ts(Lt,G,-1/0,D.sortObjects)}ts(A,G,0,D.sortObjects),R.finish(),O!==null&&O.updateLights(w.state.lightsArray),D.sortObjects===!0&&R.sort(Wt,Kt),Je=dt.enabled===!1||dt.isPresenting===!1||dt.hasDepthSensing()===!1,Je&&k.addToRenderList(R,A),this.info.autoReset===!0&&this.info.reset(),Be===!0&&rt.beginShadows();let j=w.state.shadowsArray;if(yt.render(j,A,G),Be===!0&&rt.endShadows(),(Z&&F.hasRenderPass())===!1){let Lt=R.opaque,Ct=R.transmissive;if(w.setupLights(),G.isArrayCamera){let Dt=G.cameras;if(Ct.length>0)for(let Vt=0,ee=Dt.length;Vt<ee;Vt++){let me=Dt[Vt];bi(Lt,Ct,A,me)}Je&&k.render(A);for(let Vt=0,ee=Dt.length;Vt<ee;Vt++){let me=Dt[Vt];bo(R,A,me,me.viewport)}}else Ct.length>0&&bi(Lt,Ct,A,G),Je&&k.render(A),bo(R,A,G)}ot!==null&&V===0&&(Yt.updateMultisampleRenderTarget(ot),Yt.updateRenderTargetMipmap(ot)),Z&&F.end(D),A.isScene===!0&&A.onAfterRender(D,A,G),Et.resetDefaultState(),X=-1,Y=null,b.pop(),b.length>0?(w=b[b.length-1],Yt.setTextureUnits(w.state.textureUnits),Be===!0&&rt.setGlobalState(D.clippingPlanes,w.state.camera)):w=null,y.pop(),y.length>0?R=y[y.length-1]:R=null,O!==null&&O.renderEnd()};function ts(A,G,et,Z){if(A.visible===!1)return;if(A.layers.test(G.layers)){if(A.isGroup)et=A.renderOrder;else if(A.isLOD)A.autoUpdate===!0&&A.update(G);else if(A.isLight)w.pushLight(A),A.castShadow&&w.pushShadow(A);else if(A.isSprite){let Lt=G.isArrayCamera?$e:re;if(!A.frustumCulled||A.intersectsFrustum(Lt)){Z&&be.setFromMatrixPosition(A.matrixWorld).applyMatrix4(De);let Ct=ft.update(A),Dt=A.material;Dt.visible&&R.push(A,Ct,Dt,et,be.z,null,G)}}else if(A.isMesh||A.isLine||A.isPoints){let Lt=G.isArrayCamera?$e:re;if(!A.frustumCulled||A.intersectsFrustum(Lt)){let Ct=ft.update(A),Dt=A.material;if(Z&&(A.boundingSphere!==void 0?(A.boundingSphere===null&&A.computeBoundingSphere(),be.copy(A.boundingSphere.center)):(Ct.boundingSphere===null&&Ct.computeBoundingSphere(),be.copy(Ct.boundingSphere.center)),be.applyMatrix4(A.matrixWorld).applyMatrix4(De)),Array.isArray(Dt)){let Vt=Ct.groups;for(let ee=0,me=Vt.length;ee<me;ee++){let zt=Vt[ee],ge=Dt[zt.materialIndex];ge&&ge.visible&&R.push(A,Ct,ge,et,be.z,zt,G)}}else Dt.visible&&R.push(A,Ct,Dt,et,be.z,null,G)}}}let Rt=A.children;for(let Lt=0,Ct=Rt.length;Lt<Ct;Lt++)ts(Rt[Lt],G,et,Z)}function bo(A,G,et,Z){let{opaque:j,transmissive:Rt,transparent:Lt}=A;w.setupLightsView(et),Be===!0&&rt.setGlobalState(D.clippingPlanes,et),Z&&Tt.viewport(tt.copy(Z)),j.length>0&&je(j,G,et),Rt.length>0&&je(Rt,G,et),Lt.length>0&&je(Lt,G,et),Tt.buffers.depth.setTest(!0),Tt.buffers.depth.setMask(!0),Tt.buffers.color.setMask(!0),Tt.setPolygonOffset(!1)}function bi(A,G,et,Z){if((et.isScene===!0?et.overrideMaterial:null)!==null)return;if(w.state.transmissionRenderTarget[Z.id]===void 0){let zt=Jt.has("EXT_color_buffer_half_float")||Jt.has("EXT_color_buffer_float");w.state.transmissionRenderTarget[Z.id]=new di(1,1,{generateMipmaps:!0,type:zt?Oi:Kn,minFilter:ys,samples:Math.max(4,le.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Me.workingColorSpace})}let Rt=w.state.transmissionRenderTarget[Z.id],Lt=Z.viewport||tt;Rt.setSize(Lt.z*D.transmissionResolutionScale,Lt.w*D.transmissionResolutionScale);let Ct=D.getRenderTarget(),Dt=D.getActiveCubeFace(),Vt=D.getActiveMipmapLevel();D.setRenderTarget(Rt),D.getClearColor(J),mt=D.getClearAlpha(),mt<1&&D.setClearColor(16777215,.5),D.clear(),Je&&k.render(et);let ee=D.toneMapping;D.toneMapping=Ji;let me=Z.viewport;if(Z.viewport!==void 0&&(Z.viewport=void 0),w.setupLightsView(Z),Be===!0&&rt.setGlobalState(D.clippingPlanes,Z),je(A,et,Z),Yt.updateMultisampleRenderTarget(Rt),Yt.updateRenderTargetMipmap(Rt),Jt.has("WEBGL_multisampled_render_to_texture")===!1){let zt=!1;for(let ge=0,Ze=G.length;ge<Ze;ge++){let Pe=G[ge],{object:Ie,geometry:mn,material:Ot,group:ln}=Pe;if(Ot.side===Jn&&Ie.layers.test(Z.layers)){let ye=Ot.side;Ot.side=Ln,Ot.needsUpdate=!0,nn(Ie,et,Z,mn,Ot,ln),Ot.side=ye,Ot.needsUpdate=!0,zt=!0}}zt===!0&&(Yt.updateMultisampleRenderTarget(Rt),Yt.updateRenderTargetMipmap(Rt))}D.setRenderTarget(Ct,Dt,Vt),D.setClearColor(J,mt),me!==void 0&&(Z.viewport=me),D.toneMapping=ee}function je(A,G,et){let Z=G.isScene===!0?G.overrideMaterial:null;for(let j=0,Rt=A.length;j<Rt;j++){let Lt=A[j],{object:Ct,geometry:Dt,group:Vt}=Lt,ee=Lt.material;ee.allowOverride===!0&&Z!==null&&(ee=Z),Ct.layers.test(et.layers)&&nn(Ct,G,et,Dt,ee,Vt)}}function nn(A,G,et,Z,j,Rt){O!==null&&j.isNodeMaterial&&O.setObject(A,j),A.onBeforeRender(D,G,et,Z,j,Rt),A.modelViewMatrix.multiplyMatrices(et.matrixWorldInverse,A.matrixWorld),A.normalMatrix.getNormalMatrix(A.modelViewMatrix),j.onBeforeRender(D,G,et,Z,A,Rt),j.transparent===!0&&j.side===Jn&&j.forceSinglePass===!1?(j.side=Ln,j.needsUpdate=!0,D.renderBufferDirect(et,G,Z,j,A,Rt),j.side=Ni,j.needsUpdate=!0,D.renderBufferDirect(et,G,Z,j,A,Rt),j.side=Jn):D.renderBufferDirect(et,G,Z,j,A,Rt),A.onAfterRender(D,G,et,Z,j,Rt)}function sn(A){let G=0;for(let et of A)et.texture!==null&&G++;return G}function zi(A,G,et){G.isScene!==!0&&(G=pn);let Z=Ht.get(A),j=w.state.lights,Rt=w.state.shadowsArray,Lt=j.state.version,Ct=ht.getParameters(A,j.state,Rt,G,et,w.state.lightProbeGridArray),Dt=ht.getProgramCacheKey(Ct),Vt=Z.programs;Z.environment=A.isMeshStandardMaterial||A.isMeshLambertMaterial||A.isMeshPhongMaterial?G.environment:null,Z.fog=G.fog;let ee=A.isMeshStandardMaterial||A.isMeshLambertMaterial&&!A.envMap||A.isMeshPhongMaterial&&!A.envMap;Z.envMap=I.get(A.envMap||Z.environment,ee),Z.envMapRotation=Z.environment!==null&&A.envMap===null?G.environmentRotation:A.envMapRotation,Vt===void 0&&(A.addEventListener("dispose",ce),Vt=new Map,Z.programs=Vt,Z.programVariants=new Map);let me=Vt.get(Dt);if(me!==void 0){if(Z.currentProgram===me&&Z.lightsStateVersion===Lt)return So(A,Ct),me}else Ct.uniforms=ht.getUniforms(A),O!==null&&A.isNodeMaterial&&O.build(A,et,Ct),A.onBeforeCompile(Ct,D),me=ht.acquireProgram(Ct,Dt),Vt.set(Dt,me),Z.uniforms=Ct.uniforms;let zt=Z.uniforms;return(!A.isShaderMaterial&&!A.isRawShaderMaterial||A.clipping===!0)&&(zt.clippingPlanes=rt.uniform),So(A,Ct),Z.needsLights=Ss(A),Z.lightsStateVersion=Lt,Z.needsLights&&(zt.ambientLightColor.value=j.state.ambient,zt.lightProbe.value=j.state.probe,zt.sunLights.value=j.state.sun,zt.sunLightShadows.value=j.state.sunShadow,zt.directionalLights.value=j.state.directional,zt.directionalLightShadows.value=j.state.directionalShadow,zt.spotLights.value=j.state.spot,zt.spotLightShadows.value=j.state.spotShadow,zt.rectAreaLights.value=j.state.rectArea,zt.ltc_1.value=j.state.rectAreaLTC1,zt.ltc_2.value=j.state.rectAreaLTC2,zt.pointLights.value=j.state.point,zt.pointLightShadows.value=j.state.pointShadow,zt.hemisphereLights.value=j.state.hemi,zt.sunShadowMatrix.value=j.state.sunShadowMatrix,zt.sunShadowCascade.value=j.state.sunShadowCascade,zt.directionalShadowMatrix.value=j.state.directionalShadowMatrix,zt.spotLightMatrix.value=j.state.spotLightMatrix,zt.spotLightMap.value=j.state.spotLightMap,zt.pointShadowMatrix.value=j.state.pointShadowMatrix),Z.numLightProbeGrids=sn(w.state.lightProbeGridArray),Z.currentProgram=me,Z.uniformsList=null,me}function ti(A,G,et,Z,j){let Rt=Ht.get(A),Lt=Rt.currentProgram.id+","+Z+","+j,Ct=Rt.programVariants.get(Lt);return Ct===void 0?(Ct=zi(A,G,et),Rt.programVariants.set(Lt,Ct)):(Rt.currentProgram=Ct,Rt.uniformsList=null,Rt.outputColorSpace=Z,Rt.toneMapping=j),Ct}function bs(A){if(A.uniformsList===null){let G=A.currentProgram.getUniforms();A.uniformsList=yo.seqWithValue(G.seq,A.uniforms)}return A.uniformsList}function So(A,G){let et=Ht.get(A);et.outputColorSpace=G.outputColorSpace,et.batching=G.batching,et.batchingColor=G.batchingColor,et.instancing=G.instancing,et.instancingColor=G.instancingColor,et.instancingMorph=G.instancingMorph,et.skinning=G.skinning,et.morphTargets=G.morphTargets,et.morphNormals=G.morphNormals,et.morphColors=G.morphColors,et.morphTargetsCount=G.morphTargetsCount,et.numClippingPlanes=G.numClippingPlanes,et.numIntersection=G.numClipIntersection,et.vertexAlphas=G.vertexAlphas,et.vertexTangents=G.vertexTangents,et.toneMapping=G.toneMapping}function wo(A,G,et,Z,j){G.isScene!==!0&&(G=pn),Yt.resetTextureUnits();let Rt=G.fog,Lt=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial?G.environment:null,Ct=ot===null?D.outputColorSpace:ot.isXRRenderTarget===!0?ot.texture.colorSpace:Me.workingColorSpace,Dt=Z.isMeshStandardMaterial||Z.isMeshLambertMaterial&&!Z.envMap||Z.isMeshPhongMaterial&&!Z.envMap,Vt=I.get(Z.envMap||Lt,Dt),ee=Z.vertexColors===!0&&!!et.attributes.color&&et.attributes.color.itemSize===4,me=!!et.attributes.tangent&&(!!Z.normalMap||Z.anisotropy>0),zt=!!et.morphAttributes.position,ge=!!et.morphAttributes.normal,Ze=!!et.morphAttributes.color,Pe=Ji;Z.toneMapped&&(ot===null||ot.isXRRenderTarget===!0)&&(Pe=D.toneMapping);let Ie=et.morphAttributes.position||et.morphAttributes.normal||et.morphAttributes.color,mn=Ie!==void 0?Ie.length:0,Ot=Ht.get(Z),ln=w.state.lights;if(Be===!0&&(on===!0||A!==Y)){let Le=A===Y&&Z.id===X;rt.setState(Z,A,Le)}let ye=!1,es=!1;Z.version===Ot.__version?Ot.needsLights&&Ot.lightsStateVersion!==ln.state.version||j.isBatchedMesh&&Ot.batching===!1||!j.isBatchedMesh&&Ot.batching===!0||j.isBatchedMesh&&Ot.batchingColor===!0&&j._colorsTexture===null||j.isBatchedMesh&&Ot.batchingColor===!1&&j._colorsTexture!==null||j.isInstancedMesh&&Ot.instancing===!1||!j.isInstancedMesh&&Ot.instancing===!0||j.isSkinnedMesh&&Ot.skinning===!1||!j.isSkinnedMesh&&Ot.skinning===!0||j.isInstancedMesh&&Ot.instancingColor===!0&&j.instanceColor===null||j.isInstancedMesh&&Ot.instancingColor===!1&&j.instanceColor!==null||j.isInstancedMesh&&Ot.instancingMorph===!0&&j.morphTexture===null||j.isInstancedMesh&&Ot.instancingMorph===!1&&j.morphTexture!==null||Ot.envMap!==Vt||Z.fog===!0&&Ot.fog!==Rt||Ot.numClippingPlanes!==void 0&&(Ot.numClippingPlanes!==rt.numPlanes||Ot.numIntersection!==rt.numIntersection)||Ot.vertexAlphas!==ee||Ot.vertexTangents!==me||Ot.morphTargets!==zt||Ot.morphNormals!==ge||Ot.morphColors!==Ze||Ot.morphTargetsCount!==mn||Ot.numLightProbeGrids!==sn(w.state.lightProbeGridArray)?ye=!0:(Ot.outputColorSpace!==Ct||Ot.toneMapping!==Pe)&&(es=!0):(ye=!0,Ot.__version=Z.version);let cn=Ot.currentProgram;(ye===!0||es===!0)&&(cn=es===!0?ti(Z,G,j,Ct,Pe):zi(Z,G,j),O&&Z.isNodeMaterial&&O.onUpdateProgram(Z,cn,Ot));let br=!1,Vi=!1,ns=!1,ue=cn.getUniforms(),Ke=Ot.uniforms;if(Tt.useProgram(cn.program)&&(br=!0,Vi=!0,ns=!0),Z.id!==X&&(X=Z.id,Vi=!0),br||Y!==A){Tt.buffers.depth.getReversed()&&A.reversedDepth!==!0&&(A._reversedDepth=!0,A.updateProjectionMatrix()),ue.setValue(z,"projectionMatrix",A.projectionMatrix),ue.setValue(z,"viewMatrix",A.matrixWorldInverse);let hn=ue.map.cameraPosition;hn!==void 0&&hn.setValue(z,Mn.setFromMatrixPosition(A.matrixWorld)),le.logarithmicDepthBuffer&&ue.setValue(z,"logDepthBufFC",2/(Math.log(A.far+1)/Math.LN2)),(Z.isMeshPhongMaterial||Z.isMeshToonMaterial||Z.isMeshLambertMaterial||Z.isMeshBasicMaterial||Z.isMeshStandardMaterial||Z.isShaderMaterial)&&ue.setValue(z,"isOrthographic",A.isOrthographicCamera===!0),Y!==A&&(Y=A,Vi=!0,ns=!0)}if(Ot.needsLights&&(ln.state.sunShadowMap.length>0&&ue.setValue(z,"sunShadowMap",ln.state.sunShadowMap,Yt),ln.state.directionalShadowMap.length>0&&ue.setValue(z,"directionalShadowMap",ln.state.directionalShadowMap,Yt),ln.state.spotShadowMap.length>0&&ue.setValue(z,"spotShadowMap",ln.state.spotShadowMap,Yt),ln.state.pointShadowMap.length>0&&ue.setValue(z,"pointShadowMap",ln.state.pointShadowMap,Yt)),j.isSkinnedMesh){ue.setOptional(z,j,"bindMatrix"),ue.setOptional(z,j,"bindMatrixInverse");let Le=j.skeleton;Le&&(Le.boneTexture===null&&Le.computeBoneTexture(),ue.setValue(z,"boneTexture",Le.boneTexture,Yt))}j.isBatchedMesh&&(ue.setOptional(z,j,"batchingTexture"),ue.setValue(z,"batchingTexture",j._matricesTexture,Yt),ue.setOptional(z,j,"batchingIdTexture"),ue.setValue(z,"batchingIdTexture",j._indirectTexture,Yt),ue.setOptional(z,j,"batchingColorTexture"),j._colorsTexture!==null&&ue.setValue(z,"batchingColorTexture",j._colorsTexture,Yt));let Gn=et.morphAttributes;if((Gn.position!==void 0||Gn.normal!==void 0||Gn.color!==void 0)&&lt.update(j,et,cn),(Vi||Ot.receiveShadow!==j.receiveShadow)&&(Ot.receiveShadow=j.receiveShadow,ue.setValue(z,"receiveShadow",j.receiveShadow)),(Z.isMeshStandardMaterial||Z.isMeshLambertMaterial||Z.isMeshPhongMaterial)&&Z.envMap===null&&G.environment!==null&&(Ke.envMapIntensity.value=G.environmentIntensity),Ke.dfgLUT!==void 0&&(Ke.dfgLUT.value=Cw()),Vi){if(ue.setValue(z,"toneMappingExposure",D.toneMappingExposure),Ot.needsLights&&vr(Ke,ns),Rt&&Z.fog===!0&&bt.refreshFogUniforms(Ke,Rt),bt.refreshMaterialUniforms(Ke,Z,xt,pt,w.state.transmissionRenderTarget[A.id]),Ot.needsLights&&Ot.numLightProbeGrids>0){let Le=M,hn=0;for(let Nn of w.state.lightProbeGridArray)Nn.texture!==null&&(Le.textures[hn]=Nn.texture,Le.min[hn]=Nn.boundingBox.min,Le.max[hn]=Nn.boundingBox.max,Le.resolution[hn]=Nn.resolution,hn++);for(let Nn in Le)Le[Nn].length=hn;Ke.probesSH.value=Le.textures,Ke.probesMin.value=Le.min,Ke.probesMax.value=Le.max,Ke.probesResolution.value=Le.resolution}yo.upload(z,bs(Ot),Ke,Yt)}if(Z.isShaderMaterial&&Z.uniformsNeedUpdate===!0&&(yo.upload(z,bs(Ot),Ke,Yt),Z.uniformsNeedUpdate=!1),Z.isSpriteMaterial&&ue.setValue(z,"center",j.center),ue.setValue(z,"modelViewMatrix",j.modelViewMatrix),ue.setValue(z,"normalMatrix",j.normalMatrix),ue.setValue(z,"modelMatrix",j.matrixWorld),Z.uniformsGroups!==void 0){let Le=Z.uniformsGroups;for(let hn=0,Nn=Le.length;hn<Nn;hn++){let Ua=Le[hn];Xt.update(Ua,cn),Xt.bind(Ua,cn)}}return cn}function vr(A,G){A.ambientLightColor.needsUpdate=G,A.lightProbe.needsUpdate=G,A.sunLights.needsUpdate=G,A.sunLightShadows.needsUpdate=G,A.directionalLights.needsUpdate=G,A.directionalLightShadows.needsUpdate=G,A.pointLights.needsUpdate=G,A.pointLightShadows.needsUpdate=G,A.spotLights.needsUpdate=G,A.spotLightShadows.needsUpdate=G,A.rectAreaLights.needsUpdate=G,A.hemisphereLights.needsUpdate=G}function Ss(A){return A.isMeshLambertMaterial||A.isMeshToonMaterial||A.isMeshPhongMaterial||A.isMeshStandardMaterial||A.isShadowMaterial||A.isShaderMaterial&&A.lights===!0}this.getActiveCubeFace=function(){return $},this.getActiveMipmapLevel=function(){return V},this.getRenderTarget=function(){return ot},this.setRenderTargetTextures=function(A,G,et){let Z=Ht.get(A);Z.__autoAllocateDepthBuffer=A.resolveDepthBuffer===!1,Z.__autoAllocateDepthBuffer===!1&&(Z.__useRenderToTexture=!1),Ht.get(A.texture).__webglTexture=G,Ht.get(A.depthTexture).__webglTexture=Z.__autoAllocateDepthBuffer?void 0:et,Z.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(A,G){let et=Ht.get(A);et.__webglFramebuffer=G,et.__useDefaultFramebuffer=G===void 0},this.setRenderTarget=function(A,G=0,et=0){ot=A,$=G,V=et;let Z=null,j=!1,Rt=!1;if(A){let Ct=Ht.get(A);if(Ct.__useDefaultFramebuffer!==void 0){Tt.bindFramebuffer(z.FRAMEBUFFER,Ct.__webglFramebuffer),tt.copy(A.viewport),nt.copy(A.scissor),at=A.scissorTest,Tt.viewport(tt),Tt.scissor(nt),Tt.setScissorTest(at),X=-1;return}else if(Ct.__webglFramebuffer===void 0)Yt.setupRenderTarget(A);else if(Ct.__hasExternalTextures)Yt.rebindTextures(A,Ht.get(A.texture).__webglTexture,Ht.get(A.depthTexture).__webglTexture);else if(A.depthBuffer){let ee=A.depthTexture;if(Ct.__boundDepthTexture!==ee){if(ee!==null&&Ht.has(ee)&&(A.width!==ee.image.width||A.height!==ee.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Yt.setupDepthRenderbuffer(A)}}let Dt=A.texture;(Dt.isData3DTexture||Dt.isDataArrayTexture||Dt.isCompressedArrayTexture)&&(Rt=!0);let Vt=Ht.get(A).__webglFramebuffer;A.isWebGLCubeRenderTarget?(Array.isArray(Vt[G])?Z=Vt[G][et]:Z=Vt[G],j=!0):A.samples>0&&Yt.useMultisampledRTT(A)===!1?Z=Ht.get(A).__webglMultisampledFramebuffer:Array.isArray(Vt)?Z=Vt[et]:Z=Vt,tt.copy(A.viewport),nt.copy(A.scissor),at=A.scissorTest}else tt.copy(Gt).multiplyScalar(xt).floor(),nt.copy(fe).multiplyScalar(xt).floor(),at=he;if(et!==0&&(Z=U),Tt.bindFramebuffer(z.FRAMEBUFFER,Z)&&Tt.drawBuffers(A,Z),Tt.viewport(tt),Tt.scissor(nt),Tt.setScissorTest(at),j){let Ct=Ht.get(A.texture);z.framebufferTexture2D(z.FRAMEBUFFER,z.COLOR_ATTACHMENT0,z.TEXTURE_CUBE_MAP_POSITIVE_X+G,Ct.__webglTexture,et)}else if(Rt){let Ct=G;for(let Dt=0;Dt<A.textures.length;Dt++){let Vt=Ht.get(A.textures[Dt]);z.framebufferTextureLayer(z.FRAMEBUFFER,z.COLOR_ATTACHMENT0+Dt,Vt.__webglTexture,et,Ct)}}else if(A!==null&&et!==0){let Ct=Ht.get(A.texture);z.framebufferTexture2D(z.FRAMEBUFFER,z.COLOR_ATTACHMENT0,z.TEXTURE_2D,Ct.__webglTexture,et)}X=-1};function Mr(A){let G=Ht.get(A);return(G.__readFormat!==A.format||G.__readType!==A.type)&&(G.__readFormat=A.format,G.__readType=A.type,G.__formatReadable=le.textureFormatReadable(A.format),G.__typeReadable=le.textureTypeReadable(A.type)),G}this.readRenderTargetPixels=function(A,G,et,Z,j,Rt,Lt,Ct=0){if(!(A&&A.isWebGLRenderTarget)){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Dt=Ht.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Lt!==void 0&&(Dt=Dt[Lt],Array.isArray(Dt)&&(Dt=Dt[0])),Dt){Tt.bindFramebuffer(z.FRAMEBUFFER,Dt);try{let Vt=A.textures[Ct],ee=Vt.format,me=Vt.type;A.textures.length>1&&z.readBuffer(z.COLOR_ATTACHMENT0+Ct);let zt=Mr(Vt);if(zt.__formatReadable===!1){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(zt.__typeReadable===!1){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}G>=0&&G<=A.width-Z&&et>=0&&et<=A.height-j&&z.readPixels(G,et,Z,j,Mt.convert(ee),Mt.convert(me),Rt)}finally{let Vt=ot!==null?Ht.get(ot).__webglFramebuffer:null;Tt.bindFramebuffer(z.FRAMEBUFFER,Vt)}}},this.readRenderTargetPixelsAsync=async function(A,G,et,Z,j,Rt,Lt,Ct=0){if(!(A&&A.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Dt=Ht.get(A).__webglFramebuffer;if(A.isWebGLCubeRenderTarget&&Lt!==void 0&&(Dt=Dt[Lt],Array.isArray(Dt)&&(Dt=Dt[0])),Dt)if(G>=0&&G<=A.width-Z&&et>=0&&et<=A.height-j){Tt.bindFramebuffer(z.FRAMEBUFFER,Dt);let Vt=A.textures[Ct],ee=Vt.format,me=Vt.type;A.textures.length>1&&z.readBuffer(z.COLOR_ATTACHMENT0+Ct);let zt=Mr(Vt);if(zt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(zt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ge=z.createBuffer();z.bindBuffer(z.PIXEL_PACK_BUFFER,ge),z.bufferData(z.PIXEL_PACK_BUFFER,Rt.byteLength,z.STREAM_READ),z.readPixels(G,et,Z,j,Mt.convert(ee),Mt.convert(me),0),z.bindBuffer(z.PIXEL_PACK_BUFFER,null);let Ze=ot!==null?Ht.get(ot).__webglFramebuffer:null;Tt.bindFramebuffer(z.FRAMEBUFFER,Ze);let Pe=z.fenceSync(z.SYNC_GPU_COMMANDS_COMPLETE,0);return z.flush(),await fg(z,Pe,4),z.bindBuffer(z.PIXEL_PACK_BUFFER,ge),z.getBufferSubData(z.PIXEL_PACK_BUFFER,0,Rt),z.bindBuffer(z.PIXEL_PACK_BUFFER,null),z.deleteBuffer(ge),z.deleteSync(Pe),Rt}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(A,G=null,et=0){let Z=Math.pow(2,-et),j=Math.floor(A.image.width*Z),Rt=Math.floor(A.image.height*Z),Lt=G!==null?G.x:0,Ct=G!==null?G.y:0;Yt.setTexture2D(A,0),z.copyTexSubImage2D(z.TEXTURE_2D,et,0,0,Lt,Ct,j,Rt),Tt.unbindTexture()},this.copyTextureToTexture=function(A,G,et=null,Z=null,j=0,Rt=0){let Lt,Ct,Dt,Vt,ee,me,zt,ge,Ze,Pe=A.isCompressedTexture?A.mipmaps[Rt]:A.image;if(et!==null)Lt=et.max.x-et.min.x,Ct=et.max.y-et.min.y,Dt=et.isBox3?et.max.z-et.min.z:1,Vt=et.min.x,ee=et.min.y,me=et.isBox3?et.min.z:0;else{let ue=Math.pow(2,-j);Lt=Math.floor(Pe.width*ue),Ct=Math.floor(Pe.height*ue),A.isDataArrayTexture?Dt=Pe.depth:A.isData3DTexture?Dt=Math.floor(Pe.depth*ue):Dt=1,Vt=0,ee=0,me=0}Z!==null?(zt=Z.x,ge=Z.y,Ze=Z.z):(zt=0,ge=0,Ze=0);let Ie=Mt.convert(G.format),mn=Mt.convert(G.type),Ot;G.isData3DTexture?(Yt.setTexture3D(G,0),Ot=z.TEXTURE_3D):G.isDataArrayTexture||G.isCompressedArrayTexture?(Yt.setTexture2DArray(G,0),Ot=z.TEXTURE_2D_ARRAY):(Yt.setTexture2D(G,0),Ot=z.TEXTURE_2D),Tt.activeTexture(z.TEXTURE0),Tt.pixelStorei(z.UNPACK_FLIP_Y_WEBGL,G.flipY),Tt.pixelStorei(z.UNPACK_PREMULTIPLY_ALPHA_WEBGL,G.premultiplyAlpha),Tt.pixelStorei(z.UNPACK_ALIGNMENT,G.unpackAlignment);let ln=Tt.getParameter(z.UNPACK_ROW_LENGTH),ye=Tt.getParameter(z.UNPACK_IMAGE_HEIGHT),es=Tt.getParameter(z.UNPACK_SKIP_PIXELS),cn=Tt.getParameter(z.UNPACK_SKIP_ROWS),br=Tt.getParameter(z.UNPACK_SKIP_IMAGES);Tt.pixelStorei(z.UNPACK_ROW_LENGTH,Pe.width),Tt.pixelStorei(z.UNPACK_IMAGE_HEIGHT,Pe.height),Tt.pixelStorei(z.UNPACK_SKIP_PIXELS,Vt),Tt.pixelStorei(z.UNPACK_SKIP_ROWS,ee),Tt.pixelStorei(z.UNPACK_SKIP_IMAGES,me);let Vi=A.isDataArrayTexture||A.isData3DTexture,ns=G.isDataArrayTexture||G.isData3DTexture;if(A.isDepthTexture){let ue=Ht.get(A),Ke=Ht.get(G),Gn=Ht.get(ue.__renderTarget),Le=Ht.get(Ke.__renderTarget);Tt.bindFramebuffer(z.READ_FRAMEBUFFER,Gn.__webglFramebuffer),Tt.bindFramebuffer(z.DRAW_FRAMEBUFFER,Le.__webglFramebuffer);for(let hn=0;hn<Dt;hn++)Vi&&(z.framebufferTextureLayer(z.READ_FRAMEBUFFER,z.COLOR_ATTACHMENT0,Ht.get(A).__webglTexture,j,me+hn),z.framebufferTextureLayer(z.DRAW_FRAMEBUFFER,z.COLOR_ATTACHMENT0,Ht.get(G).__webglTexture,Rt,Ze+hn)),z.blitFramebuffer(Vt,ee,Vt+Lt,ee+Ct,zt,ge,zt+Lt,ge+Ct,z.DEPTH_BUFFER_BIT,z.NEAREST);Tt.bindFramebuffer(z.READ_FRAMEBUFFER,null),Tt.bindFramebuffer(z.DRAW_FRAMEBUFFER,null)}else if(j!==0||A.isRenderTargetTexture||Ht.has(A)){let ue=Ht.get(A),Ke=Ht.get(G);Tt.bindFramebuffer(z.READ_FRAMEBUFFER,P),Tt.bindFramebuffer(z.DRAW_FRAMEBUFFER,B);for(let Gn=0;Gn<Dt;Gn++)Vi?z.framebufferTextureLayer(z.READ_FRAMEBUFFER,z.COLOR_ATTACHMENT0,ue.__webglTexture,j,me+Gn):z.framebufferTexture2D(z.READ_FRAMEBUFFER,z.COLOR_ATTACHMENT0,z.TEXTURE_2D,ue.__webglTexture,j),ns?z.framebufferTextureLayer(z.DRAW_FRAMEBUFFER,z.COLOR_ATTACHMENT0,Ke.__webglTexture,Rt,Ze+Gn):z.framebufferTexture2D(z.DRAW_FRAMEBUFFER,z.COLOR_ATTACHMENT0,z.TEXTURE_2D,Ke.__webglTexture,Rt),j!==0?z.blitFramebuffer(Vt,ee,Vt+Lt,ee+Ct,zt,ge,zt+Lt,ge+Ct,z.COLOR_BUFFER_BIT,z.NEAREST):ns?z.copyTexSubImage3D(Ot,Rt,zt,ge,Ze+Gn,Vt,ee,Lt,Ct):z.copyTexSubImage2D(Ot,Rt,zt,ge,Vt,ee,Lt,Ct);Tt.bindFramebuffer(z.READ_FRAMEBUFFER,null),Tt.bindFramebuffer(z.DRAW_FRAMEBUFFER,null)}else ns?A.isDataTexture||A.isData3DTexture?z.texSubImage3D(Ot,Rt,zt,ge,Ze,Lt,Ct,Dt,Ie,mn,Pe.data):G.isCompressedArrayTexture?z.compressedTexSubImage3D(Ot,Rt,zt,ge,Ze,Lt,Ct,Dt,Ie,Pe.data):z.texSubImage3D(Ot,Rt,zt,ge,Ze,Lt,Ct,Dt,Ie,mn,Pe):A.isDataTexture?z.texSubImage2D(z.TEXTURE_2D,Rt,zt,ge,Lt,Ct,Ie,mn,Pe.data):A.isCompressedTexture?z.compressedTexSubImage2D(z.TEXTURE_2D,Rt,zt,ge,Pe.width,Pe.height,Ie,Pe.data):z.texSubImage2D(z.TEXTURE_2D,Rt,zt,ge,Lt,Ct,Ie,mn,Pe);Tt.pixelStorei(z.UNPACK_ROW_LENGTH,ln),Tt.pixelStorei(z.UNPACK_IMAGE_HEIGHT,ye),Tt.pixelStorei(z.UNPACK_SKIP_PIXELS,es),Tt.pixelStorei(z.UNPACK_SKIP_ROWS,cn),Tt.pixelStorei(z.UNPACK_SKIP_IMAGES,br),Rt===0&&G.generateMipmaps===!0&&G.mipmapsAutoUpdate===!0&&z.generateMipmap(Ot),Tt.unbindTexture()},this.initRenderTarget=function(A){Ht.get(A).__webglFramebuffer===void 0&&Yt.setupRenderTarget(A)},this.initTexture=function(A){A.isCubeTexture?Yt.setTextureCube(A,0):A.isData3DTexture?Yt.setTexture3D(A,0):A.isDataArrayTexture||A.isCompressedArrayTexture?Yt.setTexture2DArray(A,0):Yt.setTexture2D(A,0),Tt.unbindTexture()},this.resetState=function(){$=0,V=0,ot=null,Tt.reset(),Et.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Mi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=Me._getDrawingBufferColorSpace(t),e.unpackColorSpace=Me._getUnpackColorSpace()}};var Qg={type:"change"},Dd={type:"start"},e0={type:"end"},ah=new ur,t0=new qn,Pw=Math.cos(70*_d.DEG2RAD),vn=new W,Qn=2*Math.PI,Ae={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Ld=1e-6,lh=class extends xa{constructor(t,e=null){super(t,e),this.state=Ae.NONE,this.target=new W,this.cursor=new W,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Xs.ROTATE,MIDDLE:Xs.DOLLY,RIGHT:Xs.PAN},this.touches={ONE:$s.ROTATE,TWO:$s.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new W,this._lastQuaternion=new ui,this._lastTargetPosition=new W,this._quat=new ui().setFromUnitVectors(t.up,new W(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new fo,this._sphericalDelta=new fo,this._scale=1,this._panOffset=new W,this._rotateStart=new ie,this._rotateEnd=new ie,this._rotateDelta=new ie,this._panStart=new ie,this._panEnd=new ie,this._panDelta=new ie,this._dollyStart=new ie,this._dollyEnd=new ie,this._dollyDelta=new ie,this._dollyDirection=new W,this._mouse=new ie,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=Lw.bind(this),this._onPointerDown=Iw.bind(this),this._onPointerUp=Dw.bind(this),this._onContextMenu=zw.bind(this),this._onMouseWheel=Fw.bind(this),this._onKeyDown=Ow.bind(this),this._onTouchStart=Bw.bind(this),this._onTouchMove=kw.bind(this),this._onMouseDown=Nw.bind(this),this._onMouseMove=Uw.bind(this),this._interceptControlDown=Vw.bind(this),this._interceptControlUp=Gw.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Ae.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(Qg),this.update(),this.state=Ae.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;vn.copy(e).sub(this.target),vn.applyQuaternion(this._quat),this._spherical.setFromVector3(vn),this.autoRotate&&this.state===Ae.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Qn:n>Math.PI&&(n-=Qn),s<-Math.PI?s+=Qn:s>Math.PI&&(s-=Qn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(vn.setFromSpherical(this._spherical),vn.applyQuaternion(this._quatInverse),e.copy(this.target).add(vn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=vn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),r=!!l}else if(this.object.isOrthographicCamera){let a=new W(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=l!==this.object.zoom;let c=new W(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=vn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(ah.origin.copy(this.object.position),ah.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(ah.direction))<Pw?this.object.lookAt(this.target):(t0.setFromNormalAndCoplanarPoint(this.object.up,this.target),ah.intersectPlane(t0,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>Ld||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Ld||this._lastTargetPosition.distanceToSquared(this.target)>Ld?(this.dispatchEvent(Qg),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Qn/60*this.autoRotateSpeed*t:Qn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){vn.setFromMatrixColumn(e,0),vn.multiplyScalar(-t),this._panOffset.add(vn)}_panUp(t,e){this.screenSpacePanning===!0?vn.setFromMatrixColumn(e,1):(vn.setFromMatrixColumn(e,0),vn.crossVectors(this.object.up,vn)),vn.multiplyScalar(t),this._panOffset.add(vn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;vn.copy(s).sub(this.target);let r=vn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Qn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Qn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Qn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ie,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function Iw(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function Lw(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function Dw(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(e0),this.state=Ae.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function Nw(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Xs.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Ae.DOLLY;break;case Xs.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}break;case Xs.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ae.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ae.PAN}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Dd)}function Uw(i){switch(this.state){case Ae.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Ae.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Ae.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function Fw(i){this.enabled===!1||this.enableZoom===!1||this.state!==Ae.NONE||(i.preventDefault(),this.dispatchEvent(Dd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(e0))}function Ow(i){this.enabled!==!1&&this._handleKeyDown(i)}function Bw(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case $s.ROTATE:if(this.enableRotate===!1){this.state=Ae.NONE;break}this._handleTouchStartRotate(i),this.state=Ae.TOUCH_ROTATE;break;case $s.PAN:if(this.enablePan===!1){this.state=Ae.NONE;break}this._handleTouchStartPan(i),this.state=Ae.TOUCH_PAN;break;default:this.state=Ae.NONE}break;case 2:switch(this.touches.TWO){case $s.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Ae.TOUCH_DOLLY_PAN;break;case $s.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Ae.TOUCH_DOLLY_ROTATE;break;default:this.state=Ae.NONE}break;default:this.state=Ae.NONE}this.state!==Ae.NONE&&this.dispatchEvent(Dd)}function kw(i){switch(this._trackPointer(i),this.state){case Ae.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Ae.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Ae.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Ae.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Ae.NONE}}function zw(i){this.enabled!==!1&&i.preventDefault()}function Vw(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function Gw(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var Nd=Math.PI/36,Hw=.06,n0=1.15,i0=.02;function s0(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,l=new W().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let c=new W().setFromMatrixColumn(t.matrix,1),h=l.multiplyScalar(o).addScaledVector(c,a).multiplyScalar(Hw*s.length());n.add(h)}else{s.applyAxisAngle(t.up,o*Nd);let c=Math.min(Math.PI-i0,Math.max(i0,s.angleTo(t.up)-a*Nd));s.applyAxisAngle(l.applyAxisAngle(t.up,o*Nd),c-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?n0:1/n0);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function Ud(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new W(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var $w=["quiet","within","near","broken","waived","near","within"],ch=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new sh({antialias:!0,alpha:!0}),this.soft=Yw(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new lh(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(s0(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new ga(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new _a(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new na;camera=new Yn(32,1,.1,1e4);controls;parts=new Map;seam=new Li;marker=new Li;labels=[];labelLayer=$t("div",{class:"scene-labels"});cutPlane=new qn(new W(1,0,0),0);centre=new W;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Li,s=Zw(t),r=e==="cover",o=new ae(rn(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new ua({color:o,side:r?Jn:Ni,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),l=qw(new ae(rn(r?"cover-cut":"base-cut")),new ae(rn("ink")),r?-1:1),c=new Cn(s,l);c.visible=!1,c.name="inside";let h=new Cn(s,a);h.renderOrder=r?2:0;let u=new co(Jw(t),new Vs({color:new ae(rn("ink")),transparent:!0,opacity:r?.5:.4}));u.renderOrder=r?3:1,n.add(h,c,u),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new W(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of ai(n))t.min(new W(...s)),e.max(new W(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,en(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new W(...rr(t.beam).toward);for(let r of t.contours){let o=ai(r),a=(r.summary.rib_width?.median??1.5)*.36,l=new Uint8Array(o.length);for(let[c,h,u]of e.worst[r.id]??[])l.fill(u,c,h+1);this.seam.add(jw(o.map(c=>new W(...c)),r.stations.u.map(c=>new W(...c)),n,a,l,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(_=>_.id===r.contour);if(!o)continue;let a=new W(...ai(o)[r.station]),l=new W(...o.stations.u[r.station]),c=s.find(_=>_.at.distanceTo(a)<this.radius/60);if(c){c.findings.push(r),c.numbers.textContent=Cs(c.findings),c.numbers.setAttribute("aria-label",`${c.numbers.textContent}: ${vt("go to these findings")}`);continue}let h=new ae(rn(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),u=new kn().setFromPoints([a.clone().addScaledVector(l,-this.radius/22),a.clone().addScaledVector(l,this.radius/22)]),d=new co(u,new Vs({color:h,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=$t("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: ${vt("go to {title}",{title:r.title})}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(l,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new W(...ai(n)[t.station]),o=new W(...n.stations.u[t.station]),a=new W(...rr(s.beam).toward),l=new W().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,l),this.cutPlane.setFromNormalAndCoplanarPoint(l.clone().negate(),r),e){let c=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(l,this.radius*.34);this.fly(c,r,a)}this.ask()}buildMarker(t,e,n,s){for(let u of[...this.marker.children])r0(u);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(u,d)=>t.clone().addScaledVector(e,u*r).addScaledVector(n,d*r),a=new ae(rn("walker")),l=new oa(new kn().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Vs({color:a,depthTest:!1}));l.renderOrder=8;let c=new Cn(new dr(2*r,2*r),new _s({color:a,transparent:!0,opacity:this.cut?0:.12,side:Jn,depthWrite:!1}));c.position.copy(t),c.up.copy(n),c.lookAt(t.clone().add(s)),c.renderOrder=7;let h=new Cn(new ha(r*.08,16,12),new _s({color:a,depthTest:!1}));h.position.copy(t),h.renderOrder=9,this.marker.add(l,c,h),this.host.dataset.marker=[t.x,t.y,t.z].map(u=>u.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),l=pf()||this.soft?0:550,c=performance.now(),h=u=>{if(s!==this.flight)return;let d=l?Math.min(1,(u-c)/l):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),Ud(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(h)};h(c)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=rr(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new W(...e.toward),this.distance());this.go(n,new W(...e.up),t)}aslant(t=!0){let e=rr(this.walk.joint.beam),n=new W(...e.toward).multiplyScalar(.75).addScaledVector(new W(...e.right),.45).addScaledVector(new W(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new W(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),Ud(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Cn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Ni:Jn}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Cn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(r0),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function qw(i,t,e){let n=new _s({color:i,side:Ln});return n.onBeforeCompile=s=>{s.uniforms.strokes={value:t},s.fragmentShader=`uniform vec3 strokes;
${s.fragmentShader}`.replace("#include <opaque_fragment>",`#include <opaque_fragment>
if (mod(gl_FragCoord.x + ${e.toFixed(1)} * gl_FragCoord.y, 9.0) < 1.4) gl_FragColor.rgb = mix(gl_FragColor.rgb, strokes, 0.62);`)},n.customProgramCacheKey=()=>`hatched${e}`,n}function Yw(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function r0(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function o0(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,l,c]=[r(3*o),r(3*o+1),r(3*o+2)],h=(Math.imul(a,73856093)^Math.imul(l,19349663)^Math.imul(c,83492791))&e-1;for(;;h=h+1&e-1){let u=n[h];if(u<0){n[h]=o,s[o]=o;break}if(r(3*u)===a&&r(3*u+1)===l&&r(3*u+2)===c){s[o]=u;break}}}return s}function Zw(i){let{positions:t,triangles:e,face:n}=i,s=o0(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),l=[];for(let h=0;h<e.length;h++){let u=s[e[h]],d=(n[Math.floor(h/3)]+1)*r+u,f=o.get(d);f===void 0&&(f=l.length/3,o.set(d,f),l.push(t[3*u],t[3*u+1],t[3*u+2])),a[h]=f}let c=new kn;return c.setAttribute("position",new On(new Float32Array(l),3)),c.setIndex(new On(a,1)),c.computeVertexNormals(),c}function Jw(i){let{positions:t,triangles:e,face:n}=i,s=o0(t),r=t.length/3,o=new Map;for(let c=0;c<e.length;c++){let[h,u]=[s[e[c]],s[e[c%3===2?c-2:c+1]]],d=h<u?h*r+u:u*r+h,f=n[Math.floor(c/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[c,h]of o){if(h===-2)continue;let u=Math.floor(c/r),d=c%r;a.push(t[3*u],t[3*u+1],t[3*u+2],t[3*d],t[3*d+1],t[3*d+2])}let l=new kn;return l.setAttribute("position",new On(new Float32Array(a),3)),l}function jw(i,t,e,n,s,r){let a=[],l=[],c=[],h=$w.map(g=>new ae(rn(g)));i.forEach((g,_)=>{let m=s[_]===3||s[_]===4?1.5:s[_]===5?1.3:s[_]===2?1.1:.85,p=h[s[_]];for(let x=0;x<8;x++){let T=x/8*2*Math.PI,M=g.clone().addScaledVector(t[_],Math.cos(T)*n*m).addScaledVector(e,Math.sin(T)*n*m);a.push(M.x,M.y,M.z),l.push(p.r,p.g,p.b)}});let u=r?i.length:i.length-1;for(let g=0;g<u;g++){let _=(g+1)%i.length;for(let m=0;m<8;m++){let p=(m+1)%8;c.push(g*8+m,_*8+m,_*8+p,g*8+m,_*8+p,g*8+p)}}let d=new kn;d.setAttribute("position",new On(new Float32Array(a),3)),d.setAttribute("color",new On(new Float32Array(l),3)),d.setIndex(c);let f=new Cn(d,new _s({vertexColors:!0,side:Jn}));return f.renderOrder=4,f}function c0(i,t,e,n){let s=(_,m)=>t.summary[_]?.max??m,r=s("rib_width",1.5),o=Math.min(s("rib_height",1.2),4),a=s("cover_thickness_max",2),l=Math.max(r/2+2.2,r*1.9),c=Math.max(l,Math.min(r/2+e+s("clamp_land",2)+.7,r/2+6)),h=Od(t),u=a+Math.max(0,Math.min(s("gap",0),1))+.35,d=Math.max(...(n?.slopes??[0]).map(Math.abs));u+=Math.min(d,1)*l*.5;for(let _ of n?.shade??[])_.v!==null&&_.v<a+5&&(u=Math.max(u,_.v+1.2));let f=Math.min(d,1)*l*.5,g={left:h>0?-l:-c,right:h<0?l:c};return i.rib_on==="cover"?{...g,bottom:-Math.max(1.6,o)-f,top:Math.max(u,o+1.2)}:{...g,bottom:-(o+1.4)-f,top:u}}var Od=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0;function Bd(i,t,e,n,s=7){let r=[...i].sort((a,l)=>a.wanted-l.wanted),o=l0(r,t,e,s);for(let a=0,l=a0(r,o,n);l>0&&a<r.length;a++){let c=!1;for(let h=0;h<r.length;h++)for(let u=h+1;u<r.length;u++){let d=[...r];[d[h],d[u]]=[d[u],d[h]];let f=l0(d,t,e,s),g=a0(d,f,n);g>=l||(r.splice(0,r.length,...d),[o,l,c]=[f,g,!0])}if(!c)break}r.forEach((a,l)=>a.put(o[l]))}function a0(i,t,e){let n=i.flatMap((r,o)=>r.end?[[[e,t[o]+8],r.end]]:[]),s=0;return n.forEach((r,o)=>n.slice(o+1).forEach(a=>{Kw(r,a)&&s++})),s}function Kw([i,t],[e,n]){let s=(r,o,a)=>Math.sign((o[0]-r[0])*(a[1]-r[1])-(o[1]-r[1])*(a[0]-r[0]));return s(i,t,e)*s(i,t,n)<0&&s(e,n,i)*s(e,n,t)<0}function l0(i,t,e,n){let s=[],r=t;for(let a of i){let l=Math.max(r,a.wanted-a.height/2);s.push(l),r=l+a.height+n}let o=e;for(let a=i.length-1;a>=0;a--)s[a]=Math.min(s[a],o-i[a].height),o=s[a]-n;return s}var hh=null;function kd(i,t=12,e=500){return hh??=document.createElement("canvas").getContext("2d"),hh?(hh.font=`${e} ${t}px "Barlow Semi Condensed", "Arial Narrow", sans-serif`,hh.measureText(i).width):i.length*t*.47}function xr(i,t,e=3,n=12,s=500){let r=l=>kd(l,n,s)<=t,o=[];for(let l of i.split(/ +/)){let c=o[o.length-1];c!==void 0&&r(`${c} ${l}`)?o[o.length-1]=`${c} ${l}`:o.push(l)}let a=(l,c)=>{if(!c&&r(l))return l;let h=l;for(;h.length>1&&!r(`${h}…`);)h=h.slice(0,-1);return`${h}…`};return o.slice(0,e).map((l,c)=>a(l,c===e-1&&o.length>e))}var Dn=i=>i.waived?"waived":i.severity;function h0(i,t){let e=i.limit?` (${i.limit})`:"";return`${Ir[i.severity]} ${i.n}  ${i.title}${t&&t!=="–"?`: ${t}`:""}${e}`}function u0(i,t,e,n,s){let r=t+30+n*22<s.right?1:-1,o=t+r*(20+n*22),a=Math.max(s.top+10,Math.min(s.bottom-10,e-18));return gt("g",{class:`pin ${Dn(i)}`,"data-finding":i.n},gt("path",{d:`M${Q(t)} ${Q(e)}L${Q(o)} ${Q(a)}`}),gt("circle",{class:"pin-dot",cx:Q(t),cy:Q(e),r:2.6}),gt("circle",{class:"pin-head",cx:Q(o),cy:Q(a),r:9}),gt("text",{x:Q(o),y:Q(a+4),"text-anchor":"middle"},String(i.n)))}function uh(i,t,e,n){if(!i.at)return null;let{x:s,y:r,z:o,u:a}=e.stations,l=[i.at[0]-s[n],i.at[1]-r[n],i.at[2]-o[n]],c=(g,_)=>g[0]*_[0]+g[1]*_[1]+g[2]*_[2],h=a[n],u=t.beam,d=c(l,h),f=-c(l,u);return[d,f,Math.sqrt(Math.max(c(l,l)-d*d-f*f,0))]}function d0(i,t,e,n){let s=uh(i,t,e,n);return s&&s[2]<=.6?[s[0],s[1]]:null}function f0([i,t,e]){return[[i,i>0?vt("outward"):vt("inward")],[t,t>0?vt("above"):vt("below")],[e,vt("along the seam")]].filter(([s])=>Math.abs(s)>=.5).map(([s,r])=>`${_i(Math.abs(s),1)} ${r}`).join(", ")}var p0=14,dh=class{constructor(t,e,n,s,r,o,a,l,c){this.root=t;this.words=e;this.bands=n;this.here=s;this.key=r;this.contour=o;this.station=a;this.plot=l;this.width=c}root;words;bands;here;key;contour;station;plot;width;margins={left:[],right:[]};shown=new Set;value(t){return this.contour.stations[t]?.[this.station]??null}finding(t){let e=[t.column,...t.judged??[]];return this.here.find(n=>e.includes(n.column??"")||e.includes(n.quantity))??null}text(t){let e=t.column;return e&&t.station!==this.station&&this.contour.stations[e]?this.words.value(this.value(e),e):t.value}lines(t,e,n){let s=e!==null&&e.column!==null&&e.column!==t.column,r=e&&e.value!=="–"&&(s||e.column===t.column)?this.text(e):this.words.value(this.value(t.column),t.column),o=e?.limit||this.bands.find(c=>c.columns.includes(t.column)&&c.words)?.words||"",a=e?.target&&r!==vt("not measured")?` → ${e.target}`:"",l=xr(t.title,n).map(c=>["dim-title",c]);l.push(...xr(e?`${Ir[e.severity]}${e.n} ${r}${a}`:r,n,2,14,600).map(c=>["dim-value",c])),s&&this.words.unit(e.column)!==this.words.unit(t.column)&&l.push(["dim-limit",this.words.value(this.value(t.column),t.column)]);for(let c of o?xr(o,n):[])l.push(["dim-limit",c]);for(let c of t.also??[])l.push(...xr(c,n).map(h=>["dim-limit",h]));return l}group(t,e){return e&&this.shown.add(e),gt("g",{class:`dim-label ${e?Dn(e):""}`,"data-column":t.column,"data-finding":e?.n})}arrows(t,e,n,s,r=""){let o=Math.hypot(n-t,s-e),a=`url(#${this.key}-arrow)`,l=`dim ${r}`;if(o>=22){this.root.append(gt("path",{class:l,d:`M${Q(t)} ${Q(e)}L${Q(n)} ${Q(s)}`,"marker-start":a,"marker-end":a}));return}let[c,h]=o>.01?[(n-t)/o,(s-e)/o]:[0,1];this.root.append(gt("path",{class:l,d:`M${Q(t-c*16)} ${Q(e-h*16)}L${Q(t)} ${Q(e)}`,"marker-end":a}),gt("path",{class:l,d:`M${Q(n+c*16)} ${Q(s+h*16)}L${Q(n)} ${Q(s)}`,"marker-end":a}))}change(t,[e,n],[s,r]){Math.hypot(s-e,r-n)<3||this.root.append(gt("path",{class:`change ${Dn(t)}`,d:`M${Q(e)} ${Q(n)}L${Q(s)} ${Q(r)}`,"marker-end":`url(#${this.key}-to)`,"data-finding":t.n}))}sketch(t,[e,n]){this.root.append(gt("path",{class:t,d:`M${Q(e[0])} ${Q(e[1])}L${Q(n[0])} ${Q(n[1])}`}))}across(t,e,n,s,r,o=0){let[a,l]=[Math.min(t,e),Math.max(t,e)],c=this.finding(r),h=c?Dn(c):"";[a,l].forEach((p,x)=>this.root.append(gt("path",{class:"extension",d:`M${Q(p)} ${Q(s[x])}V${Q(n-4)}`}))),this.arrows(a,n,l,n,h);let u=this.group(r,c),d=o===0?(a+l)/2:o>0?a+4:l-4,f=o===0?"middle":o>0?"start":"end",[g,_,...m]=this.lines(r,c,260);u.append(gt("text",{class:"dim-value",x:Q(d),y:Q(n-6),"text-anchor":f},gt("tspan",{class:"dim-title"},`${g[1]}  `),gt("tspan",{class:"dim-value"},_[1]))),m.reverse().forEach(([p,x],T)=>u.append(gt("text",{class:p,x:Q(d),y:Q(n-19-T*13),"text-anchor":f},x))),this.root.append(u)}along(t,e,n,s){let r=this.edge(t),o=this.finding(s);for(let[a,l]of[e,n])this.root.append(gt("path",{class:"extension",d:`M${Q(a)} ${Q(l)}H${Q(r+t*4)}`}));this.arrows(r,e[1],r,n[1],o?Dn(o):""),this.slot(t,(e[1]+n[1])/2,s)}leader(t,e,n){let s=this.edge(t),r=s+t*4;this.slot(t,e[1],n,o=>this.root.append(gt("path",{class:"leader",d:`M${Q(r+t*4)} ${Q(o)}H${Q(r-t*6)}L${Q(e[0])} ${Q(e[1])}`}),gt("circle",{class:"leader-dot",cx:Q(e[0]),cy:Q(e[1]),r:2})),e)}edge(t){return t<0?this.plot.x-12:this.plot.x+this.plot.w+12}slot(t,e,n,s=()=>{},r){let o=this.edge(t)+t*10,a=t<0?"end":"start",l=this.finding(n),c=(t<0?o:this.width-o)-5,h=this.lines(n,l,c),u=this.group(n,l);this.root.append(u),this.margins[t<0?"left":"right"].push({wanted:e,height:h.length*p0,end:r,put:d=>{h.forEach(([f,g],_)=>u.append(gt("text",{class:f,x:Q(o),y:Q(d+11+_*p0),"text-anchor":a},g))),s(d+8)}})}settle(t,e){Bd(this.margins.left,t,e,this.edge(-1)+2),Bd(this.margins.right,t,e,this.edge(1)-2)}};function m0(i,t,e,n,s,r,o,a){let l=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),c=i("light_lean"),h=i("light_enters_inner"),u=i("light_enters_outer"),d=h!==null&&u!==null,f=(i("light_width")??2*t)/2+n.margin,[g,_]=d?[h-n.margin,u+n.margin]:[-f,f],m=Math.max((s.at(0,l)[1]-s.ceiling)/s.scale,0),p=U=>Math.tan(U*Math.PI/180)*m,[x,T]=d?[g+p((c??0)-n.cone),_+p((c??0)+n.cone)]:[g,_],M=U=>{let P=(U+f)/(2*f),B=($,V)=>$+P*(V-$);return{above:B(x,T),enters:B(g,_),foot:U}},R=(U,P)=>{let[B,$]=s.at(U,P??l+m);return`${Q(B)} ${Q(P===null?s.ceiling:$)}`},w=(U,P)=>P>=l?U.enters+(U.above-U.enters)*(P-l)/Math.max(m,1e-9):U.foot+(U.enters-U.foot)*P/Math.max(l,1e-9),y=(U,P,B)=>{let $=B===null?[R(U.above,null),R(U.enters,l)]:B>l?[R(w(U,B),B),R(U.enters,l)]:[R(w(U,B),B)],V=B===null?[R(P.enters,l),R(P.above,null)]:B>l?[R(P.enters,l),R(w(P,B),B)]:[R(w(P,B),B)];return`M${[...$,R(U.foot,0),R(P.foot,0),...V].join("L")}Z`},b=[gt("path",{class:"light",d:y(M(-f),M(f),null)})],F=r.filter(U=>U.leans===(c!==null)||r.every(P=>P.leans===U.leans));for(let U of F){let P=U.v!==null&&U.v<l+m?U.v:null;b.push(gt("path",{class:U.share>0?"shade part":"shade",d:y(M(U.low),M(U.high),P),"data-low":U.low,"data-high":U.high,"data-share":U.share}))}let D=Math.max(F.length?4:1,Math.min(F.length?6:4,Math.round(2*f*s.scale/26)));for(let U=0;U<D;U++){let P=M(-f+n.margin+(U+.5)/D*2*(f-n.margin)),B=F.find(Y=>P.foot>=Y.low-1e-6&&P.foot<=Y.high+1e-6),$=Math.min(6/s.scale,l>0?l:.1);if(!B){b.push(gt("path",{class:"ray","marker-end":`url(#${o}-arrow)`,d:`M${R(P.above,null)}L${R(P.enters,l)}L${R(w(P,$),$)}`}));continue}let V=B.v!==null&&B.v<l+m?B.v:l+m*.8,[ot,X]=s.at(w(P,V),V);b.push(gt("path",{class:"ray lost",d:`M${R(w(P,V),V)}L${V>l?`${R(P.enters,l)}L`:""}${R(w(P,$),$)}`}),gt("path",{class:"ray",d:`M${R(P.above,null)}L${R(w(P,V),V)}`}),gt("path",{class:B.share>0?"stop part":"stop",d:`M${Q(ot-5)} ${Q(X-5)}L${Q(ot+5)} ${Q(X+5)}M${Q(ot-5)} ${Q(X+5)}L${Q(ot+5)} ${Q(X-5)}`}))}let C=[],O=F.find(U=>U.part);if(O){let U=O.v!==null&&O.v>=l+m,P=[O.v!==null?vt("{height} above the rib",{height:_i(O.v,1)}):"",Math.abs(O.along??0)>.5?`${_i(Math.abs(O.along),1)} ${O.along>0?vt("ahead"):vt("back")}`:""].filter(Boolean).join(", "),B=M(-f),$=O.v!==null&&!U?O.v:l+m,[V,ot]=s.at(Math.min(B.above,B.enters,B.foot),$),X=`${a(O.part)}${P?`, ${P}`:""}`;C.push(gt("text",{class:"caster","text-anchor":"end",x:Q(Math.max(V-8,s.left+kd(X,12,600)+2)),y:Q(Math.max(s.ceiling+12,ot-4)),"data-part":O.part},X))}return{drawn:b,told:C}}function y0(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,Qw(i.segments,s));return e}function Qw(i,t){let e=[],n=new Map,s=(u,d)=>{let[f,g]=[Math.round(u/.001),Math.round(d/.001)];for(let[_,m]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let p=n.get(`${_},${m}`);if(p!==void 0&&Math.hypot(e[p][0]-u,e[p][1]-d)<=.001)return p}return e.push([u,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(u,d,f)=>{r.has(u)||r.set(u,[]),r.get(u).push([d,f])};for(let u of t){let d=s(i[4*u],i[4*u+1]),f=s(i[4*u+2],i[4*u+3]);d!==f&&(o(d,u,f),o(f,u,d))}let a=new Set,l=u=>{let d=[u];for(let f=u;;){let g=r.get(f)?.find(([_])=>!a.has(_));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===u))return d}},c=[],h=[...r.keys()].sort((u,d)=>(r.get(u).length%2?0:1)-(r.get(d).length%2?0:1));for(let u of h)for(;r.get(u).some(([d])=>!a.has(d));)c.push(l(u).map(d=>e[d]));return t1(c)}function t1(i){let t=i.filter(n=>Ia(n)),e=i.filter(n=>!Ia(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!Ia(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(zd(r,a[0]))n=[...n,...a];else if(zd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var zd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,Ia=i=>i.length>2&&zd(i[0],i[i.length-1]);function v0(i,t){return t===0?i:i?.map(e=>e.map(([n,s])=>[n,s-t*n]))}function g0(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var _0=.01;function M0(i,t,e,n,s,r){let o=[],a=0;for(let l=0;a<r&&l<2e3;l++){let c=n*(l+.5)*_0,h=x0(g0(t,c),e).map(([m])=>m),d=x0(g0(i,c),e).filter(([m])=>m<.5).map(([,m])=>m);if(!h.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(m=>m<Math.min(...h)+.5)),g=Math.min(...h.filter(m=>m>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let _=g-s;if(_>f)o.push({u:c,low:f,high:_,drawn:g}),a+=(_-f)*_0;else if(a>.02)break}return o}function x0(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var ph=3;function S0(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:l,frame:c}=i,h=n.stations.s[s],u=ct=>n.stations[ct]?.[s]??null,d=cu(i.findings,t,n,s),f=t.rib_on==="none"||d.some(ct=>ct.rule==="rib-missing"&&!ct.waived),g=o<560?100:112,_=Math.min(d.length,ph)+(d.length>ph?1:0),m=74+(_?_*16:0),p={x:g,y:m,w:o-2*g,h:a-m-34},x=Math.min(p.w/(c.right-c.left),p.h/(c.top-c.bottom)),T=c.left-(p.w/x-(c.right-c.left))/2,M=c.top+(p.h/x-(c.top-c.bottom))*.15,R=ct=>p.x+(ct-T)*x,w=ct=>p.y+(M-ct)*x,y=i.sections?.slope(s)??0,b=(ct,pt)=>[R(ct),w(pt+y*ct)],F={at:b,scale:x,ceiling:p.y-24,left:p.x},D=t.rib_on==="cover"?-1:1,C=gt("svg",{class:"section-drawing",viewBox:`0 0 ${Q(o)} ${Q(a)}`,width:Q(o),height:Q(a),role:"img","aria-label":vt("Section across the seam at s = {place}",{place:_i(h,2)}),"data-slope":y});C.append(gt("defs",null,fh(`${l}-base`,"hatch-base",6,45),fh(`${l}-cover`,"hatch-cover",15,-45),fh(`${l}-other`,"hatch-other",5,90),fh(`${l}-trap`,"hatch-trap",4,90),gt("clipPath",{id:`${l}-window`},gt("rect",{x:p.x,y:p.y-24,width:p.w,height:p.h+24})),gt("marker",{id:`${l}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},gt("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"})),gt("marker",{id:`${l}-to`,viewBox:"0 0 10 10",refX:8,refY:5,markerWidth:4.5,markerHeight:4.5,orient:"auto"},gt("path",{d:"M0 0 L10 5 L0 10 Z",fill:"context-stroke"}))));let O=i.sections?.at(s)??null,U=O?y0(O):new Map,P=gt("g",{"clip-path":`url(#${l}-window)`});C.append(P);let B=(u("rib_width_top")??u("rib_width"))===null?null:(u("rib_width_top")??u("rib_width"))/2,$=e.drop,V=i.sections?.shadeAt(s)??[],ot=B===null?null:m0(u,B,D,e,F,V,l,ct=>r.part(ct));ot&&P.append(...ot.drawn);let X=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}],Y=D>0?0:1,tt=D>0?0:-($??0);if(!f&&$!==null){let ct=pt=>v0(U.get(pt),y);for(let pt of X){let xt=u(`trap_area_${pt.name}`);xt===null||!U.size||(pt.columns=M0(ct(Y),ct(1-Y),D,pt.side,$,xt),pt.columns.length>=2&&P.append(...r1(pt.columns,D,tt,b,l)))}}let nt=new Set(V.map(ct=>i.sections?.ownerOf(ct.part)).filter(ct=>ct!==void 0));for(let ct of[...U.keys()].sort((pt,xt)=>b0(pt)-b0(xt))){let pt=ct===0?"base":ct===1?"cover":"other",xt=U.get(ct).map(Wt=>Vd(Wt,R,w)).join("");P.append(gt("path",{class:`body ${pt}`,d:xt,"fill-rule":"evenodd"}),gt("path",{class:"hatching",d:xt,"fill-rule":"evenodd",fill:`url(#${l}-${pt})`}),gt("path",{class:`outline ${pt}${nt.has(ct)?" casts":""}`,d:xt,"data-part":pt==="other"?i.sections?.partOf(ct):null}))}let at=!f&&B!==null&&e.collapse!==null&&U.get(Y)!==void 0;if(at){let ct=`${l}-melt`,pt=B*1.6,xt=-e.collapse*D;C.querySelector("defs").append(gt("clipPath",{id:ct},gt("path",{d:U.get(Y).map(Kt=>Vd(Kt,R,w)).join(""),"clip-rule":"evenodd"})));let Wt=[b(-pt,0),b(pt,0),b(pt,xt),b(-pt,xt)];P.append(gt("path",{class:"melt","clip-path":`url(#${ct})`,d:`M${Wt.map(([Kt,Gt])=>`${Q(Kt)} ${Q(Gt)}`).join("L")}Z`}))}!f&&$!==null&&U.get(1)&&P.append(gt("path",{class:"moved",d:U.get(1).map(ct=>Vd(ct,R,pt=>w(pt-$))).join("")})),C.append(...ot?.told??[]),U.size?i.sections?.isNeighbour(s)&&C.append(gt("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},vt("outline of the next station; values of this one"))):C.append(gt("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?vt("No section was kept at this station."):vt("The document carries no section outlines.")));let J=new dh(C,r,e.bands,d,l,n,s,p,o),mt=e1(i,J,{half:B,at:b,plot:p,sides:X,up:D,sunk:tt,ribless:f,melts:at,slope:y,X:R,Y:w});return J.settle(p.y-26,a-24),s1(C,d,J,i,mt,p,R,w,_),C.append(...o1(p.x+4,a-16,x)),C.append(gt("text",{class:"side",x:12,y:Q(a-8)},`◂ ${vt("inner")}`),gt("text",{class:"side",x:Q(o-12),y:Q(a-8),"text-anchor":"end"},`${vt("outer")} ▸`)),C}function e1(i,t,e){let{contour:n,facts:s,compact:r}=i,{half:o,at:a,plot:l,sides:c,up:h,ribless:u}=e,d=b=>t.value(b),f=d("gap")??0,g=d("cover_thickness"),_=(g??0)+(h>0?f:0),m=l.y-8,p=l.y-36,x=o??.5,T=Math.min(d("rib_height")??.6,4),M={rib:a(0,-.35*T*h),flank_inner:a(-x,-.5*T*h),flank_outer:a(x,-.5*T*h),cover:a(x*.4,_*.6),gap:a(-x*.7,f/2*h),light:[a(0,_)[0],a(0,_)[1]-14],below:a(0,-(T+.7)*h),land:a(x+s.margin+.5,_),other:a(0,0)};o!==null&&!u&&(t.across(a(-o,0)[0],a(o,0)[0],p,[a(-o,0)[1],a(o,0)[1]],{column:"rib_width",title:vt("rib width"),judged:["rib_width_top"]}),Ys(t,"rib_width",b=>[[a(-b/2,0),a(-b/2,-T*h)],[a(b/2,0),a(b/2,-T*h)]],b=>[-1,1].map(F=>[a(F*o,-T*h*.75),a(F*b/2,-T*h*.75)])));let R=d("clamp_land"),w=Od(n);if(o!==null&&R!==null&&w){let b=(d(w>0?"light_enters_outer":"light_enters_inner")??w*o)+w*s.margin,F=a(b,_),D=a(b+w*R,_);M.land=[(F[0]+D[0])/2,(F[1]+D[1])/2];let C=w>0?[F[1],D[1]]:[D[1],F[1]],O=d("clamp_tilt")!==null&&t.finding({column:"clamp_tilt",title:""})!==null;if(t.across(F[0],D[0],m,C,{column:"clamp_land",title:vt("land")},w),Ys(t,"clamp_land",U=>[[a(b+w*U,_-.7),a(b+w*U,_+.25)]],U=>[[a(b+w*R,_-.35),a(b+w*U,_-.35)]]),O){let U=[D[0],F[1]];t.sketch("reference",[F,U]),t.change(t.finding({column:"clamp_tilt",title:""}),D,U),t.leader(w,[(D[0]+U[0])/2,(D[1]+U[1])/2],{column:"clamp_tilt",title:vt("tilt of the land")})}}if(g!==null){let b=h>0?f:0,F=o??0;t.along(1,a(F,b+g),a(F,b),{column:"cover_thickness",title:vt("cover"),judged:["cover_thickness_min","cover_thickness_max"]}),Ys(t,"cover_thickness",D=>[[a(-F*1.6,b+D),a(F*1.6,b+D)]],D=>[[a(F*.6,b+g),a(F*.6,b+D)]])}let y=t.finding({column:"transmission",title:""});if(y?.change&&g!==null){let b=h>0?f:0,F=o??.6,D=b+g-y.change;t.sketch(`ghost ${Dn(y)}`,[a(-F*1.6,D),a(F*1.6,D)]),t.change(y,a(F*.6,b+g),a(F*.6,D))}if(Ys(t,"gap",b=>[[a(-x*1.5,b*h),a(x*1.5,b*h)]],b=>[[a(x*.5,f*h),a(x*.5,b*h)]]),n1(i,t,e),d("gap")!==null&&t.leader(-1,M.gap,{column:"gap",title:vt("gap"),judged:["gap_min","gap_max"]}),e.melts&&d("melt_area")!==null&&!r&&t.leader(-1,a(-o*.5,-s.collapse*.5*h),{column:"melt_area",title:vt("melts")}),u)return M;for(let{side:b,name:F,columns:D}of c){let C=d(`rib_height_${F}`),O=o===null?0:b*o;if(C!==null&&C<6){let X=C===d("rib_height");t.along(b,a(O,0),a(O,-C*h),{column:`rib_height_${F}`,title:vt("rib height"),judged:X?["rib_height"]:[]}),X&&Ys(t,"rib_height",nt=>[[a(O,-nt*h),a(O+b*1.2,-nt*h)]],nt=>[[a(O+b*.6,-C*h),a(O+b*.6,-nt*h)]],[`rib_height_${F}`]);let Y=d("rib_width_mid");Y!==null&&X&&Ys(t,"slenderness",nt=>[[a(O,-nt*Y*h),a(O+b*1.2,-nt*Y*h)]],nt=>[[a(O+b*.6,-C*h),a(O+b*.6,-nt*Y*h)]]);let tt=d(`draft_${F}`);if(tt!==null&&o!==null){let nt=at=>a(O+b*C*Math.tan(at*Math.PI/180),-C*h);Ys(t,`draft_${F}`,at=>[[a(O,0),nt(at)]],at=>[[nt(tt),nt(at)]])}}let U=d(`trap_area_${F}`),P=D[Math.floor(D.length/2)],B=D[D.length-1],$=P?a(P.u,(P.low+P.high)/2*h+e.sunk):a(b*x*2,-.5*T*h);if(M[`trap_${F}`]=$,M[`exit_${F}`]=B?a(B.u,B.high*h+e.sunk):$,U!==null){let X=d(`trap_room_${F}`),Y=d("melt_area"),tt={column:`trap_area_${F}`,title:vt("trap, collapsed"),judged:[`trap_room_${F}`,`trap_corner_${F}`,"trap_room"]},nt=t.finding(tt),at=s.bands.find(J=>J.rule==="trap-side")?.words??"";if(t.leader(b,$,{...tt,also:[...X===null||nt?[]:[`${gi(X,2)} × ${vt("½ melt")}${at?`, ${at}`:""}`],...Y===null?[]:[`${vt("½ melt")} ${gf(Y/2,2)}`]]}),nt?.change&&B&&D.length>2){let J=B.u+b*nt.change,mt=D[Math.floor(D.length/2)].low*h+e.sunk,ct=B.high*h+e.sunk;t.sketch(`ghost ${Dn(nt)}`,[a(J,mt),a(J,ct)]),t.change(nt,a(B.u,(mt+ct)/2),a(J,(mt+ct)/2))}}let V=t.finding({column:`trap_open_${F}`,title:""});if(V&&B){let X=s.bands.find(J=>J.rule==="lip-gap")?.edges.find(J=>J.column===`lip_gap_${F}`),Y=typeof X?.low=="number"&&typeof X.high=="number"?(X.low+X.high)/2:.2,tt=D[Math.floor(D.length/2)].low*h+e.sunk,nt=B.high*h+e.sunk-Y*h,at=B.u+b*.8;t.sketch(`ghost ${Dn(V)}`,[a(B.u,tt),a(B.u,nt)]),t.sketch(`ghost ${Dn(V)}`,[a(B.u,nt),a(at,nt)]),t.sketch(`ghost ${Dn(V)}`,[a(at,nt),a(at,tt)])}let ot=d(`lip_gap_${F}`);if(ot!==null&&(!r||t.finding({column:`lip_gap_${F}`,title:""}))){let X={column:`lip_gap_${F}`,title:vt("lip gap")};if(!B)t.leader(b,M[`exit_${F}`],X);else{let Y=t.finding(X),tt=B.u+b*.12,nt=B.high*h+e.sunk,at=nt-ot*h;t.arrows(...a(tt,nt),...a(tt,at),Y?Dn(Y):""),t.leader(b,a(tt,(nt+at)/2),X),Ys(t,`lip_gap_${F}`,J=>[[a(B.u,nt-J*h),a(B.u+b*.9,nt-J*h)]],J=>[[a(tt+b*.35,at),a(tt+b*.35,nt-J*h)]])}}}return M}function Ys(i,t,e,n,s=[]){let r=i.finding({column:t,title:"",judged:[`${t}_top`,`${t}_min`,`${t}_max`,...s]});if(!(!r||r.limit_at===null||!r.target)){for(let o of e(r.limit_at))i.sketch(`ghost ${Dn(r)}`,o);for(let[o,a]of n(r.limit_at))i.change(r,o,a)}}function n1(i,t,{at:e,X:n,Y:s,plot:r,up:o}){let a={column:"free_travel",title:vt("free travel"),judged:["free_travel"]},l=t.finding(a),c=t.value("free_travel");if(!l||l.limit_at===null)return;let h=l.station===i.station||c===null?l.number:c,u=l.met&&uh({...l,at:l.met},i.joint,i.contour,i.station),d=u?null:d0(l,i.joint,i.contour,i.station),[f,g]=d??[u?.[0]??0,o>0?t.value("gap")??0:0],_=d?[n(f),s(g)]:e(f,g);if(h===null||_[0]<r.x||_[0]>r.x+r.w)return;let m=Math.abs(s(1)-s(0)),p=x=>[_[0],_[1]+x*m];t.sketch(`ghost ${Dn(l)}`,[[_[0]-26,p(l.limit_at)[1]],[_[0]+26,p(l.limit_at)[1]]]),t.change(l,p(h),p(l.limit_at)),t.along(_[0]>r.x+r.w/2?1:-1,_,p(h),a)}function i1(i,t){let e=i.column||i.quantity,n=e.endsWith("_inner")?"inner":e.endsWith("_outer")?"outer":"",s=e.startsWith("draft")?`flank_${n}`:e.startsWith("trap_open")||e.startsWith("lip")?`exit_${n}`:e.startsWith("trap")?`trap_${n||"outer"}`:e.startsWith("clamp")?"land":/^(beam|light|spot|path_in_cover)/.test(e)?"light":/^(cover|transmission|mean_path)/.test(e)?"cover":/^(gap|free_travel|stop|local_collapse|collapse)/.test(e)?"gap":/^(support|overhang|wall|nest)/.test(e)?"below":/^(rib|slenderness|melt)/.test(e)?"rib":"other";return t[s]??t.other}function s1(i,t,e,n,s,r,o,a,l){let c={left:r.x,right:r.x+r.w,top:r.y-24,bottom:r.y+r.h},h=([f,g])=>f>=c.left&&f<=c.right&&g>=c.top&&g<=c.bottom,u=new Map;for(let f of t){if(e.shown.has(f))continue;let g=f.column&&n.contour.stations[f.column]?null:uh(f,n.joint,n.contour,n.station),_=g?f0(g):"",m=g&&_?[o(g[0]),a(g[1])]:null,p=(w,y,b)=>Math.max(w,Math.min(b,y)),[x,T]=m?[p(c.left+6,m[0],c.right-6),p(c.top+30,m[1],c.bottom-6)]:i1(f,s),M=`${Math.round(x/8)},${Math.round(T/8)}`,R=u.get(M)??0;if(u.set(M,R+1),i.append(u0(f,x,T,R,c)),m&&(!h(m)||g[2]>.6)){let w=x<(c.left+c.right)/2;i.append(gt("path",{class:`change ${Dn(f)}`,d:`M${Q(x-Math.sign(m[0]-x)*18)} ${Q(T-Math.sign(m[1]-T)*18)}L${Q(x)} ${Q(T)}`,"marker-end":`url(#${n.key}-to)`}),gt("text",{class:"pin-where",x:Q(w?x+36:x-12),y:Q(T-2),"text-anchor":w?"start":"end"},_))}}let d=t.slice(ph).length;t.slice(0,ph).forEach((f,g)=>{let _=h0(f,e.text(f)),[m]=xr(_,n.width-28,1,13,600),p=gt("text",{class:`mark-line ${Dn(f)}`,x:12,y:Q(15+g*16),"data-mark":f.n},m);m!==_&&p.append(gt("title",null,_)),i.append(p)}),d&&i.append(gt("text",{class:"mark-line",x:12,y:Q(15+(l-1)*16)},vt("and {count} more here",{count:d})))}function r1(i,t,e,n,s){let r=Gd(i,a=>a.low*t+e,a=>a.high*t+e,n),o=t>0?Gd(i,a=>a.high,a=>a.drawn,n):Gd(i,a=>e-a.low,a=>-a.low,n);return[gt("path",{class:"trap-lost",d:o}),gt("path",{class:"trap",d:r}),gt("path",{fill:`url(#${s}-trap)`,d:r})]}var b0=i=>i===0?1:i===1?2:0;function Vd(i,t,e){return"M"+i.map(([n,s])=>`${Q(t(n))} ${Q(e(s))}`).join("L")+(Ia(i)?"Z":"")}function Gd(i,t,e,n){let s=(a,l)=>n(a,l).map(Q).join(" "),r=i.map(a=>s(a.u,t(a))),o=[...i].reverse().map(a=>s(a.u,e(a)));return`M${[...r,...o].join("L")}Z`}function fh(i,t,e,n){return gt("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},gt("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function o1(i,t,e){let n=Ei()*e,s=Ei()===1?[1,2,5,10]:[.02,.05,.1,.2,.5],r=s.find(a=>a*n>35)??s[s.length-1],o=[];for(let a=0;a<4;a++)o.push(gt("rect",{class:a%2?"scale-light":"scale-dark",x:Q(i+a*r*n/4),y:t,width:Q(r*n/4),height:4}));return o.push(gt("text",{class:"side scale-length",x:Q(i+r*n+6),y:t+5},`${gi(r,r<1?r<.1?2:1:0)} ${Ks()}`)),o}var a1=0,Hd=new WeakMap,La=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${a1++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=Wd(this.atlas,t,e,n,this.key,this.compact);en(this.host),this.host.append(s)}};function Wd(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],l=i.sectionsOf(o.id,a.id);Hd.has(a)||Hd.set(a,c0(o,a,i.payload.facts[t.joint].margin,l));let c=ul(i).shown(o.id,{facts:i.payload.facts[t.joint],contour:a,sections:l,findings:i.payload.findings});return S0({joint:o,station:t.station,...c,words:i.words,frame:Hd.get(a),width:e,height:n,compact:r,key:s})}function Xd(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,l=t.station;return $t("span",null,$t("b",{"data-s":s[l]},`s = ${_i(s[l],2)}`),` · ${vt("station {number} of {count}",{number:l+1,count:s.length})}`,e.contours.length>1?` · ${vt("path")} ${n.id}`:"",` · x ${Rs(r[l],2)}  y ${Rs(o[l],2)}  z ${Rs(a[l],2)} ${Ks()}`)}var c1=i=>[vt("not measured"),vt("within"),vt("close to the limit"),vt("limit broken"),vt("broken, waived"),vt("to be looked at"),vt("noted")][i],w0=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],h1=10,Da=1e3,_h=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=$t("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,en(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=p=>p/e*Da,o=$t("div",{class:"strip-board"});this.board=o;let a=gt("svg",{class:"ruler",viewBox:`0 0 ${Da} 30`,preserveAspectRatio:"none","aria-hidden":!0}),l=$t("div",{class:"ruler-numbers","aria-hidden":!0}),c=this.host.clientWidth||1e3,h=c>820?c*.62:c-200,u=Ei()*u1(e/Ei()/Math.max(2,Math.min(8,h/50)));for(let{start:p,length:x,contour:T}of t){a.append(gt("line",{class:"ruler-line",x1:r(p),x2:r(p+x),y1:29,y2:29}));for(let M=0;M<=x+1e-6;M+=u/5){let R=Math.abs(M/u-Math.round(M/u))<1e-6;a.append(gt("line",{class:"ruler-line",x1:Q(r(p+M)),x2:Q(r(p+M)),y1:R?20:25,y2:29})),R&&x-M>Math.max(u*.45,e*.075)&&l.append(mh($t("span",null,Ei()===1?`${Math.round(M)}`:gi(M/Ei(),u/Ei()<1?1:0)),r(p+M)))}e>0&&x>u&&l.append(mh($t("span",{class:"end"},Rs(x,1)),r(p+x))),t.length>1&&l.append(mh($t("b",null,n.contours[T].id),r(p+x/2))),this.turns(a,T,p,r)}o.append($t("div",{class:"strip-head"},vt("unrolled seam, {unit}",{unit:Ks()})),$t("div",{class:"track ruler-track"},a,l,this.marks(r)),$t("div",{class:"strip-head end"},vt("here · limit")));let d=p=>s.bands[p].severity==="must-fix"||this.atlas.payload.findings.some(x=>x.rule===s.bands[p].rule&&x.joint===n.id&&x.severity!=="note"),f=p=>{let x=this.atlas.payload.findings.filter(T=>T.rule===s.bands[p].rule&&T.joint===n.id&&T.severity!=="note");return x.some(T=>T.severity==="must-fix"&&!T.waived)?0:x.length?1:d(p)?2:3},g=s.bands.map((p,x)=>x).sort((p,x)=>f(p)-f(x)),_=new Set(g.filter((p,x)=>d(p)&&(x<h1||f(p)<2)));for(let p of g){let x=s.bands[p],T=_.has(p)?"":" more",M=gt("svg",{viewBox:`0 0 ${Da} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(p)});for(let{contour:w,start:y}of t){let b=n.contours[w],F=s.tracks[b.id]?.[p]??[];for(let[D,C,O]of F){let U=r(y+gh(b.stations.s,D,0,b.length_mm)),P=r(y+gh(b.stations.s,C,1,b.length_mm)),B=O>2?Math.max(7,P-U):P-U;M.append(gt("rect",{class:`cell ${zo[O]}`,x:Q((U+P-B)/2),y:w0[O][0],width:Q(B),height:w0[O][1]}))}}let R=$t("div",{class:`strip-value${T}`,"data-rule":x.rule});this.values[p]=R,o.append($t("div",{class:`strip-label${T}`,title:x.title},x.title),$t("div",{class:`track${T}`},M),R)}let m=g.length-_.size;if(this.host.append(this.cursor,o),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(m?38:18)}px`),m){let p=$t("button",{type:"button",class:"strip-more screen","aria-expanded":!1},vt("{count} further rules",{count:m}));p.addEventListener("click",()=>{let x=o.classList.toggle("open");p.setAttribute("aria-expanded",String(x)),p.textContent=x?vt("fewer rules"):vt("{count} further rules",{count:m}),this.moveCursor()}),this.host.append(p)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.corner_radius;if(a)for(let l=0;l<a.length;l++){if(a[l]===null||a[l]>60)continue;let c=l;for(;c+1<a.length&&a[c+1]!==null&&a[c+1]<=60;)c++;let[h,u]=[gh(r.s,l,0,o),gh(r.s,c,1,o)];t.append(gt("rect",{class:"turn",x:Q(s(n+h)),width:Q(s(u)-s(h)),y:20,height:9})),l=c}}marks(t){let e=this.atlas.payload.findings,n=$t("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let h of e)if(!(h.joint!==this.walk.joint.id||h.station===null||rl(h)))for(let u of as(h)){let d=this.walk.joint.contours.findIndex(f=>f.id===u.contour);r.push({x:t(s[d].start+this.walk.joint.contours[d].stations.s[u.station]),findings:[h],spot:u})}let o=this.host.clientWidth||1e3,a=o>820?o*.62:o-200,l=r.length>8?Va:Cs,c=h=>Math.max(24,l(h.findings).length*7.5+6)/2;r.sort((h,u)=>h.x-u.x);for(let h=0;h+1<r.length;){let[u,d]=[r[h],r[h+1]];if((d.x-u.x)*a/Da>=c(u)+c(d)+3){h++;continue}let f=[...new Set([...u.findings,...d.findings])].sort((g,_)=>g.n-_.n);r.splice(h,2,{spot:f[0]===u.findings[0]?u.spot:d.spot,x:(u.x*u.findings.length+d.x*d.findings.length)/(u.findings.length+d.findings.length),findings:f}),h=Math.max(0,h-1)}for(let{x:h,findings:u,spot:d}of r){let f=u[0],g=$t("button",{type:"button",class:`strip-mark ${f.waived?"waived":f.severity}`,"data-finding":f.n,"aria-label":vt("Go to finding {numbers}: {title}",{numbers:u.map(_=>_.n).join(", "),title:f.title})},l(u));g.addEventListener("click",()=>this.walk.showFinding(f,"finding",d)),n.append(mh(g,h))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,l,c]of n.tracks[o.id]?.[t]??[])c!==1&&s.push(vt("{state} from {low} to {high}",{state:c1(c),low:Rs(o.stations.s[a],1),high:_i(o.stations.s[l],1)}));let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):vt("within everywhere")}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words,a=this.walk.findingsHere();n.bands.forEach((l,c)=>{let h=a.find(m=>m.rule===l.rule),u=this.values[c];en(u);for(let m of["must-fix","attention","note","waived"])u.classList.remove(m);h&&u.classList.add(h.waived?"waived":h.severity);let d=$t("span",{class:"values"},h?`${Ir[h.severity]} `:""),f=l.columns.filter(m=>Array.isArray(e.stations[m])).map(m=>{let p=e.stations[m][t.station]??null,x=p===null?o.reason(r.id,e.id,m,s):"",T=p===null?"–":l.columns.length>1&&o.unit(m)?o.bare(p,m):o.value(p,m);return $t("b",{"data-column":m,"data-value":String(p),title:x||o.title(m)},T)});!f.length&&h&&f.push($t("b",{"data-finding":h.n},h.value)),f.forEach((m,p)=>d.append(p?" / ":"",m)),u.dataset.state=h?h.waived?"waived":h.severity:"";let g=h?void 0:a.find(m=>m.also.includes(l.rule)),_=g?vt("see finding {number}",{number:g.n}):h?.limit||l.words||"";u.append(d,$t("span",{class:"limit",title:_},_))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${Q(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${Q(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function mh(i,t){return i.style.left=`${t/Da*100}%`,i}function gh(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function u1(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var xh=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(s,r)=>pe(s)?.addEventListener("click",r);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1));let n=s=>{let r=this.walk.neighbourFinding(s);r&&this.walk.showFinding(r.finding,"finding",r.spot)};e("finding-back",()=>n(-1)),e("finding-on",()=>n(1)),this.slider.addEventListener("keydown",s=>{yh(s,this.walk)&&s.preventDefault()})}walk;slider=pe("walk-slider");where=pe("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),s=this.walk.s,r=`s = ${_i(s,2)}`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, ${vt("Finding")} ${n.map(c=>`${c.n} ${c.title}`).join(", ")}`:"")),en(this.where);let o=this.walk.contour;this.where.append($t("b",{"data-station":t.station},r),$t("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=pe("walk-live"),l=n.map(c=>`${vt("Finding")} ${c.n}: ${c.title}`).join(". ");a&&a.textContent!==l&&(a.textContent=l)}};function yh(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n.finding,"keys",n.spot),!0}}return!1}async function d1(){let i=pe("seamcheck-data");if(R0(()=>{}),!i)return;let t=await Mf(i);if(mf(t.voice),document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(_=>_.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new Ga(t),n=new sl(t),s=new La(pe("section-figure"),e),r=new La(pe("section-beside"),e,!0),o=new hl(pe("plan-figure"),e,n),a=new _h(pe("strip"),e,n),l=new xh(n),c=new al(pe("charts-judged"),pe("charts-within"),pe("charts-further"),e,n),h=new $d(e,n),u=!1;Po(pe("section-beside"),()=>{u=!0,r.show(n.place)}),n.listen((_,m)=>{s.show(_),u&&r.show(_),o.show(_),a.show(_),l.show(_),c.show(_),h.show(_,m==="finding"||m==="keys-finding");for(let p of["section-caption","beside-caption"]){let x=pe(p);en(x),x.append(Xd(e,_))}m1(e,n),g1(n)});for(let _ of["section-figure","plan-figure","strip","section-beside"])pe(_).addEventListener("keydown",m=>{yh(m,n)&&m.preventDefault()});for(let _ of document.querySelectorAll("[data-go]"))_.addEventListener("click",m=>{let p=t.findings.find(x=>String(x.n)===_.dataset.go);p&&p.station!==null&&(m.preventDefault(),n.showFinding(p),_.dataset.top!==void 0&&pe("desk").scrollIntoView({block:"start"}))});for(let _ of document.querySelectorAll("[data-place]"))_.addEventListener("click",m=>{let[p,x,T]=_.dataset.place.split(" "),M=t.joints.findIndex(w=>w.id===p),R=t.joints[M]?.contours.findIndex(w=>w.id===x)??-1;R<0||(m.preventDefault(),n.go({joint:M,contour:R,station:Number(T)},"finding"))});let d=pe("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(_=>{d&&(d.value=String(_.joint))}),ul(e).wire(()=>{s.show(n.place),u&&r.show(n.place)}),p1(),f1(),pe("show-spread")?.addEventListener("change",_=>{pe("charts").classList.toggle("with-spread",_.target.checked)}),_f(t);let f=_1(e);if(R0(()=>{o.draw(),c.retheme(),h.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let _ of document.querySelectorAll("details.fold:not([open])"))_.open=!0,_.dataset.wasShut="";for(let _ of f)_.forPrint();c.forPrint(256)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let _ of document.querySelectorAll("[data-was-shut]"))_.open=!1,delete _.dataset.wasShut;for(let _ of f)_.forScreen();c.forScreen()}),await document.fonts.ready,addEventListener("hashchange",()=>E0(n)),E0(n)){document.documentElement.dataset.ready="yes";return}let g=t.findings.find(_=>_.station!==null);g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}function E0(i){let t=decodeURIComponent(location.hash.slice(1)),e=/^f(\d+)$/.exec(t);if(e){let o=i.payload.findings.find(a=>a.n===Number(e[1])&&a.station!==null);return o&&i.showFinding(o),o!==void 0}let n=/^(?:([^/]+)\/([^/]+)\/)?s=(-?[\d.]+)$/.exec(t);if(!n)return!1;let s=n[1]?i.payload.joints.findIndex(o=>o.id===n[1]):0,r=n[2]?i.payload.joints[s]?.contours.findIndex(o=>o.id===n[2])??-1:0;return s<0||r<0?!1:(i.go({joint:s,contour:r,station:hu(i.payload.joints[s].contours[r].stations.s,Number(n[3]))},"finding"),!0)}function f1(){let i=()=>{let t=document.querySelector(`${/^#finding-\d+$/.test(location.hash)?location.hash:"#none"} .sheet-fold`);t&&(t.open=!0)};addEventListener("hashchange",i),i()}function p1(){let i=pe("list-filter"),t=pe("list-order"),e=document.querySelector("#finding-list tbody");if(!i||!t||!e)return;let n=[...e.querySelectorAll("[data-row]")],s=()=>{let r=i.value,o=u=>!r||u.dataset.severity===r||`rule:${u.dataset.rule}`===r;for(let u of n)u.hidden=!o(u);let a=n.filter(o).length;pe("list-count").textContent=a===n.length?`(${n.length})`:vt("({shown} of {all})",{shown:a,all:n.length});for(let u of e.querySelectorAll(".group-head"))u.remove();let l=u=>t.value==="rule"?[u.dataset.rule??"",0]:["",t.value==="s"?Number(u.dataset.s||1e9):0],c=[...n].sort((u,d)=>l(u)[0].localeCompare(l(d)[0])||l(u)[1]-l(d)[1]||Number(u.dataset.row)-Number(d.dataset.row));if(e.append(...c),t.value!=="rule")return;let h=c.filter(o);for(let u of h){let d=h.filter(f=>f.dataset.rule===u.dataset.rule);d[0]===u&&u.before($t("tr",{class:"group-head"},$t("th",{colspan:3,scope:"rowgroup"},`${u.dataset.title} (${d.length})`)))}};i.addEventListener("change",s),t.addEventListener("change",s)}var $d=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;pe("pane-plan").hidden=r!=="plan",pe("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=pe("space-figure");this.atlas.meshes.length||t.append($t("p",{class:"empty"},vt("The document carries no meshes of the parts; the seam is shown alone.")));try{this.scene=new ch(t,this.atlas,this.walk)}catch{en(t),t.append($t("p",{class:"empty"},vt("This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places.")));return}this.tools(this.scene),this.scene.aslant(!1),this.scene.flyToMarker(),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&yh(e,this.walk)&&e.preventDefault()})}tools(t){let e=pe("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(pe("space-note").textContent=vt("{count} small faces are left out of this picture; all were measured.",{count:n}));let s=(o,a)=>{let l=$t("button",{type:"button"},o);return l.addEventListener("click",a),l},r=(o,a,l)=>{let c=$t("input",{type:"checkbox"});return c.checked=a,c.addEventListener("change",()=>l(c.checked)),$t("label",null,c,` ${o}`)};Co(e,[this.larger(),s(vt("Along the beam"),()=>t.alongLight()),s(vt("Oblique"),()=>t.aslant()),s(vt("To the section"),()=>t.flyToMarker()),r(vt("cut open here"),!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&Co(e,[r(vt("{count} further parts",{count:t.partIds.length-12}),!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}larger(){let t=pe("desk"),e=$t("button",{type:"button",id:"space-larger","aria-pressed":"false"},vt("Larger")),n=s=>{t.classList.toggle("large-space",s),e.setAttribute("aria-pressed",String(s)),e.textContent=s?vt("Smaller"):vt("Larger")};return e.addEventListener("click",()=>n(!t.classList.contains("large-space"))),pe("tab-plan")?.addEventListener("click",()=>n(!1)),e}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function m1(i,t){let e=pe("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(l=>Array.isArray(n.stations[l])).map(l=>{let c=n.stations[l][r.station],h=c===null?i.words.reason(s.id,n.id,l,o):"";return $t("tr",null,$t("th",{scope:"row"},i.words.title(l)),$t("td",{"data-column":l,"data-value":String(c)},i.words.value(c,l)),$t("td",null,h))});en(e),e.append(...a)}function g1(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function _1(i){return[...document.querySelectorAll("[data-sheet]")].flatMap((t,e)=>{let n=i.payload.findings.find(h=>String(h.n)===t.dataset.sheet);if(n.station===null)return[];let s=i.payload.joints.findIndex(h=>h.id===n.joint),r=i.payload.joints[s].contours.findIndex(h=>h.id===n.contour),o={joint:s,contour:r,station:n.station},a=(h,u)=>{en(t),t.append(Wd(i,o,h,u,`sheet${e}`,!0),$t("figcaption",null,Xd(i,o)))},l=()=>a(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),c=Po(t,l);return[{draw:c,forPrint:()=>{c(),a(450,330)},forScreen:l}]})}var T0=!1,A0=[];function R0(i){if(A0.push(i),T0)return;T0=!0;let t=document.documentElement,e=()=>{for(let n of A0)n()};pe("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}d1().catch(i=>{console.error(i);let t=pe("trouble");t&&(t.hidden=!1,t.textContent=vt("The figures could not be drawn: {error}. All texts and tables below are complete.",{error:i instanceof Error?i.message:String(i)}))});})();
